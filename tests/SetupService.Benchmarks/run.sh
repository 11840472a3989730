#!/usr/bin/env bash
# Starts the service (with its peer endpoints) on a free port, measures, and prints rates and ratios. Arguments: any of calls lines rows catalogue corners.
# NATIVE=/some/folder/SetupService.Api (dotnet publish src/SetupService.Api -c Release -o /some/folder) measures the native build beside it in calls;
# CALLS="cornering turn" measures those peers' calls alone.
# corners needs c++ and a Python with SciPy (Debian: g++, python3-scipy; PYTHON names another one).
set -euo pipefail
cd "$(dirname "$0")"
dotnet build -c Release --nologo -v quiet
program=bin/Release/net10.0/SetupService.Benchmarks

answers() { (exec 3<>"/dev/tcp/127.0.0.1/$1") 2>/dev/null; }

free_port() {
  local port
  while port=$((RANDOM % 20000 + 20000)); answers "$port"; do :; done
  echo "$port"
}

wait_for() {
  for _ in $(seq 100); do
    answers "$1" && return
    sleep 0.1
  done
  echo "nothing answers on port $1" >&2
  exit 1
}

servers=()
trap 'kill "${servers[@]}"' EXIT
port=$(free_port)
url=http://127.0.0.1:$port
"$program" serve --urls "$url" >/dev/null &
server=$!
servers+=($server)
wait_for "$port"
beside=()
if [ -n "${NATIVE:-}" ]; then
  native_port=$(free_port)
  "$NATIVE" --urls "http://127.0.0.1:$native_port" >/dev/null &
  servers+=($!)
  beside=(native "http://127.0.0.1:$native_port" $!)
  wait_for "$native_port"
fi
grep -m1 'model name' /proc/cpuinfo || true
echo "$(nproc) processors, $(dotnet --version), JIT${NATIVE:+ and native}, $(date +%F), load $(cut -d' ' -f1-3 /proc/loadavg)"
for what in ${*:-calls lines rows catalogue corners}; do
  case $what in
    calls) "$program" calls "$url" $server "${beside[@]}" ${CALLS:-} ;;
    rows) "$program" rows "$url" ;;
    catalogue)
      "$program" catalogue
      "$program" catalogue "$url" $server ;;
    corners)
      c++ -O3 -march=native -std=c++17 Geometry/peers/corner_peer.cpp -o obj/corner_peer
      "$program" corners obj/corner_peer "${PYTHON:-/usr/bin/python3}" Geometry/peers/corner_peer.py ;;
    *) "$program" "$what" "$url" $server ;;
  esac
done
