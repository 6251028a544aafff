#!/usr/bin/env bash
# Shows that a collection dated in splits by GNU parallel joins to the bytes of one run, and prints what a million pieces cost.
# Needs Debian's package parallel. Usage: benchmarks/split.sh [PIECES]
set -eu
cd "$(dirname "$0")/.."
pieces=${1:-20000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

dotnet build src/Terminus.Demo -c Release -v q -o "$work/console" >&2
demo="$work/console/terminus-demo"
dotnet run -c Release --project benchmarks/Terminus.Benchmarks -- generate "$pieces" "$work/pieces.jsonl" "$work/reference.json" >&2
# A line that is no piece, in the middle, is answered alike wherever it falls.
sed -i "$((pieces / 2))s/.*/{ no piece/" "$work/pieces.jsonl"
# Two splits a core and no more than 16 MB each: each pays for starting the console, and waits in memory for its turn.
block=$(($(stat -c %s "$work/pieces.jsonl") / (2 * $(nproc)) + 1))
[ "$block" -lt 16000000 ] || block=16000000

options=(--as-of 2026-11-25 --reference "$work/reference.json")
# One line is no piece and some have problems, so the exit code is 1 by design.
seconds() { local start=$EPOCHREALTIME; "$@" || [ $? -lt 102 ]; echo "$EPOCHREALTIME $start" | awk '{ print $1 - $2 }'; }
one() { "$demo" inventory "$work/pieces.jsonl" "${options[@]}" -o "$work/one.jsonl" 2> /dev/null; }
splits() { parallel --will-cite --pipe -k --block "$block" "$demo" inventory - "${options[@]}" < "$work/pieces.jsonl" > "$work/splits.jsonl" 2> "$work/errors"; }

alone=$(seconds one)
parted=$(seconds splits)
cmp "$work/one.jsonl" "$work/splits.jsonl"
echo "$pieces pieces: one run $alone s, splits $parted s, $(grep -c 'lines:' "$work/errors") splits; the joined answers are the bytes of the one run" >&2
awk -v one="$alone" -v splits="$parted" -v n="$pieces" 'BEGIN { OFS = "\t"
  print "one run, a million pieces", "splits", one / n * 1e6, "s"
  print "splits, a million pieces", "splits", splits / n * 1e6, "s" }'
