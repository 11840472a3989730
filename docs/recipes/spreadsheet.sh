#!/usr/bin/env bash
# A table saved by a spreadsheet, one wheel and tyre a row, answered by a table that the spreadsheet opens: verdict, room and reason beside your own columns.
#   docs/recipes/spreadsheet.sh [URL] [TABLE.csv] [ANSWER.csv]
set -euo pipefail
url=${1:-http://localhost:5080}
table=${2:-$(dirname "$0")/wheels.csv}
answer=${3:-answered.csv}
car='{
  "axle": "front",
  "vehicle": {
    "topSpeedKmh": 228,
    "front": {
      "maximumAxleLoadKg": 870,
      "wheel": { "marking": "7.5Jx17 ET45 5x108" },
      "tyre": { "marking": "225/45R17 91W" },
      "hub": { "centreBoreMm": 63.4 },
      "clearance": { "inboardMm": 14, "outboardMm": 18 }
    }
  }
}'

# Add ?only=pass,caution to get only what fits.
curl --silent --show-error --fail-with-body "$url/v1/fitment/batch/csv" --form "car=$car;type=application/json" --form "candidates=@$table;type=text/csv" --output "$answer"
