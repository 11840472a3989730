"""What a workshop can turn or swap, as changes of a corner; the wheel centre keeps its height against the body but for rideHeight.

An adjustment is {adjuster, amount} with `link`, `boltSpacingMm` or `pivot` where it needs one; mm, but degrees for hub shims.
"""

from dataclasses import replace

import numpy as np

from geometry_corner import point
from geometry_outputs import Position, axis_figures, instant_centres
from geometry_solver import ADJUSTMENT_STEPS, Walk, pose
from geometry_upright import spin_of, vector

ANSWERED = ["camberDeg", "toeDeg", "casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm", "rollCentreHeightMm"]
BODY_MOVES = {"strutTopInboard": ("strutTop", (0, -1, 0)), "strutTopRearward": ("strutTop", (-1, 0, 0)),
              "outerPivotUp": ("pivotOuter", (0, 0, 1)), "outerPivotForward": ("pivotOuter", (1, 0, 0))}
SEAT_MOVES = {"lowerJointOutboard": ("lower", (0, 1, 0)), "lowerJointForward": ("lower", (1, 0, 0)),
              "upperJointOutboard": ("upper", (0, 1, 0)), "upperJointForward": ("upper", (1, 0, 0))}


def seats_moved(corner, moves):
    """The two links of an arm re-made to where the joint would sit; the upright keeps its joint."""
    lengths = dict(corner.lengths)
    for arm in {arm for arm, _ in moves}:
        seat = corner.body[arm + "BallJoint"] + sum(move for name, move in moves if name == arm)
        for end in ("Front", "Rear"):
            reach = seat - corner.body[arm + "Arm" + end]
            lengths[arm + "Arm" + end] = np.sqrt(reach @ reach)
    return replace(corner, lengths=lengths)


def knuckle_turned(corner, amount, adjustment):
    """In the upright the strut's line turns about x through the pivot, its top outboard: the wheel's top goes inboard against it."""
    angle = np.arcsin(np.longdouble(amount) / np.longdouble(adjustment["boltSpacingMm"]))
    pivot = corner.frame @ (point(adjustment["pivot"]) - corner.origin) if "pivot" in adjustment else corner.places["strutLower"]
    sine, cosine = np.sin(angle), np.cos(angle)
    turn = corner.frame @ np.array([[1, 0, 0], [0, cosine, sine], [0, -sine, cosine]]) @ corner.frame.T
    return replace(corner, places=corner.places | {
        "strutLower": pivot + turn @ (corner.places["strutLower"] - pivot), "strutAxis": turn @ corner.places["strutAxis"]})


def adjusted(corner, adjustments, share=1.0):
    """The corner after a share of all the amounts, and the travel it is looked at."""
    travel, camber, toe, seats = 0.0, corner.request["alignment"]["camberDeg"], corner.request["alignment"]["toeDeg"], []
    shimmed = False
    for adjustment in adjustments:
        name, amount = adjustment["adjuster"], share * adjustment["amount"]
        if name in BODY_MOVES:
            moved, along = BODY_MOVES[name]
            corner = corner.with_body(moved, np.longdouble(amount) * vector(*along))
        elif name in SEAT_MOVES:
            arm, along = SEAT_MOVES[name]
            seats.append((arm, np.longdouble(amount) * vector(*along)))
        elif name == "lowerJointSpacer":
            corner = replace(corner, places=corner.places | {
                "lowerBallJoint": corner.places["lowerBallJoint"] - corner.frame @ vector(0, 0, amount)})
        elif name == "knuckleEccentric":
            corner = knuckle_turned(corner, amount, adjustment)
        elif name == "tieRodLength":
            corner = corner.with_length(corner.rod[0], amount)
        elif name == "rackHeight":
            corner = corner.with_body(corner.rod[0], vector(0, 0, amount))
        elif name == "linkLength":
            corner = corner.with_length(f"chassis{adjustment['link']}", amount)
        elif name == "hubShimCamber":
            camber, shimmed = camber + amount, True
        elif name == "hubShimToe":
            toe, shimmed = toe + amount, True
        elif name == "rideHeight":
            travel = -amount
        else:
            raise KeyError(name)
    if seats:
        corner = seats_moved(corner, seats)
    return (replace(corner, spin=corner.frame @ spin_of(camber, toe)) if shimmed else corner), travel


class Standing:
    """A corner at one travel with rack 0 whose pose is already known."""

    def __init__(self, corner, state, travel):
        self.corner = corner
        self.position = Position(corner, Walk(corner, {(travel, 0.0): state}), travel, 0.0)


def stand(corner, adjustments, reset_toe, start=None, steps=ADJUSTMENT_STEPS):
    """The adjusted corner where it is looked at, and the tie rod's change, mm, where the toe is reset."""
    state, toe = Walk(corner).at(0.0) if start is None else start, corner.request["alignment"]["toeDeg"]
    for step in range(1, steps + 1):
        changed, travel = adjusted(corner, adjustments, step / steps)
        held = replace(changed, toe_held_deg=toe) if reset_toe else changed
        state = pose(held.constraints(), state, travel, 0.0)
    if not reset_toe:
        return Standing(changed, state, travel), None
    inner, outer = changed.rod
    free = Standing(changed, state, travel)
    reach = free.position.upright.point(changed.places[outer]) - changed.body[inner]
    longer = np.sqrt(reach @ reach) - changed.lengths[inner]
    return Standing(changed.with_length(inner, longer), state, travel), longer


def adjustment(name, corner_name, corner, adjustments, reset_toe=False):
    """A case: the figures before and after."""
    before = Position(corner, Walk(corner), 0.0, 0.0)
    standing, longer = stand(corner, adjustments, reset_toe)
    moved = standing.position.contact - before.contact
    answer = {"name": name, "corner": corner_name, "adjustments": adjustments, "resetToe": reset_toe,
              "before": picked(before), "after": picked(standing.position),
              "halfTrackChangeMm": float(moved[1]), "rideHeightChangeMm": float(-moved[2])}
    return answer | ({"tieRodChangeMm": float(longer)} if reset_toe else {})


def picked(position):
    row = {"camberDeg": position.camber_deg, "toeDeg": position.toe_deg} | axis_figures(position) | instant_centres(position)
    return {name: None if row[name] is None else float(row[name]) for name in ANSWERED}
