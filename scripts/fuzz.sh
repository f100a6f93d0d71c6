#!/usr/bin/env bash
# fuzz.sh [SECONDS]: each parser of tests/fuzz under libFuzzer with the address and undefined-behaviour sanitizers.
# The corpus kept is tests/fuzz/corpus/<name>; what a run finds lies in build/fuzz/found/<name>, and an input that fails
# in build/fuzz/<name>-crash-*: mend the fault, then copy the input into the corpus, where ./test replays it without clang.
set -euo pipefail
cd "$(dirname "$0")/.."
seconds=${1:-60}
export ASAN_OPTIONS=quarantine_size_mb=64 # freed memory is kept to be watched; with the usual 256 MB a long run nears the limit
roots=build/fuzz/include_roots; mkdir -p $roots
for module in values recordings; do
  mkdir -p $roots/$module; ln -sfn "$PWD/engine/$module" $roots/$module/$module
done
failed=0
for target in tests/fuzz/*_fuzz.cpp; do
  name=$(basename "$target" _fuzz.cpp)
  clang++ -std=c++20 -O1 -g -fsanitize=fuzzer,address,undefined -fno-sanitize-recover=undefined -ffp-contract=off \
    -I$roots/values -I$roots/recordings "$target" engine/values/*.cpp engine/recordings/*.cpp engine/recordings/inside/*.cpp \
    -o "build/fuzz/$name"
  mkdir -p "build/fuzz/found/$name"
  if "build/fuzz/$name" -max_total_time="$seconds" -max_len=65536 -rss_limit_mb=512 -timeout=10 -print_final_stats=1 \
      -artifact_prefix="build/fuzz/$name-" "build/fuzz/found/$name" "tests/fuzz/corpus/$name" >"build/fuzz/$name.log" 2>&1; then
    echo "ok      $name: $(sed -n 's/^stat::number_of_executed_units: *//p' "build/fuzz/$name.log") inputs in $seconds s"
  else
    failed=1; echo "FAILED  $name"; tail -40 "build/fuzz/$name.log"
  fi
done
exit $failed
