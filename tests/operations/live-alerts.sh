#!/usr/bin/env bash
# The alert rules in a real Prometheus over a real service (Debian: prometheus, curl, python3): the rules as they stand load; with their windows shortened to seconds, those
# about refusals fire while callers are refused, and SetupServiceDown fires once a service is gone. (Those about 500s, slowness and memory are shown to fire by alerts.test.yml.)
#   tests/operations/live-alerts.sh /some/folder/SetupService.Api
set -euo pipefail
program=$1
here=$(cd "$(dirname "$0")" && pwd)
rules=$here/../../docs/operations/alerts.yml
work=$(mktemp -d)
pids=()
trap 'kill "${pids[@]}" 2>/dev/null || true; wait; rm -rf "$work"' EXIT

free_port() { python3 -c 'import socket; s = socket.socket(); s.bind(("127.0.0.1", 0)); print(s.getsockname()[1])'; }
port=$(free_port)   # one turn, no queue, few steps: callers are turned away and work is exceeded
open=$(free_port)   # as it comes
keyed=$(free_port)  # a client with next to no units
metrics=$(free_port)
watch=$(free_port)

promtool check rules "$rules"
sed -E -e 's/\[(5m|10m|15m|1h)\]/[10s]/g' -e 's/for: (1m|5m|10m|15m|1h)/for: 1s/' "$rules" >"$work/alerts.yml"
cat >"$work/prometheus.yml" <<YAML
global: { scrape_interval: 1s, evaluation_interval: 1s }
rule_files: [ alerts.yml ]
scrape_configs:
  - job_name: setup-service-with-keys
    static_configs: [ { targets: [ "127.0.0.1:$metrics" ] } ]
  - job_name: setup-service
    static_configs: [ { targets: [ "127.0.0.1:$port", "127.0.0.1:$open" ] } ]
YAML

"$program" --urls "http://127.0.0.1:$port" --Telemetry:Metrics true --Work:Concurrency 1 --Work:QueueLength 0 --Work:Steps 20 >"$work/service.log" 2>&1 &
service=$!
pids+=("$service")
"$program" --urls "http://127.0.0.1:$open" --Telemetry:Metrics true >"$work/open.log" 2>&1 &
pids+=($!)
"$program" new-key shop >"$work/key.txt"
key=$(sed -n 2p "$work/key.txt" | tr -d ' ')
env $(grep '^Access__' "$work/key.txt") "$program" --urls "http://127.0.0.1:$keyed;http://127.0.0.1:$metrics" --Telemetry:Metrics true --Telemetry:MetricsPort "$metrics" --Access:Clients:shop:BurstUnits 1 >"$work/keyed.log" 2>&1 &
pids+=($!)
prometheus --config.file "$work/prometheus.yml" --storage.tsdb.path "$work/data" --web.listen-address "127.0.0.1:$watch" >"$work/prometheus.log" 2>&1 &
pids+=($!)
for one in "$port/health" "$open/health" "$metrics/health" "$watch/-"; do
  for _ in $(seq 100); do curl -fs -o /dev/null "http://127.0.0.1:$one/ready" && break; sleep 0.2; done
done

firing() { curl -fs "http://127.0.0.1:$watch/api/v1/alerts" | python3 -c 'import json, sys; print(*sorted({a["labels"]["alertname"] for a in json.load(sys.stdin)["data"]["alerts"] if a["state"] == "firing"}))'; }

wait_for() { # wait_for NAME...: until each of the alerts has fired at least once
  local seen="" missing name
  for _ in $(seq 60); do
    seen="$seen $(firing)"
    missing=""
    for name in "$@"; do [[ " $seen " == *" $name "* ]] || missing="$missing $name"; done
    [ -z "$missing" ] && { echo "fired: $*"; return; }
    sleep 1
  done
  echo "did not fire:$missing" >&2
  return 1
}

ask() { # ask PORT CALL BODY [HEADER]: over and over, until it is stopped
  while :; do
    curl -s -o /dev/null -X POST -H 'Content-Type: application/json' -H "${4:-Accept: */*}" --data-binary "@$3" "http://127.0.0.1:$1/v1/$2"
    sleep 0.05
  done
}
body=$here/../../api/examples/cornering.request.json
python3 - "$body" >"$work/never.json" <<'PY'
import json, sys
body = json.load(open(sys.argv[1]))
print(json.dumps({**body, "lateralG": 3}))
PY
for _ in 1 2 3; do ask "$port" handling/cornering "$body" & pids+=($!); done
ask "$open" handling/cornering "$work/never.json" & pids+=($!)
ask "$keyed" handling/cornering "$body" & pids+=($!)
ask "$keyed" handling/cornering "$body" "Api-Key: $key" & pids+=($!)
wait_for SetupServiceWorkExceeded SetupServiceTurnsCallersAway SetupServiceNoConvergence SetupServiceKeysRefused SetupServiceClientAtItsLimit
kill "$service"
wait_for SetupServiceDown
