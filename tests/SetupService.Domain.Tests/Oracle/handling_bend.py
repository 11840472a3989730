"""Works out turns that are braked or driven through a second time and writes them to TestData/bend_oracle.json.

Run it in this folder: /usr/bin/python3 handling_bend.py. The cars are those whose limits handling_equilibrium.py seeks, each with brakes, drive and air of
its own, and those with points; longitudinal forces are shared, and grip beside them, as docs/methods/cornering has it.
"""

import json
from pathlib import Path
from multiprocessing import Pool
from random import Random

import handling_cases
from handling_balance import WHEELS, NoBalance
from handling_car import read_car
from handling_equilibrium import GRIP_CASES, plain
from handling_turns import answer, grip_limit, names, settled

SEED = 20261130
WITH_POINTS = ("strut and wishbone", "strut and wishbone, to the right", "strut and wishbone, gently", "camber and toe", "compliance", "corner weights",
               "wishbone in front, strut behind", "five links behind", "semi-trailing arms behind")


def along(random, case):
    """The case with brakes, drive, now and then air, and a longitudinal acceleration."""
    kind = random.choice(["open", "locked", "limitedSlip"])
    extra = {"drivenAxle": random.choice(["front", "rear", "both"]), "brakeShareFrontPct": round(random.uniform(50, 85), 2),
             "differential": {"kind": kind} | ({"biasRatio": round(random.uniform(1.3, 4), 3)} if kind == "limitedSlip" else {})}
    if extra["drivenAxle"] == "both":
        extra["driveShareFrontPct"] = round(random.uniform(20, 70), 2)
    if random.random() < 0.3:
        extra["aero"] = {"referenceSpeedKmh": 150.0, "frontDownforceN": round(random.uniform(-300, 900), 1), "rearDownforceN": round(random.uniform(-300, 1200), 1),
                         "dragN": round(random.uniform(300, 900), 1)}
    longitudinal = round(random.uniform(-0.55, -0.05) if random.random() < 0.6 else random.uniform(0.03, 0.3), 4)
    return case | {"vehicle": case["vehicle"] | extra, "lateralG": round(0.8 * case["lateralG"], 4), "longitudinalG": longitudinal}


def limits_of(case):
    """Both limits and what is used in the turn asked for; None where this way of solving ends before (left out, and printed)."""
    car, left, ax = read_car(case), case["turn"] == "left", case["longitudinalG"]
    try:
        search, u, contacts, _, needs = settled(car, left, case["lateralG"], case["cornerRadiusM"], longitudinal_g=ax)
        found = {end: grip_limit(car, left, case["cornerRadiusM"], end, case["lateralG"], ax) for end in ("front", "rear")}
    except (NoBalance, ZeroDivisionError) as fault:
        print(f"left out: {case['name']}: {fault}")
        return None
    turn = search.turn(case["lateralG"])
    states, called = turn.states(u, contacts), names(left)
    return case | {"expected": {
        "gripUsed": needs, "limitG": found, "rollDeg": u[0], "heaveMm": {"front": u[1], "rear": u[2]},
        "longitudinalUsed": {"front": states[0].used, "rear": states[2].used},
        "wheels": {called[key]: {"loadN": s.load, "sideForceN": s.force, "longitudinalN": s.along, "travelMm": s.travel} for key, s in zip(WHEELS, states)}}}


def stands(case):
    """A turn with points, its figures as handling_equilibrium has them."""
    car, left, ax = read_car(case), case["turn"] == "left", case["longitudinalG"]
    try:
        expected = answer(car, left, case["lateralG"], case["cornerRadiusM"], ax)
    except NoBalance as fault:
        print(f"left out: {case['name']}: {fault}")
        return None
    assert expected["residual"] < 1e-10 and expected["guideError"] < 1e-9, case["name"]
    return case | {"expected": expected}


def main():
    random = Random(SEED)
    cars = [along(random, case) for case in handling_cases.grip_cars(GRIP_CASES)]
    drawn = [along(random, case) for case in handling_cases.with_points() if case["name"] in WITH_POINTS]
    with Pool(3) as pool:
        parts = {"limits": pool.map(limits_of, cars, 1), "withPoints": pool.map(stands, drawn, 1)}
    lines = [f'"{name}":[\n' + ",\n".join(json.dumps(case, separators=(",", ":"), allow_nan=False, default=plain) for case in part if case) + "\n]" for name, part in parts.items()]
    Path(__file__).parent.with_name("TestData").joinpath("bend_oracle.json").write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
