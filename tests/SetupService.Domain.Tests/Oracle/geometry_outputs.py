"""Every figure of one position of a left corner, by name; None where a kind has it not or an input is missing."""

import numpy as np

from geometry_corner import LINKS
from geometry_upright import Upright, unit, vector

UP = vector(0, 0, 1)
FLAT_RAD_PER_MM, LEAST_STEER_DEG = 1e-9, 5.0


class Position:
    """A pose with its velocity field per mm of wheel-centre travel at rack held."""

    def __init__(self, corner, walk, travel, rack):
        self.corner, self.travel, self.rack = corner, travel, rack
        self.upright = Upright(walk.at(travel, rack))
        self.by_travel, self.by_rack = walk.rates(travel, rack)
        self.centre = self.upright.centre
        self.spin = self.upright.direction(corner.spin)
        up = unit(UP - self.spin[2] * self.spin)
        self.contact = self.centre - corner.request["loadedRadiusMm"] * up
        self.top = self.centre + corner.request["loadedRadiusMm"] * up
        self.turn = self.upright.spin_rate(self.by_travel)

    def velocity(self, place):
        return self.by_travel[:3] + np.cross(self.turn, place - self.centre)

    @property
    def camber_deg(self):
        return -np.degrees(np.arcsin(self.spin[2]))

    @property
    def toe_deg(self):
        return np.degrees(np.arctan2(self.spin[0], self.spin[1]))

    def axis(self):
        """A point of the steering axis and its upward direction; None for arms and beams."""
        kind = self.corner.kind
        if kind in ("macPhersonStrut", "doubleWishbone"):
            lower = self.upright.point(self.corner.places["lowerBallJoint"])
            upper = self.corner.body["strutTop"] if kind == "macPhersonStrut" else self.upright.point(self.corner.places["upperBallJoint"])
            return lower, upper - lower
        if kind == "fiveLink":  # the screw axis of the motion that the rack gives with the wheel centre held at its height
            turn = self.upright.spin_rate(self.by_rack)
            place = self.centre + np.cross(turn, self.by_rack[:3]) / (turn @ turn)
            return place, turn * np.sign(turn[2])
        return None


def axis_figures(position):
    axis = position.axis()
    if axis is None:
        return dict.fromkeys(["casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm"])
    place, along = axis
    reach = position.contact - (place + along * ((position.contact[2] - place[2]) / along[2]))
    outboard = unit(vector(position.spin[0], position.spin[1], 0))
    heading = vector(outboard[1], -outboard[0], 0)
    return {"casterDeg": np.degrees(np.arctan2(-along[0], along[2])), "steeringAxisInclinationDeg": np.degrees(np.arctan2(-along[1], along[2])),
            "scrubRadiusMm": reach @ outboard, "mechanicalTrailMm": -(reach @ heading)}


def instant_centres(position):
    """Front and side view, through the contact centre; the origin's place is added where a coordinate counts from it."""
    contact, origin = position.contact, position.corner.origin
    velocity, turn = position.velocity(contact), position.turn
    place = contact + origin
    front = abs(turn[0]) >= FLAT_RAD_PER_MM
    side = abs(turn[1]) >= FLAT_RAD_PER_MM
    return {
        "instantCentreYMm": place[1] - velocity[2] / turn[0] if front else None,
        "instantCentreZMm": place[2] + velocity[1] / turn[0] if front else None,
        "swingArmMm": velocity[2] / turn[0] if front else None,
        "rollCentreHeightMm": place[1] * velocity[1] / velocity[2],
        "sideInstantCentreXMm": place[0] + velocity[2] / turn[1] if side else None,
        "sideInstantCentreZMm": place[2] - velocity[0] / turn[1] if side else None}


def anti_figures(position):
    request = position.corner.request
    wheelbase, height, share = (request.get(name) for name in ("wheelbaseMm", "centreOfGravityHeightMm", "brakeShareFrontPct"))
    axle, driven = request.get("axle"), request.get("drivenAxle")
    answer = dict.fromkeys(["antiDivePct", "antiLiftPct", "antiSquatPct"])
    if wheelbase is None or height is None or axle is None:
        return answer
    per = 100 * np.longdouble(wheelbase) / np.longdouble(height)
    along, _, rise = position.velocity(position.contact)
    contact, centre = along / rise, position.velocity(position.centre)[0]  # slopes of the two paths, dx/dz each of its own point
    if axle == "front":
        answer["antiDivePct"] = None if share is None else per * share / 100 * contact
        answer["antiLiftPct"] = per * centre if driven == "front" else None
    else:
        answer["antiLiftPct"] = None if share is None else -per * (1 - np.longdouble(share) / 100) * contact
        answer["antiSquatPct"] = -per * centre if driven == "rear" else None
    return answer


