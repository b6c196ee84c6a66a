#!/bin/sh
# Draws the tests' briefs and holds the drawings against a real browser. Installs Debian's chromium and two
# usual faces where they are missing (as root), and the driver into a folder of its own.
# Usage: tests/drawings/in_browser.sh [folder for the PNGs]
set -eu
here=$(cd "$(dirname "$0")" && pwd)
target=${CARGO_TARGET_DIR:-$here/../../target}
pngs=${1:-$target/tmp/drawings-seen}
driver=$target/tmp/drawings-driver
command -v chromium >/dev/null || { apt-get update && apt-get install -y chromium fonts-liberation fonts-dejavu-core; }
mkdir -p "$driver"
[ -d "$driver/node_modules/playwright-core" ] || npm install --prefix "$driver" --no-save playwright-core@1
(cd "$here/../.." && cargo test --features shootfile --test drawings written_for_the_browser)
cp "$here/in_browser.mjs" "$driver/"
node "$driver/in_browser.mjs" "$target/tmp/drawings" "$pngs" "$(command -v chromium)"
