"""Works out 500 random fitments from the published rules and writes them to fitment_cases.json.

Run it in this folder: python3 fitment_oracle.py
Python 3.11 or later, standard library only. It shares no code with the service; see README.md.
"""

import json
from pathlib import Path

import oracle_checks as checks
import oracle_tyres as tyres
from oracle_cases import Draw, make_case
from oracle_clearance import comparison, fitting, window

SEED = 20261124
COUNT = 500
IDS = ["inboardClearance", "outboardClearance", "radialClearance", "fullLockClearance", "springSeatClearance", "rimDiameter",
       "rimWidth", "loadCapacity", "speedRating", "wheelLoadRating", "boltCircle", "centreBore", "fastener", "brakeClearance",
       "axleDiameterMatch", "overallDiameter", "archCover"]


def tyre_answer(request):
    """The candidate's tyre by itself."""
    candidate = fitting(request["candidate"]["wheel"], request["candidate"]["tyre"])
    tyre, rim = candidate.tyre, candidate.wheel["rimWidthIn"]
    pressure, speed, load = (request[name] for name in ("askedPressureKpa", "askedSpeedKmh", "askedLoadKg"))
    least, greatest, listed = tyres.permitted_rims(tyre)
    return {
        "overallDiameterMm": tyres.overall_diameter(tyre),
        "measuringRimWidthIn": tyres.measuring_rim_in(tyre),
        "designSectionWidthMm": float(tyres.design_width(tyre)),
        "sectionWidthOnRimMm": tyres.width_on(tyre, rim),
        "maximumSectionWidthMm": tyres.largest_width_on(tyre, rim),
        "minimumDiameterMm": tyres.smallest_diameter(tyre),
        "maximumDiameterMm": tyres.largest_diameter(tyre),
        "permittedMinimumIn": least, "permittedMaximumIn": greatest, "permittedListed": listed,
        "rollingCircumferenceMm": tyres.rolling_circumference(tyre),
        "rollingCircumferenceAtSpeedMm": tyres.rolling_circumference(tyre, speed),
        "loadCapacityKg": tyres.full_load(tyre),
        "capacityKg": tyres.capacity(tyre, pressure, speed),
        "pressureKpa": tyres.pressure_for(tyre, load, speed),
    }


def expected(request):
    name = request["axle"]
    axle = request["vehicle"][name]
    candidate = fitting(request["candidate"]["wheel"], request["candidate"]["tyre"])
    current = fitting(axle.get("wheel"), axle.get("tyre"))
    return {
        "tyre": tyre_answer(request),
        "comparison": comparison(current, candidate, request.get("steeringAxisInclinationDeg"), request["indicatedKmh"]),
        "check": checks.check(request),
        "windows": [window(name, axle, request["candidate"]["tyre"], width) for width in request["rimWidthsIn"]],
    }


def without_nulls(value):
    """A member that is left out is null: it keeps the file half as long."""
    if isinstance(value, dict):
        return {name: without_nulls(member) for name, member in value.items() if member is not None}
    return [without_nulls(item) for item in value] if isinstance(value, list) else value


def main():
    random = Draw(SEED)
    requests = [make_case(random, IDS) for _ in range(COUNT)]
    lines = [json.dumps({"case": number, "request": request, "expected": without_nulls(expected(request))}, separators=(",", ":"))
             for number, request in enumerate(requests, 1)]
    text = "[\n" + ",\n".join(lines) + "\n]\n"
    Path(__file__).with_name("fitment_cases.json").write_text(text, encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