def on_arm(corner, arm, joint, place):
    """A point of an arm from where its ball joint is: coordinates in the triangle of its two body joints and the ball joint."""
    front, rear = corner.body[arm + "Front"], corner.body[arm + "Rear"]

    def basis(ball):
        return np.column_stack([rear - front, ball - front, np.cross(rear - front, ball - front)])

    shares = np.linalg.solve(basis(corner.body[joint]).astype(float), (place - front).astype(float))
    for _ in range(3):  # refined in extended precision
        shares = shares + np.linalg.solve(basis(corner.body[joint]).astype(float), (place - front - basis(corner.body[joint]) @ shares).astype(float))
    return front, rear - front, shares


def moving_end(position, place, part):
    """Where a point of a moving part is, and how fast it goes per mm of travel."""
    corner, upright = position.corner, position.upright
    if part in ("upright", "beam"):
        local = corner.frame @ place
        return upright.point(local), position.velocity(upright.point(local))
    joint = {"lowerArm": "lowerBallJoint", "upperArm": "upperBallJoint"}[part]
    front, axis, shares = on_arm(corner, part, joint, place)
    ball = upright.point(corner.places[joint])
    speed = position.velocity(ball)
    return (front + shares[0] * axis + shares[1] * (ball - front) + shares[2] * np.cross(axis, ball - front),
            shares[1] * speed + shares[2] * np.cross(axis, speed))


def unit_figures(position, name):
    """Length and motion ratio of the spring or the damper."""
    corner, suspension = position.corner, position.corner.request["suspension"]
    if name + "Chassis" in suspension:
        chassis = corner.body[name + "Chassis"]
        moving, speed = moving_end(position, corner.body[name + "Moving"], suspension[name + "On"])
    elif corner.kind == "macPhersonStrut":
        chassis = corner.body["strutTop"]
        moving = position.upright.point(corner.places["strutLower"])
        speed = position.velocity(moving)
    else:
        return {name + "MotionRatio": None, name + "LengthMm": None}
    reach = moving - chassis
    length = np.sqrt(reach @ reach)
    return {name + "MotionRatio": -(reach @ speed) / length, name + "LengthMm": length}


def gains(position):
    camber, toe, spin = np.radians(position.camber_deg), np.radians(position.toe_deg), position.spin
    change = np.cross(position.turn, spin)
    by_camber = np.degrees(-change[2] / np.cos(camber))
    by_toe = (change[0] * spin[1] - change[1] * spin[0]) / (spin[0] ** 2 + spin[1] ** 2)
    diameter = position.corner.request.get("measuringDiameterMm")
    return {"camberGainDegPerMm": by_camber, "camberGainPerRoll": by_camber * (position.contact + position.corner.origin)[1] * np.pi / 180,
            "bumpSteerDegPer10Mm": 10 * np.degrees(by_toe), "bumpSteerMmPer10Mm": None if diameter is None else diameter * np.cos(toe) * 10 * by_toe}


def steering_figures(corner, walk, position, stated):
    """The right wheel is the left one's mirror at the opposite rack."""
    names = ["otherSteerDeg", "ackermannPct", "turningCircleM"]
    if not LINKS[corner.kind]:
        return dict.fromkeys(names)
    other = Position(corner, walk, position.travel, -position.rack)
    steer, other_steer = -position.toe_deg, other.toe_deg
    answer = dict(zip(names, [other_steer, None, None]))
    wheelbase = corner.request.get("wheelbaseMm")
    (inner, outer, outer_wheel) = (steer, other_steer, other) if steer + other_steer > 0 else (other_steer, steer, position)
    inner, outer = abs(inner), abs(outer)
    if wheelbase is None or inner < LEAST_STEER_DEG:
        return answer
    if outer < LEAST_STEER_DEG or steer * other_steer < 0:
        raise ValueError("the outer wheel under 5 degrees or steered the other way: no rule is given, choose another place")
    place, along = stated.axis()
    kingpins = 2 * (place + along * ((stated.contact[2] - place[2]) / along[2]) + corner.origin)[1]
    ideal = np.degrees(np.arctan(1 / (1 / np.tan(np.radians(inner)) + kingpins / wheelbase)))
    forward = (outer_wheel.contact - stated.contact)[0]
    return answer | {"ackermannPct": 100 * (inner - outer) / (inner - ideal),
                     "turningCircleM": 2 * (wheelbase + forward) / np.sin(np.radians(outer)) / 1000}


def figures(corner, walk, travel, rack):
    position, stated = Position(corner, walk, travel, rack), Position(corner, walk, 0.0, 0.0)
    moved = position.contact - stated.contact
    answer = {"travelMm": travel, "rackMm": rack, "camberDeg": position.camber_deg, "toeDeg": position.toe_deg, "steerDeg": -position.toe_deg}
    answer |= axis_figures(position) | {"halfTrackChangeMm": moved[1], "contactForwardMm": moved[0]}
    answer |= instant_centres(position) | anti_figures(position) | unit_figures(position, "spring") | unit_figures(position, "damper")
    answer |= gains(position) | steering_figures(corner, walk, position, stated)
    return {name: None if value is None else float(value) for name, value in answer.items()}
