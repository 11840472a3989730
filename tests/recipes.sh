#!/usr/bin/env bash
# Runs every recipe of docs/recipes and reads what it says. Needs curl, Python 3, node and the .NET SDK; the page wants a Chromium, else it is left out and that is said.
#   tests/recipes.sh SERVICE PORT      the service allows pages of http://127.0.0.1:PORT
set -euo pipefail
cd "$(dirname "$0")/.."
service=$1
port=$2
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

says() { # says NAME PATTERN: what comes in has a line like it
  local text
  text=$(cat)
  grep -qE "$2" <<<"$text" || { printf '%s does not say “%s”:\n%s\n' "$1" "$2" "$text"; exit 1; }
}

bash docs/recipes/fits.sh "$service" "$folder" | says fits.sh '^Fits, with [0-9.]+ mm to the arch lip'
says "the drawing" '^<svg' <"$folder/drawing.svg"

python3 docs/recipes/camber.py "$service" >"$folder/camber"
says camber.py '^Set the front camber to −[0-9.]+°' <"$folder/camber"
says camber.py '^flat tread at -[0-9.]+° \(-[0-9.]+° to -[0-9.]+°\)$' <"$folder/camber"
says camber.py '^assumed: /vehicle/front/tyre' <"$folder/camber"
echo '{"vehicle": {}, "nonsense": 1}' >"$folder/wrong.json"
! python3 docs/recipes/camber.py "$service" "$folder/wrong.json" 2>"$folder/faults"
says "camber.py of a wrong request" '^  /nonsense: ' <"$folder/faults"

bash docs/recipes/spreadsheet.sh "$service" docs/recipes/wheels.csv "$folder/answered.csv"
says spreadsheet.sh '^line;id;verdict;.*;article;price' <"$folder/answered.csv"
says spreadsheet.sh '^2;;pass;.*;A-1;189,00' <"$folder/answered.csv"
says spreadsheet.sh '^5;;fail;boltCircle;.*;A-4;240,00' <"$folder/answered.csv"

dotnet run --project docs/recipes/csharp "$service" >"$folder/csharp"
says csharp '^7.5Jx17 ET40 5x108 CB63.4: Pass, [0-9.]+ mm of room' <"$folder/csharp"
[ "$(wc -l <"$folder/csharp")" = 2 ] || { echo "csharp lists other wheels than the two that fit:"; cat "$folder/csharp"; exit 1; }

node tests/browser/recipe-page.mjs "$service" "$port"
echo "every recipe was run"
