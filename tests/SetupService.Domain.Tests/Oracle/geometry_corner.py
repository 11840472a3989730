"""A corner of any of the five kinds, read from a request's `suspension`, `alignment` and `loadedRadiusMm`."""

from dataclasses import dataclass, field, replace

import numpy as np

from geometry_constraints import Height, Held, Link, OnAxis, Rigid, StrutLine, ToeHeld
from geometry_upright import stated_frame, vector

LINKS = {
    "macPhersonStrut": [("lowerArmFront", "lowerBallJoint"), ("lowerArmRear", "lowerBallJoint"), ("tieRodInner", "tieRodOuter")],
    "doubleWishbone": [("lowerArmFront", "lowerBallJoint"), ("lowerArmRear", "lowerBallJoint"), ("upperArmFront", "upperBallJoint"),
                       ("upperArmRear", "upperBallJoint"), ("tieRodInner", "tieRodOuter")],
    "fiveLink": [(f"chassis{n}", f"upright{n}") for n in range(1, 6)],
    "semiTrailingArm": [], "twistBeam": []}


@dataclass(frozen=True)
class Corner:
    """All points from the stated wheel centre (so that a far origin costs no digits); `places` are those of the upright, in its frame."""

    kind: str
    request: dict
    origin: np.ndarray
    frame: np.ndarray
    spin: np.ndarray
    body: dict
    places: dict
    lengths: dict = field(default_factory=dict)
    toe_held_deg: float | None = None

    @property
    def rod(self):
        """The last link is the tie rod; None for arms and beams."""
        return LINKS[self.kind][-1] if LINKS[self.kind] else None

    def constraints(self):
        held = [Rigid(), Height()]
        for inner, outer in LINKS[self.kind]:
            steered = (inner, outer) == self.rod
            if steered and self.toe_held_deg is not None:
                held.append(ToeHeld(self.spin, self.toe_held_deg))
            else:
                held.append(Link(self.body[inner], self.places[outer], self.lengths[inner], steered))
        if self.kind == "macPhersonStrut":
            held.append(StrutLine(self.body["strutTop"], self.places["strutLower"], self.places["strutAxis"]))
        if not LINKS[self.kind]:
            axis = self.body["pivotOuter"] - self.body["pivotInner"]
            held += [Held(self.body["pivotInner"], self.places["pivotInner"]), OnAxis(self.body["pivotInner"], axis, self.places["pivotOuter"])]
        return held

    def with_body(self, name, move):
        return replace(self, body=self.body | {name: self.body[name] + move})

    def with_length(self, name, change):
        return replace(self, lengths=self.lengths | {name: self.lengths[name] + change})


def point(document):
    return vector(document["xMm"], document["yMm"], document["zMm"])


def read_points(suspension):
    points = {name: point(value) for name, value in suspension.items() if isinstance(value, dict)}
    for number, link in enumerate(suspension.get("links", []), 1):
        points |= {f"chassis{number}": point(link["chassis"]), f"upright{number}": point(link["upright"])}
    return points


def arm_axis(points, kind, motion):
    """The two pivots of an arm. A beam's wheels moving together turn about a line across the car, moving oppositely about
    the line to the beam's shear centre."""
    if kind == "semiTrailingArm":
        return points["pivotInner"], points["pivotOuter"]
    pivot = points["pivotLeft"]
    return (pivot - vector(0, 300, 0) if motion == "parallel" else points["beamShearCentre"]), pivot


def read_corner(request):
    suspension, alignment = request["suspension"], request["alignment"]
    kind, given = suspension["kind"], read_points(suspension)
    origin = given["wheelCentre"]
    points = {name: value - origin for name, value in given.items()}
    frame = stated_frame(alignment["camberDeg"], alignment["toeDeg"])
    if not LINKS[kind]:
        points["pivotInner"], points["pivotOuter"] = arm_axis(points, kind, request.get("motion"))
    places = {name: frame @ value for name, value in points.items()}
    if kind == "macPhersonStrut":
        places["strutAxis"] = frame @ (points["strutTop"] - points["strutLower"])
    lengths = {inner: np.sqrt(((points[inner] - points[outer]) ** 2).sum()) for inner, outer in LINKS[kind]}
    return Corner(kind, request, origin, frame, vector(1, 0, 0), points, places, lengths)
