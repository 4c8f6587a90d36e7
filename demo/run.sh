#!/usr/bin/env bash
# One command from a fresh Debian 12 to the kiosk on an invented collection.
set -eu
cd "$(dirname "$0")/.."
. demo/prepare.sh

install_packages demo/packages.txt
build "$(grep -qs 'RACKSIDE_TESTS:BOOL=ON' build/CMakeCache.txt && echo ON || echo OFF)"

collection=build/demo
log="$collection/log.db"
mkdir -p "$collection"
if [ ! -e "$log" ]; then
  say "inventing a collection and importing it"
  quietly build/bin/rackside-demo "$collection"
  quietly build/bin/rackside-log --log "$log" import \
    --animals "$collection/animals.csv" --events "$collection/events.csv" ||
    give_up "the invented collection could not be imported."
fi

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ] || { [ -e /dev/dri/card0 ] && [ -z "${CI:-}" ]; }; then
  say "starting the kiosk on $log; close it with Alt+F4"
  exec build/bin/rackside --log "$log" --closable --by "Ines Kaltenberg"
fi
say "there is no display here: walking a short round on a virtual one"
exec bash demo/walk.sh "$log" build/demo/pictures
