"""Works out suspension corners a second time and writes them to geometry_cases.json.

Run it in this folder: /usr/bin/python3 geometry_oracle.py (Python 3.11, NumPy and SciPy 1.10 or later).
It shares no code and no formulation with the service; see README.md.
"""

import json
from pathlib import Path

import geometry_adjustments
import geometry_examples
import geometry_hard
import geometry_steering
import geometry_targets


def in_columns(examples):
    """Names of the figures once, and each row as numbers in that order: a third of the length."""
    columns = list(examples[0]["rows"][0])
    return columns, [example | {"rows": [[row[name] for name in columns] for row in example["rows"]]} for example in examples]


def main():
    examples = geometry_hard.plain() + geometry_examples.corners() + geometry_hard.hard()
    columns, corners = in_columns(examples)
    requests = {corner["name"]: corner["request"] for corner in corners}
    parts = {"columns": columns, "corners": corners, "unreachable": geometry_hard.unreachable(),
             "adjustments": geometry_adjustments.cases(requests), "targets": geometry_targets.cases(requests),
             "steerSweeps": geometry_steering.sweeps(), "casterReadings": geometry_steering.caster_readings()}
    lines = [f'"{name}":' + (json.dumps(part) if name == "columns" else "[\n" + ",\n".join(
        json.dumps(case, separators=(",", ":"), allow_nan=False) for case in part) + "\n]") for name, part in parts.items()]
    Path(__file__).with_name("geometry_cases.json").write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
