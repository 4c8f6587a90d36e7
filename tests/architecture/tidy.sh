#!/usr/bin/env bash
# What clang-tidy says by .clang-tidy: tidy.sh BUILD-FOLDER [--all]
#
# A command and no test: a file takes five seconds of processor and the whole tree half an hour. A run
# looks at the files that the last commit and the working tree changed, and at a few others: which,
# follows from the commit's name, so that every commit sees others and each gives one answer however
# often it is asked. --all looks at everything.
set -eu
build=$(realpath "$1")
cd "$(dirname "$0")/../.."
command -v clang-tidy >/dev/null || { echo "skipped: clang-tidy is not here"; exit 0; }
most=16

sources() { find core labels kiosk demo -name '*.cpp' | sort; }
changed() {
  { git diff --name-only HEAD^ -- 2>/dev/null || true; } | grep -xE '(core|labels|kiosk|demo)/.*\.cpp' || true
}
others() {
  commit=$(git rev-parse HEAD 2>/dev/null || echo 0)
  sources | while read -r file; do echo "$(echo "$commit $file" | md5sum | cut -c1-8) $file"; done |
    sort | cut -d' ' -f2
}
chosen() {
  if [ "${2-}" = --all ]; then sources; else { changed; others; } | awk '!seen[$0]++' | head -n $most; fi
}

chosen "$@" | while read -r file; do [ -f "$file" ] && echo "$file"; done |
  xargs -P "$(nproc)" -n 1 clang-tidy --quiet -p "$build"
