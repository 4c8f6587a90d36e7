#!/usr/bin/env bash
# Whether every source file is as .clang-format has it.
set -eu
cd "$(dirname "$0")/../.."
command -v clang-format >/dev/null || { echo "skipped: clang-format is not here"; exit 0; }
find core labels kiosk fonts demo tests -name '*.cpp' -o -name '*.hpp' |
  xargs clang-format --dry-run --Werror
