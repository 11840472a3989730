#!/usr/bin/env python3
"""How much camber does this car need in the bends it is driven in? Says so, with the first step to take.

    docs/recipes/camber.py [URL] [REQUEST.json]

Needs nothing but Python 3. The request is the demo car's; put your own numbers in a copy of it.
"""
import json
import sys
import time
import urllib.error
import urllib.request
from pathlib import Path

EXAMPLE = Path(__file__).parents[2] / "api/examples/camber-target.request.json"


def call(url, path, document, tries=5):
    """The answer to a document. A busy service (429, 503) is asked again when it says so; any other refusal ends with its faults."""
    request = urllib.request.Request(url + path, json.dumps(document).encode(), {"content-type": "application/json"})
    for left in reversed(range(tries)):
        try:
            with urllib.request.urlopen(request) as response:
                return json.load(response)
        except urllib.error.HTTPError as refusal:
            if refusal.code in (429, 503) and left:
                time.sleep(float(refusal.headers["retry-after"]))
                continue
            problem = json.load(refusal)
            faults = [f"  {fault.get('pointer') or fault.get('parameter') or 'the request'}: {fault['message']}" for fault in problem["errors"]]
            sys.exit("\n".join([problem["detail"], *faults]))


def main():
    url = sys.argv[1] if len(sys.argv) > 1 else "http://localhost:5080"
    document = json.loads(Path(sys.argv[2] if len(sys.argv) > 2 else EXAMPLE).read_text())
    answer = call(url, "/v1/handling/camber-target", document)
    print(answer["summary"])
    camber = answer["staticCamberDeg"]
    print(f"flat tread at {camber['value']:.1f}° ({camber['lower']:.1f}° to {camber['upper']:.1f}°)")
    for assumed in answer["assumptions"]:
        print(f"assumed: {assumed['input']}: {assumed['reason']}")


if __name__ == "__main__":
    main()
