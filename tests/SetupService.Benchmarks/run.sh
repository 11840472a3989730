#!/usr/bin/env bash
# Starts the service (with its peer endpoints), measures, and prints rates and ratios. Arguments: any of calls lines rows catalogue corners.
# corners needs c++ and a Python with SciPy (Debian: g++, python3-scipy; PYTHON names another one).
set -euo pipefail
cd "$(dirname "$0")"
url=http://127.0.0.1:5191
dotnet build -c Release --nologo -v quiet
program=bin/Release/net10.0/SetupService.Benchmarks
"$program" serve --urls "$url" >/dev/null &
server=$!
trap 'kill $server' EXIT
for _ in $(seq 100); do
  (exec 3<>/dev/tcp/127.0.0.1/5191) 2>/dev/null && break
  sleep 0.1
done
grep -m1 'model name' /proc/cpuinfo || true
echo "$(nproc) processors, $(dotnet --version), JIT, $(date +%F)"
for what in ${*:-calls lines rows catalogue corners}; do
  case $what in
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
