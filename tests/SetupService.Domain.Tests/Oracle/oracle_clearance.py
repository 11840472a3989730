"""Edges of a fitting, and the room left at the five places: nominal, probable and at worst.

Stations are mm from the hub face along the wheel's axis, outboard positive.
"""

from dataclasses import dataclass
from math import ceil, hypot, radians, sin, sqrt, tan

import oracle_tyres as tyres
from curve_posterior import Curve

# Least width of a J flange: JIS D 4218:2021, Table 3, after ISO 4000-2:2013.
J_FLANGE_MM = 11.0

# A part may stand up to 40 degrees off the direction its gap was measured in: common practice, no source.
ACROSS = sin(radians(40))

# Common practice, no source.
DEFAULT_MINIMUM_MARGIN_MM = 3.0
DEFAULT_UNCERTAINTY_MM = 1.0
EXTRAPOLATED_TRAVEL_MM = 20.0

# A bump stop nobody measured, and the share of its length by which one is compressed: common practice, no source.
STOP_LENGTH_MM = 45.0
COMPRESSIBLE_SHARE = 0.6
# Damper travel by wheel travel where nobody stated it: common practice, no source.
DAMPER_RATIO = {"macPhersonStrut": 0.95, "doubleWishbone": 0.65}
OTHER_DAMPER_RATIO = 0.85
# Between two places looked at no more than so much travel.
STEP_MM = 4.0


class Unknown(Exception):
    """A part of the answer that cannot be told."""


class Contradiction(Unknown):
    """Two measurements that cannot both be right."""


@dataclass(frozen=True)
class Fitting:
    """A wheel with its tyre, as the request gives them."""

    wheel: dict
    tyre_document: dict

    @property
    def tyre(self):
        return tyres.read(self.tyre_document["marking"])

    @property
    def section(self):
        return tyres.width_on(self.tyre, self.wheel["rimWidthIn"])

    @property
    def protectors(self):
        """Rim protectors stand out beyond the section at both sides."""
        return 2 * self.tyre_document.get("rimProtectorMm", 0.0)

    @property
    def over_flanges(self):
        return self.wheel["rimWidthIn"] * 25.4 + 2 * J_FLANGE_MM

    @property
    def half_width(self):
        """An edge is the wider of the tyre's section on this rim and the rim over its flanges."""
        return max(self.section + self.protectors, self.over_flanges) / 2

    @property
    def centre(self):
        """Positive offset: the mounting face lies outboard of the rim's centre plane (ISO 3911, inset)."""
        return self.wheel.get("spacerMm", 0.0) - self.wheel["offsetMm"]

    @property
    def outer(self):
        return self.centre + self.half_width

    @property
    def inner(self):
        return self.centre - self.half_width

    @property
    def radius(self):
        return tyres.overall_diameter(self.tyre) / 2

    # What the tyre may grow to, past the edge the envelope already has.
    @property
    def growth_of_edge(self):
        return max(0.0, (tyres.largest_width_on(self.tyre, self.wheel["rimWidthIn"]) + self.protectors) / 2 - self.half_width)

    @property
    def growth_of_radius(self):
        return tyres.largest_diameter(self.tyre) / 2 - self.radius

    # The gaps were measured with a tyre that may have been smaller than nominal.
    @property
    def shortfall_of_edge(self):
        """Half of 1 % of the section, as far as the tyre and not the rim is the edge."""
        return min(0.01 * self.section / 2, max(0.0, self.half_width - self.over_flanges / 2))

    @property
    def shortfall_of_radius(self):
        return self.radius - tyres.smallest_diameter(self.tyre) / 2

    @property
    def radius_of_widest_place(self):
        """Halfway between bead seat and tread: a convention."""
        return (tyres.rim_diameter(self.tyre) / 2 + self.radius) / 2


def fitting(wheel, tyre):
    return Fitting(wheel, tyre) if wheel and tyre else None


def comparison(current, candidate, inclination_deg=None, indicated_kmh=100.0):
    if current is None:
        return None
    diameter_change = 2 * (candidate.radius - current.radius)
    ratio = tyres.rolling_circumference(candidate.tyre) / tyres.rolling_circumference(current.tyre)
    moved = candidate.centre - current.centre
    if inclination_deg is not None:
        scrub = moved - diameter_change / 2 * tan(radians(inclination_deg))
    else:
        scrub = moved if diameter_change == 0 else None  # without a change of diameter no inclination is needed
    masses = [part.get("massKg") for fit in (candidate, current) for part in (fit.wheel, fit.tyre_document)]
    return {
        "outboardChangeMm": candidate.outer - current.outer,
        "inboardChangeMm": current.inner - candidate.inner,
        "trackChangeMm": 2 * moved,
        "scrubRadiusChangeMm": scrub,
        "overallDiameterChangeMm": diameter_change,
        "overallDiameterChangePct": 100 * diameter_change / (2 * current.radius),
        "rideHeightChangeMm": diameter_change / 2,
        "gearingChangePct": 100 * (ratio - 1),
        "massChangeKg": None if None in masses else masses[0] + masses[1] - masses[2] - masses[3],
        "trueKmh": indicated_kmh * ratio,
    }


