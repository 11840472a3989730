#!/usr/bin/env bash
# Does this wheel and tyre fit, and carry the car? Says so in a sentence, and keeps a drawing in drawing.svg.
#   docs/recipes/fits.sh [URL] [FOLDER]
set -euo pipefail
url=${1:-http://localhost:5080}
folder=${2:-.}
request='{
  "axle": "front",
  "vehicle": {
    "topSpeedKmh": 228,
    "front": {
      "maximumAxleLoadKg": 870,
      "wheel": { "marking": "7.5Jx17 ET45 5x108" },
      "tyre": { "marking": "225/45R17 91W" },
      "hub": { "centreBoreMm": 63.4 },
      "clearance": { "outboardMm": 18 }
    }
  },
  "candidate": {
    "wheel": { "marking": "8Jx17 ET40 5x108 CB63.4" },
    "tyre": { "marking": "225/45R17 94W XL" }
  }
}'

# --fail-with-body: a refusal's JSON says what is wrong, and the script ends.
ask() { curl --silent --show-error --fail-with-body --retry 3 "$url$1" --header 'content-type: application/json' --data "$request"; }

ask '/v1/fitment/check?detail=verdict' | sed -n 's/.*"summary":"\([^"]*\)".*/\1/p'
echo
ask /v1/fitment/drawing >"$folder/drawing.svg"
