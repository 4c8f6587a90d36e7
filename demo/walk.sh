#!/usr/bin/env bash
# A short feeding round on a virtual display, by real scans and taps, with a picture of each step.
#   demo/walk.sh LOG FOLDER [WIDTHxHEIGHT] [PALETTE]
set -eu
cd "$(dirname "$0")/.."
. demo/prepare.sh
log="$1"
pictures="$2"
size="${3:-1280x800}"
palette="${4:-day}"
mkdir -p "$pictures"

work="$(mktemp -d)"
told="$work/told"
: >"$told"
clear_away() {
  # The kiosk first: it must not lose its display before it has ended.
  kill "$kiosk" 2>/dev/null && wait "$kiosk" || true
  kill "$screen" 2>/dev/null || true
  rm -rf "$work"
}
kiosk=
screen=
trap clear_away EXIT

exec 3<>"$work/number"
Xvfb -displayfd 3 -screen 0 "${size}x24" -nolisten tcp >/dev/null 2>&1 &
screen=$!
for _ in $(seq 100); do [ -s "$work/number" ] && break; sleep 0.05; done
DISPLAY=":$(head -n 1 "$work/number")"
export DISPLAY

SDL_VIDEODRIVER=x11 build/bin/rackside --log "$log" --window "$size" --palette "$palette" \
  --by "Ines Kaltenberg" --tell-to "$told" &
kiosk=$!
xdotool search --sync --onlyvisible --name Rackside >/dev/null

scan() { xdotool type --args 1 --delay 4 "$1" key Return; sleep 0.7; }
picture() {
  xdotool mousemove 0 0
  sleep 0.3
  import -window root "$pictures/$1.png"
  say "$pictures/$1.png: $2"
}
card() { scan "$(build/bin/rackside-demo --card "$1")"; }
tap() { xdotool mousemove "$1" "$2" click 1; sleep 0.5; }

# The first tubs that are due, in walking order.
mapfile -t tubs < <(build/bin/rackside-log --log "$log" today --json | jq -r '.due[:4][].enclosure')

sleep 4
picture 1-round "today's round"
scan "${tubs[0]}"
picture 2-tub "the first tub that is due, opened by its label"
card "refused"
picture 3-refused "the same tub after the card \"refused\" was scanned"
card "undo"
picture 4-undone "... and after the card \"undo\""
card "took"
scan "${tubs[1]}"
card "misted"
picture 5-misted "the second tub after the card \"misted\""
scan "https://example.org/not-ours"
picture 6-foreign "a label that is not one of ours"
xdotool key Escape
picture 7-back "back on the round"
if [ "$size" = 1280x800 ]; then
  # Where the keys are on a panel of this size.
  drawer() { tap 1100 745; }
  drawer
  picture 8-drawer "what is not needed on every walk"
  tap 220 220
  picture 9-map "the racks as they stand"
  xdotool key Escape
  sleep 0.3
  tap 640 220
  picture 10-weeks "the weeks ahead"
  xdotool key Escape
  sleep 0.3
  tap 1060 220
  picture 11-air "the air in the room"
fi
say "told, in order:"
sed 's/^/  /' "$told"
