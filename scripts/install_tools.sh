#!/usr/bin/env bash
# install_tools.sh run|test|bench|fuzz: installs what building (and testing) needs on a bare Debian 12, and says what.
# Debian's packages by apt (through sudo when not root); a newer Node.js from the npm registry into .tools/node,
# because Debian 12 has Node.js 18 and the page builder needs 20.19 or newer.
set -euo pipefail
cd "$(dirname "$0")/.."

build_packages=(g++ cmake ninja-build ccache mold libboost1.81-dev libboost-json1.81-dev libsqlite3-dev libsqlitecpp-dev
                libcsv-dev libcli11-dev libeigen3-dev coinor-libcbc-dev libhowardhinnant-date-dev tzdata doctest-dev)
test_packages=(chromium python3 jq fonts-dejavu-core clang-format-14 liborocos-kdl-dev libsimbody-dev
               r-base-core r-cran-lme4 r-cran-nlme)   # R is run by tests, never linked
wanted=("${build_packages[@]}")
[ "${1:-run}" = test ] && wanted+=("${test_packages[@]}")
[ "${1:-run}" = bench ] && wanted+=(liborocos-kdl-dev r-base-core r-cran-lme4)
[ "${1:-run}" = fuzz ] && wanted+=(clang libclang-rt-14-dev)

missing=()
for package in "${wanted[@]}"; do
  dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
done

node_is_new_enough() {
  command -v "$1" >/dev/null 2>&1 &&
    "$1" -e 'const [a,b]=process.versions.node.split(".").map(Number);process.exit(a>20||(a===20&&b>=19)?0:1)'
}
if ! node_is_new_enough node && [ ! -x .tools/node/bin/node ]; then
  command -v npm >/dev/null 2>&1 || missing+=(nodejs npm)
fi

if [ ${#missing[@]} -gt 0 ]; then
  echo "Installing Debian packages: ${missing[*]}"
  as_root=(); [ "$(id -u)" -eq 0 ] || as_root=(sudo)
  "${as_root[@]}" apt-get update -qq
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
  [ ! -f build/build.ninja ] || cmake build >/dev/null   # what was not there before is looked for again
fi

if ! node_is_new_enough node && ! node_is_new_enough .tools/node/bin/node; then
  echo "Installing Node.js 22 from the npm registry into .tools/node"
  mkdir -p .tools/node
  npm install --loglevel=error --no-audit --no-fund --prefix .tools/node node@22 npm@11 >/dev/null
  mkdir -p .tools/node/bin
  for tool in node npm npx; do ln -sf "../node_modules/.bin/$tool" ".tools/node/bin/$tool"; done
fi
