#!/usr/bin/env bash
# profile.sh: makes src/SetupService.Api/Profile.mibc anew: how often the parts of the service run while it answers, counted by the JIT, by which the native compiler lays out its code.
# Not needed with every change: a method that changed since goes without until the next time. Publish the native build first (dotnet publish src/SetupService.Api -c Release -o ...).
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
project=src/SetupService.Api
response=$project/obj/Release/net10.0/linux-x64/native/SetupService.Api.ilc.rsp
[ -f "$response" ] || { echo "publish the native build first"; exit 1; }
sed "s#^obj/#$project/obj/#" "$response" >"$work/compiled.rsp"
dotnet build "$project" -c Release -o "$work/jit" --nologo -v quiet
# Every method counted from its first call on, also the framework's, and long enough.
DOTNET_TieredPGO=1 DOTNET_TieredPGO_InstrumentOnlyHotCode=0 DOTNET_ReadyToRun=0 DOTNET_TC_CallCountThreshold=200 DOTNET_WritePGOData=1 DOTNET_PGODataPath=$work/counts.txt \
  node tests/operations/exercise.mjs "$work/jit/SetupService.Api"
dotnet run .ci/profile.cs -- "$work/counts.txt" "$work/compiled.rsp" "$project/Profile.mibc"
