#!/usr/bin/env bash
# fingerprint.sh: one number over a fictional season. It changes when, and only when, some answer changes.
set -euo pipefail
cd "$(dirname "$0")/.."
folder=$(mktemp -d); trap 'rm -rf "$folder"' EXIT
amentum="build/apps/amentum --store $folder/season.store --today 2026-06-01 --json"
{
  $amentum demo
  $amentum roster
  for athlete in $($amentum roster | jq -r '.throwers[].athlete'); do
    $amentum find-limiters "$athlete"
    $amentum plan-block --athlete "$athlete" --start 2026-06-08 || echo "no block for $athlete"
  done
} >"$folder/answers.json"
sha256sum "$folder/answers.json" | cut -c1-16