def camber_on(curve, travel):
    """The curve through the readings, carried on for 20 mm."""
    if not float(curve.first) - EXTRAPOLATED_TRAVEL_MM <= travel <= float(curve.last) + EXTRAPOLATED_TRAVEL_MM:
        raise Unknown("the camber curve does not reach the travel")
    return curve.at(travel)[0]


def upward_travel(axle):
    """From ride height to the stop, and through it as far as it can be compressed, by the stop's motion ratio."""
    if axle.get("bumpTravelMm") is None:
        raise Unknown("bump travel")
    stop, kind = axle.get("bumpStop", {}), axle.get("suspension", {}).get("kind")
    length = stop.get("lengthMm")
    if length is not None and "compressedLengthMm" in stop:
        squash = max(0.0, length - stop["compressedLengthMm"])
    else:
        squash = COMPRESSIBLE_SHARE * (STOP_LENGTH_MM if length is None else length)
    damper = axle.get("damper", {}).get("motionRatio", DAMPER_RATIO.get(kind, OTHER_DAMPER_RATIO))
    return axle["bumpTravelMm"] + squash / stop.get("motionRatio", damper)


def leans(axle):
    """(travel, difference of the sines of camber) at even steps from ride height up; positive = top towards the car."""
    top = upward_travel(axle)
    readings = axle.get("suspension", {}).get("readings")
    if not readings or len(readings) < 2:
        raise Unknown("travel from ride height")
    curve = Curve([r["travelMm"] for r in readings], [r["camberDeg"] for r in readings], axle["suspension"]["gaugeErrorDeg"])
    camber_on(curve, top)
    at_ride_height = sin(radians(camber_on(curve, 0.0)))
    count = ceil(top / STEP_MM)
    places = [top * step / count for step in range(1, count + 1)]
    return [(place, at_ride_height - sin(radians(max(-90.0, min(90.0, camber_on(curve, place)))))) for place in places]


def travel_takes(place, axle, candidate):
    """Only of a gap measured at ride height; at worst travel (the default) it is in the gap. Readings tell no way sideways."""
    gaps = axle["clearance"]
    if gaps.get("measuredAt", "worstTravel") == "worstTravel" or place == "springSeat":
        return 0.0  # a spring seat travels with the wheel
    if place == "radial":
        return upward_travel(axle)
    part, kind = gaps.get("inboardTo"), axle.get("suspension", {}).get("kind")
    carries = kind in (None, "macPhersonStrut", "measured")  # a strut that is one piece with the upright
    if place == "inboard" and part == "strut" and carries:
        upward_travel(axle)
        return 0.0
    height = gaps.get("inboardHeightMm") if place == "inboard" else None
    most = 0.0
    for travel, lean in leans(axle):
        if place == "outboard":
            most = max(most, -candidate.radius * lean)  # the arch is above the wheel centre
        elif height is None:
            most = max(most, candidate.radius * abs(lean))
        else:
            above = height - axle["loadedRadiusMm"]
            most = max(most, above * lean, (above - travel) * lean)
    return most / 2 if place == "inboard" and part in ("arm", "strut") else most


def turns_against_strut(change, kind):
    """Whether the wheel turns against what stands beside it."""
    if change["at"] == "lowerJoint":
        return kind != "macPhersonStrut"  # about the upper joint, not about the strut's top
    return change["at"] == "strutToKnuckle"


def camber_takes(place, change, axle, candidate):
    """A point z above the pivot moves inboard by z tan(-change)."""
    if change is None or change["changeDeg"] == 0:
        return 0.0
    lean_in = tan(radians(-change["changeDeg"]))
    kind = axle.get("suspension", {}).get("kind")
    pivot, narrowest = change.get("pivotHeightMm"), change.get("narrowestHeightMm")
    shoulder = candidate.half_width * sin(radians(abs(change["changeDeg"])))
    if place in ("inboard", "fullLock"):
        if not turns_against_strut(change, kind):
            return 0.0
        if pivot is None or narrowest is None:
            raise Unknown("heights of pivot and narrowest place")
        takes = (narrowest - pivot) * lean_in
        # Measured or not described, it may turn about a strut's top, where nothing is gained.
        either_way = change["at"] == "lowerJoint" and kind in (None, "measured")
        return max(0.0, takes) if either_way else takes
    if place == "outboard":
        if pivot is None:
            if change["at"] == "lowerJoint":
                raise Unknown("the pivot stands above the lip")
            pivot = candidate.radius if lean_in > 0 else 0.0  # the plausible height that leaves least room
        return -(candidate.radius + candidate.radius_of_widest_place - pivot) * lean_in
    if place == "radial":
        return shoulder
    if not turns_against_strut(change, kind):
        return 0.0
    if pivot is None:
        raise Unknown("height of the pivot")
    return shoulder + ACROSS * max(0.0, (2 * candidate.radius - pivot) * lean_in)


