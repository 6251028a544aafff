#!/usr/bin/env bash
# Shows that a collection dated in splits by GNU parallel joins to the bytes of one run, and what a million pieces cost.
# Needs Debian's package parallel. Usage: benchmarks/split.sh [PIECES]
set -eu
cd "$(dirname "$0")/.."
pieces=${1:-20000}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

dotnet build src/Terminus.Demo -c Release -v q -o "$work/console"
demo="$work/console/terminus-demo"
dotnet run -c Release --project benchmarks/Terminus.Benchmarks -- generate "$pieces" "$work/pieces.jsonl" "$work/reference.json"
# A line that is no piece, in the middle, is answered alike wherever it falls.
sed -i "$((pieces / 2))s/.*/{ no piece/" "$work/pieces.jsonl"

options=(--as-of 2026-11-25 --reference "$work/reference.json")
# One line is no piece and some have problems, so the exit code is 1 by design.
seconds() { local start=$EPOCHREALTIME; "$@" || [ $? -lt 102 ]; echo "$EPOCHREALTIME $start" | awk '{ print $1 - $2 }'; }
one() { "$demo" inventory "$work/pieces.jsonl" "${options[@]}" -o "$work/one.jsonl"; }
splits() { parallel --will-cite --pipe -k --block 1M "$demo" inventory - "${options[@]}" < "$work/pieces.jsonl" > "$work/splits.jsonl" 2> "$work/errors"; }

alone=$(seconds one)
parted=$(seconds splits)
cmp "$work/one.jsonl" "$work/splits.jsonl"
echo "$pieces pieces: one run $alone s, splits $parted s, $(grep -c 'lines:' "$work/errors") splits; the joined answers are the bytes of the one run"
awk -v s="$alone" -v n="$pieces" 'BEGIN { printf "%.0f s a million pieces on this machine\n", s / n * 1e6 }'
