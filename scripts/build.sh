#!/usr/bin/env bash
# build.sh [target...]: the engine and the pages, quietly; says only what it is doing and what failed.
set -euo pipefail
cd "$(dirname "$0")/.."
[ -x .tools/node/bin/node ] && export PATH="$PWD/.tools/node/bin:$PATH"

engine() {
  [ -f build/build.ninja ] || cmake -S . -B build -G Ninja >build.log 2>&1 || { cat build.log; rm -f build.log; exit 1; }
  rm -f build.log
  ninja -C build "$@"
}
pages() {
  cd web
  local lock_stamp=node_modules/.installed
  if [ ! -f $lock_stamp ] || [ package-lock.json -nt $lock_stamp ]; then
    npm ci --silent --no-audit --no-fund && touch $lock_stamp
  fi
  if [ ! -f dist/index.html ] || [ -n "$(find src index.html vite.config.ts package-lock.json -newer dist/index.html -print -quit)" ]; then
    npm run --silent build && touch dist/index.html
  fi
}
engine "$@"
(pages)
