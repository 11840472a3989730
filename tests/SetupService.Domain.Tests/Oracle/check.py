"""Checks the second workings themselves: that the committed cases are what the scripts give, and that they hold by short rules.

    python3 check.py          nothing but Python: the fittings worked again, and the turns, the steered wheels and the gaps of every case
                              held to what must be true of any of them (a few seconds)
    /usr/bin/python3 check.py --all    with NumPy and SciPy: every case worked again (some fifteen minutes)

The short rules share nothing with the scripts: statics of a turn, and the rotation about an inclined axis after Rodrigues (1840).
"""

import json
import math
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

HERE = Path(__file__).parent
DATA = HERE.parent / "TestData"
GRAVITY = 9.80665
AGAIN = [("fitment_oracle.py", "Oracle/fitment_cases.json")]
AGAIN_WITH_SCIPY = [("geometry_oracle.py", "Oracle/geometry_cases.json"), ("handling_equilibrium.py", "TestData/handling_oracle.json"), ("handling_bend.py", "TestData/bend_oracle.json")]
# What another processor and another SciPy leave of a solution to 1e-10; least movements are good to 1e-5 (README.md).
RELATIVE, ABSOLUTE = 1e-6, 1e-5

faults = []


def hold(case, what, kept, now, tolerance):
    if not abs(kept - now) <= tolerance:
        faults.append(f"{case}: {what} is {kept}, by the rule {now}")


def same(path, kept, now):
    """Structure and words exactly, numbers to the tolerance."""
    if isinstance(kept, bool) or isinstance(now, bool) or not (isinstance(kept, (int, float)) and isinstance(now, (int, float))):
        if type(kept) is not type(now):
            faults.append(f"{path}: {kept} became {now}")
        elif isinstance(kept, dict):
            for name in kept.keys() | now.keys():
                if name not in kept or name not in now:
                    faults.append(f"{path}/{name} is on one side only")
                else:
                    same(f"{path}/{name}", kept[name], now[name])
        elif isinstance(kept, list):
            if len(kept) != len(now):
                faults.append(f"{path}: {len(kept)} items became {len(now)}")
            for index, pair in enumerate(zip(kept, now)):
                same(f"{path}/{index}", *pair)
        elif kept != now:
            faults.append(f"{path}: {kept} became {now}")
    elif not abs(kept - now) <= ABSOLUTE + RELATIVE * max(abs(kept), abs(now)):
        faults.append(f"{path}: {kept} became {now}")


def work_again(scripts):
    with tempfile.TemporaryDirectory() as folder:
        for part in ("Oracle", "TestData"):
            shutil.copytree(HERE.parent / part, Path(folder, part), ignore=shutil.ignore_patterns("__pycache__"))
        for script, cases in scripts:
            Path(folder, cases).unlink()
            subprocess.run([sys.executable, script], cwd=Path(folder, "Oracle"), check=True)
            same(cases, json.loads((HERE.parent / cases).read_text(encoding="utf-8")), json.loads(Path(folder, cases).read_text(encoding="utf-8")))


def check_turns():
    """Whatever the suspension: the wheels carry the car, its side forces hold it, parts of a whole sum to it."""
    turns = json.loads((DATA / "handling_oracle.json").read_text(encoding="utf-8"))
    cases = turns["withoutPoints"] + turns["withPoints"]
    for case in cases:
        name, vehicle, expected = case["name"], case["vehicle"], case["expected"]
        for end in ("front", "rear"):
            wheels = {side: expected["wheels"][end + side] for side in ("Left", "Right")}
            weight = vehicle[f"{end}AxleLoadKg"] * GRAVITY
            hold(name, f"{end} load", sum(wheel["loadN"] for wheel in wheels.values()), weight, 1e-5)
            hold(name, f"{end} side force", sum(wheel["sideForceN"] for wheel in wheels.values()), weight * case["lateralG"], 1e-5)
            axle = expected["axles"][end]
            hold(name, f"{end} transfer", axle["loadTransferN"], axle["unsprungN"] + axle["geometricN"] + axle["elasticN"], 1e-5)
        for place, wheel in expected["wheels"].items():
            hold(name, f"{place} inclination", wheel["inclinationDeg"], sum(wheel["contributions"].values()), 1e-9)
    return len(cases)


def rotate(vector, axis, angle):
    """Rodrigues: v cos a + (k × v) sin a + k (k · v)(1 − cos a)."""
    (x, y, z), (i, j, k) = vector, axis
    cross = (j * z - k * y, k * x - i * z, i * y - j * x)
    along = (i * x + j * y + k * z) * (1 - math.cos(angle))
    return [v * math.cos(angle) + c * math.sin(angle) + u * along for v, c, u in zip(vector, cross, axis)]


def check_steered_wheels():
    """A left wheel's spin axis turned about the steering axis (ISO 8855: x forward, y left, z up) has the steer and camber told."""
    sweeps = json.loads((HERE / "geometry_cases.json").read_text(encoding="utf-8"))["steerSweeps"]
    for number, case in enumerate(sweeps, 1):
        name = f"steer sweep {number}"
        lean = (-math.tan(math.radians(case["casterDeg"])), -math.tan(math.radians(case["steeringAxisInclinationDeg"])), 1.0)
        axis = [part / math.hypot(*lean) for part in lean]
        camber, heading = math.radians(case["camberDeg"]), -math.radians(case["toeDeg"])
        spin = (-math.cos(camber) * math.sin(heading), math.cos(camber) * math.cos(heading), -math.sin(camber))
        for steer, rotation, over in zip(case["steerDeg"], case["rotationDeg"], case["camberOverSteerDeg"]):
            turned = rotate(spin, axis, math.radians(rotation))
            hold(name, "steer", steer, math.degrees(math.atan2(-turned[0], turned[1])), 1e-9)
            hold(name, "camber", over, -math.degrees(math.asin(turned[2])), 1e-9)
    return len(sweeps)


def main():
    everything = "--all" in sys.argv[1:]
    turns, sweeps = check_turns(), check_steered_wheels()
    work_again(AGAIN + (AGAIN_WITH_SCIPY if everything else []))
    for fault in faults[:20]:
        print(fault)
    print(f"{turns} turns and {sweeps} steered wheels held to short rules; worked again: {'all cases' if everything else 'the fittings'}; {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
