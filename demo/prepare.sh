# Sourced by demo/run.sh and tests/run.sh: gets packages, builds. Says what it does, asks nothing.

top="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"

say() { printf 'rackside: %s\n' "$*"; }

give_up() {
  printf 'rackside: %s\n' "$*" >&2
  exit 1
}

# Runs a command and shows its output only when it fails.
quietly() {
  local output
  output="$(mktemp)"
  if ! "$@" >"$output" 2>&1; then
    tail -n 40 "$output" >&2
    rm -f "$output"
    return 1
  fi
  rm -f "$output"
}

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# install_packages LIST...: what the lists name and this machine lacks.
install_packages() {
  local missing=() package
  for package in $(grep -hv '^#' "$@"); do
    dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null | grep -q '^installed$' ||
      missing+=("$package")
  done
  if [ "${#missing[@]}" -eq 0 ]; then return; fi
  say "installing ${#missing[@]} packages: ${missing[*]}"
  export DEBIAN_FRONTEND=noninteractive
  quietly as_root apt-get update || give_up "the package lists could not be read; is there a network?"
  quietly as_root apt-get install -y --no-install-recommends "${missing[@]}" ||
    give_up "not all packages could be installed; nothing else was changed."
}

# build TESTS(ON or OFF)
build() {
  say "building in build/ (a few minutes the first time)"
  quietly cmake -S "$top" -B "$top/build" -G Ninja -DRACKSIDE_TESTS="$1" -DRACKSIDE_BENCH="$1" ||
    give_up "the build could not be set up."
  NINJA_STATUS="rackside: [%f of %t] " ninja -C "$top/build" --quiet 2>/dev/null ||
    ninja -C "$top/build" || give_up "the build did not finish."
}
