#!/usr/bin/env bash
# check_generated.sh: the typed client in the repository is the one the program's own document gives.
set -euo pipefail
cd "$(dirname "$0")/.."
fresh=$(mktemp -d); trap 'rm -rf "$fresh"' EXIT
build/apps/amentum print-openapi >"$fresh/openapi.json"
web/node_modules/.bin/openapi-typescript "$fresh/openapi.json" -o "$fresh/schema.d.ts" >/dev/null
diff -u web/src/api/schema.d.ts "$fresh/schema.d.ts" || { echo "web/src/api/schema.d.ts is old: run ./dev generate"; exit 1; }
