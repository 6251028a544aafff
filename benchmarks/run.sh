#!/usr/bin/env bash
# Redoes every figure of benchmarks/results: all benchmarks, or those whose name matches the first argument, such as '*Inventory*'.
# The tables of BenchmarkDotNet, with CPU and versions, go to benchmarks/results/raw; the pages beside it are written from them.
set -eu
cd "$(dirname "$0")/.."
results=benchmarks/results/raw
mkdir -p "$results"
dotnet run -c Release --project benchmarks/Terminus.Benchmarks -- --filter "${1:-*}" --join --artifacts "$results" "${@:2}"
{
  echo "commit $(git rev-parse --short HEAD)"
  echo "date $(date -u +%F)"
  echo ".NET SDK $(dotnet --version)"
  grep -m1 'model name' /proc/cpuinfo || true
  echo "load $(cut -d' ' -f1 /proc/loadavg) on $(nproc) cores"
} > "$results/versions.txt"
benchmarks/split.sh 100000
