"""A car for the cornering equations, read from a case: the vehicle document, and what it cannot say (`stated`)."""

import json
from dataclasses import dataclass
from math import inf

from handling_guides import StraightGuide, point_guide
from handling_tyre import Tyre, fitted

GRAVITY = 9.80665
SIDES = ("Left", "Right")


@dataclass(frozen=True)
class Wheel:
    guide: object
    static_camber: float
    load: float


@dataclass(frozen=True)
class Axle:
    name: str
    along: float
    track: float
    roll_centre: float
    unsprung: float
    radius: float
    tyre_rate: float
    spring_rate: float
    bar: float
    camber_compliance: float
    toe_compliance: float
    bump: float | None
    stop_rate: float
    stop_length: float
    rebound: float | None
    damper_ratio: float
    tyre: Tyre
    left: Wheel
    right: Wheel

    @property
    def load(self):
        return self.left.load + self.right.load


@dataclass(frozen=True)
class Drive:
    """What brakes and drives the car, and the air: shares of the front in percent; `air` holds reference speed in km/h, both downforces and drag."""

    brake_front: float = 68.0
    drive_front: float = 0.0
    kind: str = "open"
    bias: float = 1.0
    air: tuple | None = None

    def shared(self, force, holds):
        """An axle's force by its two wheels: halves, what the weaker tyre cannot hold given to the other; locked as they hold. And the share used."""
        if force > 0 and self.kind == "locked":
            return [force * hold / sum(holds) for hold in holds], force / sum(holds)
        size, weak = abs(force), min(holds)
        most = sum(holds) if force < 0 else min(sum(holds), (1 + (self.bias if self.kind == "limitedSlip" else 1.0)) * weak)
        if size > most > 0:  # beyond the grip of both: in the proportion of what each has
            parts, _ = self.shared(force * most / size * (1 - 1e-15), holds)
            return [part * size / most for part in parts], size / most
        if most == 0:
            return [force / 2, force / 2], inf
        over = max(0.0, size / 2 - weak)
        signed = 1 if force > 0 else -1
        first_weak = holds[0] < holds[1]
        return [signed * (size / 2 - over if weaker else size / 2 + over) for weaker in (first_weak, not first_weak)], size / most


@dataclass(frozen=True)
class Car:
    front: Axle
    rear: Axle
    height: float
    drive: Drive = Drive()

    @property
    def weight(self):
        return self.front.load + self.rear.load

    @property
    def sprung(self):
        """Sprung mass, height of its centre of gravity, its front share, and the arm of roll under it."""
        mass = self.weight / GRAVITY - sum(2 * axle.unsprung for axle in (self.front, self.rear))
        height = (self.weight / GRAVITY * self.height - sum(2 * axle.unsprung * axle.radius for axle in (self.front, self.rear))) / mass
        share = (self.front.load / GRAVITY - 2 * self.front.unsprung) / mass
        return mass, height, share, height - share * self.front.roll_centre - (1 - share) * self.rear.roll_centre


def wheel_loads(vehicle):
    corners = vehicle.get("cornerWeightsKg")
    if corners:
        return {name: GRAVITY * corners[name] for name in corners}
    return {f"{end}{side}": GRAVITY * vehicle[f"{end}AxleLoadKg"] / 2 for end in ("front", "rear") for side in SIDES}


def guide_of(axle, stated, side, end):
    alignment = axle["alignment"] | (axle["alignment"].get("right", {}) if side == "Right" else {})
    camber, toe = alignment.get("camberDeg", 0.0), alignment.get("toeDeg", 0.0)
    ratio = axle["spring"].get("motionRatio")
    if "suspension" in axle:
        request = {"suspension": axle["suspension"], "alignment": {"camberDeg": camber, "toeDeg": toe}, "loadedRadiusMm": stated["loadedRadiusMm"]}
        return point_guide(json.dumps(request, sort_keys=True), ratio, end == "front"), camber
    slope = axle["rollCentreHeightMm"] / (axle["trackMm"] / 2)
    return StraightGuide(camber, toe, alignment.get("casterDeg", 0.0), alignment.get("steeringAxisInclinationDeg", 0.0),
                         stated["swingArmMm"], slope, ratio), camber


def read_axle(vehicle, stated, end, along, loads):
    axle, extra = vehicle[end], stated[end]
    wheels = [Wheel(*guide_of(axle, extra, side, end), loads[f"{end}{side}"]) for side in SIDES]
    guides = [wheel.guide for wheel in wheels]
    points = guides[0].has_points
    track = sum(guide.half for guide in guides) if points else axle["trackMm"]
    compliance, stop, damper = axle.get("compliance", {}), axle.get("bumpStop", {}), axle.get("damper", {})
    return Axle(
        end, along, track, sum(guide.slope for guide in guides) * track / 4 if points else axle["rollCentreHeightMm"], axle["unsprungMassKg"],
        extra["loadedRadiusMm"], axle["tyre"]["verticalRateNPerMm"], axle["spring"]["rateNPerMm"],
        axle.get("antiRollBar", {}).get("rollRateNmPerDeg", 0.0), compliance.get("camberDegPerKn", 0.0), compliance.get("toeDegPerKn", 0.0),
        axle.get("bumpTravelMm"), stop.get("rateNPerMm", 0.0), stop.get("lengthMm", 0.0), axle.get("reboundTravelMm"),
        damper.get("motionRatio", 0.0), fitted(wheels[0].load + wheels[1].load, extra["tyreNominalLoadN"], extra["tyreFriction"], axle["tyre"].get("corneringStiffnessNPerDeg")), *wheels)


def read_car(case):
    vehicle, loads = case["vehicle"], wheel_loads(case["vehicle"])
    front = loads["frontLeft"] + loads["frontRight"]
    total = front + loads["rearLeft"] + loads["rearRight"]
    base = vehicle["wheelbaseMm"]
    return Car(read_axle(vehicle, case["stated"], "front", base * (1 - front / total), loads),
               read_axle(vehicle, case["stated"], "rear", -base * front / total, loads), vehicle["centreOfGravityHeightMm"], read_drive(vehicle))


def read_drive(vehicle):
    given, air = vehicle.get("differential", {}), vehicle.get("aero")
    driven = {"front": 100.0, "rear": 0.0}.get(vehicle.get("drivenAxle"), vehicle.get("driveShareFrontPct", 0.0))
    return Drive(vehicle.get("brakeShareFrontPct", 68.0), driven, given.get("kind", "open"), given.get("biasRatio", 1.0),
                 None if air is None else tuple(air[name] for name in ("referenceSpeedKmh", "frontDownforceN", "rearDownforceN", "dragN")))
