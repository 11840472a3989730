#!/usr/bin/env bash
# The long run of bad requests: against the native service and against the same under the just-in-time compiler, one after the other, each with its memory before and after.
#   tests/hardening/long.sh /some/folder/SetupService.Api [COUNT] [SEED]      COUNT is 200,000 where left out
set -euo pipefail
cd "$(dirname "$0")/../.."
native=$1
count=${2:-200000}
seed=${3:-1}
url=http://127.0.0.1:5189
service=""
trap '[ -z "$service" ] || kill "$service" 2>/dev/null' EXIT

run() { # run NAME COMMAND...: the service by that command, under bad requests
  local name=$1
  shift
  "$@" --urls "$url" --Work:DeadlineSeconds 10 >/dev/null 2>&1 &
  service=$!
  until curl --silent --fail "$url/health/ready" >/dev/null; do
    kill -0 "$service" 2>/dev/null || { echo "$name: the service ended"; exit 1; }
    sleep 0.2
  done
  echo "$name:"
  node tests/hardening/run.mjs "$url" --count "$count" --seed "$seed" --deadline 10 --connections 4 --pid "$service"
  kill "$service"
  wait "$service" || true
  service=""
}

dotnet build src/SetupService.Api -c Release --nologo -v quiet -p:PublishAot=false -o artifacts/jit >/dev/null
run native "$native"
run JIT dotnet artifacts/jit/SetupService.Api.dll