def candidate_takes(place, current, candidate):
    inboard = current.inner - candidate.inner
    larger = candidate.radius - current.radius
    return {
        "inboard": inboard,
        "outboard": candidate.outer - current.outer,
        "radial": larger,
        "fullLock": inboard + ACROSS * max(0.0, larger),
        "springSeat": larger + ACROSS * max(0.0, inboard),
    }[place]


def spread(place, along_edge, along_radius):
    """Growth or production along the direction of the gap; where the direction is open, also across it."""
    return {
        "inboard": along_edge,
        "outboard": along_edge,
        "radial": along_radius,
        "fullLock": hypot(along_edge, ACROSS * along_radius),
        "springSeat": hypot(along_radius, ACROSS * along_edge),
    }[place]


GAPS = {
    "inboard": "inboardMm",
    "outboard": "outboardMm",
    "radial": "radialMm",
    "fullLock": "inboardAtFullLockMm",
    "springSeat": "springSeatMm",
}


def tolerances(place, current, candidate, axle):
    return (
        spread(place, candidate.growth_of_edge, candidate.growth_of_radius),
        spread(place, current.shortfall_of_edge, current.shortfall_of_radius),
        axle["clearance"].get("uncertaintyMm", DEFAULT_UNCERTAINTY_MM))


def margin(place, axle, candidate, change=None, standing=False):
    """(nominal, probable, worst case), or Unknown; standing: with the car at rest, without travel."""
    current = fitting(axle.get("wheel"), axle.get("tyre"))
    gap = axle.get("clearance", {}).get(GAPS[place])
    if current is None or gap is None:
        raise Unknown("no gap, or none to compare with")
    if not standing:
        # The present fitting first: gap and measuring error less what travel takes, without growth or production.
        try:
            own = travel_takes(place, axle, current)
        except Unknown:
            own = 0.0
        if gap + axle["clearance"].get("uncertaintyMm", DEFAULT_UNCERTAINTY_MM) - own < 0:
            raise Contradiction("the measurements contradict each other")
    nominal = (gap - candidate_takes(place, current, candidate)
               - camber_takes(place, change, axle, candidate)
               - (0.0 if standing else travel_takes(place, axle, candidate)))
    parts = tolerances(place, current, candidate, axle)
    return nominal, nominal - sqrt(sum(part * part for part in parts)), nominal - sum(parts)


def room_spared(place, axle, candidate, change=None):
    """How much less room than the present fitting it takes, new or grown in service, whichever is less; Unknown where that is."""
    current = fitting(axle.get("wheel"), axle.get("tyre"))
    if current is None:
        raise Unknown("none to compare with")
    try:
        travel = travel_takes(place, axle, candidate) - travel_takes(place, axle, current) if axle.get("clearance") else 0.0
    except Unknown:
        if candidate.radius > current.radius:
            raise
        travel = 0.0
    more = candidate_takes(place, current, candidate) + camber_takes(place, change, axle, candidate) + travel
    grown = (more + spread(place, candidate.growth_of_edge, candidate.growth_of_radius)
             - spread(place, current.growth_of_edge, current.growth_of_radius))
    return -max(more, grown)


def is_inside(place, axle, candidate, change=None):
    try:
        return room_spared(place, axle, candidate, change) >= -1e-9
    except Unknown:
        return False


def status_of(margins, minimum):
    _, probable, worst = margins
    return "fail" if probable < 0 else "caution" if worst < minimum else "pass"


def window(axle_name, axle, tyre_document, rim_width_in):
    """Offsets at which no check of room fails: straight on the hub, everything but the offset fixed."""
    at_zero = fitting(
        {"rimDiameterIn": tyres.read(tyre_document["marking"]).rim_in, "rimWidthIn": rim_width_in, "offsetMm": 0.0},
        tyre_document)
    current = fitting(axle.get("wheel"), axle.get("tyre"))

    def probable(place):
        try:
            left = margin(place, axle, at_zero)[1]
        except Unknown:
            return None
        try:
            return max(left, room_spared(place, axle, at_zero))  # what takes no more room than the present one passes
        except Unknown:
            return left

    least = probable("outboard")
    least = None if least is None else -least
    greatest = [probable("inboard")]
    if axle_name == "front":
        greatest.append(probable("fullLock"))
    radial = probable("radial")
    nothing = radial is not None and radial < 0
    seat = probable("springSeat")
    if seat is not None:
        movement = current.inner - at_zero.inner
        still = seat + ACROSS * max(0.0, movement)  # the margin while the wheel goes no further inboard than now
        nothing = nothing or still < 0
        greatest.append(still / ACROSS - movement)
    known = [end for end in greatest if end is not None]
    greatest = min(known) if known else None
    if nothing:  # whatever the offset
        return {"rimWidthIn": rim_width_in, "status": "fail", "fromOffsetMm": None, "toOffsetMm": None}
    if least is not None and greatest is not None and least > greatest:
        status = "fail"
    else:
        status = "unknown" if least is None and greatest is None else "pass"
    return {"rimWidthIn": rim_width_in, "status": status, "fromOffsetMm": least, "toOffsetMm": greatest}
