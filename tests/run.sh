#!/usr/bin/env bash
# Gets what the tests need, builds, and runs all tests. A second run builds only what has changed.
set -eu
cd "$(dirname "$0")/.."
. demo/prepare.sh
install_packages demo/packages.txt tests/packages.txt
build ON
say "running all tests"
ctest --test-dir build --output-on-failure --progress -j "$(nproc)" "$@"
