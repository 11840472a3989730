"""Works out steady turns a second time and writes them to TestData/handling_oracle.json.

Run it in this folder: /usr/bin/python3 handling_equilibrium.py (Python 3.11, NumPy and SciPy 1.10 or later).
It shares no code and no way of solution with the service; see README.md.
"""

import json
from pathlib import Path

import handling_cases
from handling_balance import NoBalance
from handling_car import read_car
from handling_turns import answer, grip_limit, last_g

RANDOM_CASES = 12
GRIP_CASES = 225


def plain(value):
    """NumPy's own numbers and truths as Python's."""
    return value.item()


def work(case):
    expected = answer(read_car(case), case["turn"] == "left", case["lateralG"], case["cornerRadiusM"])
    assert expected["residual"] < 1e-10, (case["name"], expected["residual"])
    assert expected["guideError"] < 1e-9, (case["name"], expected["guideError"])
    return case | {"expected": expected}


def limit(case):
    asked = {name: value for name, value in case.items() if name != "lateralG"}
    return asked | {"limitG": last_g(read_car(case), case["turn"] == "left", case["cornerRadiusM"])}


def gripped(cases):
    """Limits of both axles, and what of its grip each uses and how the steer grows in the turn asked for."""
    found = []
    for case in cases:
        car, left = read_car(case), case["turn"] == "left"
        try:
            expected = answer(car, left, case["lateralG"], case["cornerRadiusM"])
            limits = {end: grip_limit(car, left, case["cornerRadiusM"], end, case["lateralG"]) for end in ("front", "rear")}
        except NoBalance as fault:
            print(f"left out: {case['name']}: {fault}")
            continue
        assert expected["residual"] < 1e-10, (case["name"], expected["residual"])
        found.append(case | {"expected": {"gripUsed": {end: expected["axles"][end]["gripUsed"] for end in limits}, "limitG": limits,
                                          "isLifted": any(wheel["isLifted"] for wheel in expected["wheels"].values()),
                                          "understeerDegPerG": expected["balance"]["understeerDegPerG"]}})
    return found


def main():
    parts = {"withoutPoints": [work(case) for case in handling_cases.by_hand() + handling_cases.at_random(RANDOM_CASES)],
             "withPoints": [work(case) for case in handling_cases.with_points()], "limits": [limit(case) for case in handling_cases.limits()],
             "grip": gripped(handling_cases.grip_cars(GRIP_CASES))}
    lines = [f'"{name}":[\n' + ",\n".join(json.dumps(case, separators=(",", ":"), allow_nan=False, default=plain) for case in part) + "\n]" for name, part in parts.items()]
    Path(__file__).parent.with_name("TestData").joinpath("handling_oracle.json").write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
