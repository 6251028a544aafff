#!/usr/bin/env bash
# Redoes every figure and writes it into docs/performance.md: about a quarter of an hour on a quiet machine of two cores.
# Usage: benchmarks/run.sh [STEP...] with steps of: benchmarks accuracy inscriptions steps collections console database split page; all without any.
# RAW names another folder than benchmarks/results/raw for what is measured; QUICK=1 tries everything on small sizes, and RAW is then a must.
# Needs Linux (/proc), the .NET SDK and Debian's package parallel, which is installed where there is none and one may.
set -eu
cd "$(dirname "$0")/.."
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1
raw=${RAW:-benchmarks/results/raw}
quick=${QUICK:-}
[ -z "$quick" ] || [ -n "${RAW:-}" ] || { echo "QUICK needs a folder of its own: RAW=DIR QUICK=1 benchmarks/run.sh" >&2; exit 2; }
sizes=(100000 1000000)
passes=(7 3)
job=short
if [ -n "$quick" ]; then sizes=(2000 4000); passes=(2 2); job=dry; fi
mkdir -p "$raw"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

build() { dotnet build "$1" -c Release -v q -o "$work/$2" "${@:3}" > "$work/build.log" || { cat "$work/build.log"; exit 1; }; }
program() { dotnet "$work/program/Terminus.Benchmarks.dll" "$@"; }
# A file is there whole or not at all.
keep() { "${@:2}" > "$work/kept" && mv "$work/kept" "$raw/$1"; }
lines() { [ -s "$work/$1.jsonl" ] || program generate "$1" "$work/$1.jsonl" "$work/reference.json"; }

machine() {
  local changed=
  git diff --quiet HEAD -- src data benchmarks/Terminus.Benchmarks benchmarks/Terminus.Benchmarks.Database || changed=" with changes"
  echo "$(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(nproc) cores; $(awk '/MemTotal/ { printf "%.0f GB", $2 / 1e6 }' /proc/meminfo); $(. /etc/os-release && echo "$PRETTY_NAME")"
  echo ".NET SDK $(dotnet --version), runtime $(dotnet --list-runtimes | sed -n 's/^Microsoft.NETCore.App \(10[^ ]*\).*/\1/p' | tail -1), $(uname -m)"
  grep -oE '"(BenchmarkDotNet|System.Numerics.Tensors|DuckDB.NET.Data.Full)" Version="[^"]*' src/Directory.Packages.props | sed 's/" Version="/ /; s/^"//' | paste -sd, - | sed 's/,/, /g'
  echo "Commit $(git rev-parse --short HEAD)$changed, $(date -u +%F); load before the start $(cut -d' ' -f1 /proc/loadavg)"
}

benchmarks() {
  rm -rf "$work/reports"
  dotnet run -c Release --project benchmarks/Terminus.Benchmarks -- --filter '*' --job "$job" --exporters briefjson --artifacts "$work/reports" > "$work/reports.log" 2>&1 \
    || { tail -50 "$work/reports.log"; exit 1; }
  rm -f "$raw"/*.json
  for report in "$work"/reports/results/*-report-brief.json; do
    cp "$report" "$raw/$(basename "$report" -report-brief.json | sed 's/.*\.//').json"
  done
}

accuracy() { keep accuracy.tsv program accuracy; }

inscriptions() { keep inscriptions.tsv program inscriptions; }

steps() { keep steps.md program steps; }

collections() {
  for i in 0 1; do
    lines "${sizes[i]}"
    keep "collections-${sizes[i]}.tsv" program inventory "$work/${sizes[i]}.jsonl" "${passes[i]}"
  done
}

console() {
  build src/Terminus.Demo console
  build benchmarks/Hello hello
  keep start.tsv program start "$work/console/terminus-demo" "$work/hello/hello" "$work"
  for size in "${sizes[@]}"; do
    lines "$size"
    keep "memory-$size.tsv" program memory "$work/console/terminus-demo" "$work/$size.jsonl" "$work/reference.json" "$size"
  done
}

database() {
  build benchmarks/Terminus.Benchmarks.Database database
  keep database.tsv dotnet "$work/database/Terminus.Benchmarks.Database.dll" "${sizes[1]}"
}

split() {
  if ! command -v parallel > /dev/null; then
    { apt-get update && apt-get install -y --no-install-recommends parallel; } > /dev/null 2>&1 || { echo "GNU parallel is missing: install Debian's package parallel." >&2; exit 1; }
  fi
  keep split.tsv benchmarks/split.sh "${sizes[1]}"
}

page() { [ -n "$quick" ] || program page "$raw" docs/performance.md; }

build benchmarks/Terminus.Benchmarks program
if [ $# -eq 0 ]; then
  rm -rf "${raw:?}"/*
  set -- benchmarks accuracy inscriptions steps collections console database split page
fi
machine > "$raw/machine.txt"
for step in "$@"; do
  echo "$(date -u +%T) $step"
  "$step"
done
date -u +%T
