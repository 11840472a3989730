#!/usr/bin/env bash
# Two replicas behind nginx (docs/operations/nginx.conf) on this machine, one of them killed under load: every request is answered, because the proxy asks the other
# replica again. Needs nginx (Debian: nginx-light) and node.
#   tests/operations/two-replicas.sh /some/folder/SetupService.Api
set -euo pipefail
program=$1
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
pids=()
trap 'kill "${pids[@]}" 2>/dev/null || true; rm -rf "$work"' EXIT
start() {
  "$program" --urls "http://127.0.0.1:$1" --Proxy:Networks:0 127.0.0.0/8 >"$work/$1.log" 2>&1 &
  pids+=($!)
}
start 5081
first=$!
start 5082
nginx -p "$work" -c "$here/../../docs/operations/nginx.conf" -g 'daemon off;' 2>"$work/nginx.log" &
pids+=($!)
for _ in $(seq 100); do
  curl -fs -o /dev/null http://127.0.0.1:5080/health/ready && break
  sleep 0.1
done
node "$here/steady-load.mjs" http://127.0.0.1:5080 8 "$first"
