# What the scripts of this folder share: where things are, and a check that says its name and counts.
set -u
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
work=$root/artifacts/package-tests
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 MSBUILDDISABLENODEREUSE=1
passed=0
failed=0

# check NAME COMMAND…: one line for each consumer; the log only where it fails.
check() {
  local name=$1 log
  shift
  log=$work/$(printf '%s' "$name" | tr -c 'A-Za-z0-9\n' '-').log
  if "$@" > "$log" 2>&1; then
    passed=$((passed + 1))
    echo "ok      $name"
  else
    failed=$((failed + 1))
    echo "FAILED  $name"
    sed 's/^/        /' "$log" | tail -30
  fi
}

# need PROGRAM PACKAGE…: installs Debian's packages where the program is missing.
need() {
  command -v "$1" > /dev/null && return
  [ -n "${aptUpdated:-}" ] || { apt-get update -qq > /dev/null; aptUpdated=1; }
  shift
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" > /dev/null
}

# prints EXPECTED-FILE COMMAND…: the output of the command is that of the file.
prints() {
  local expected=$1
  shift
  diff "$expected" <("$@")
}

close() {
  echo "$passed passed, $failed failed"
  [ "$failed" -eq 0 ]
}
