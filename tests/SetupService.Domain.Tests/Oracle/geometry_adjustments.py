"""Adjustments: every adjuster, alone and in pairs, with and without the toe reset, on all kinds."""

from geometry_adjusters import adjustment
from geometry_corner import read_corner

ECCENTRIC = {"boltSpacingMm": 55.0}
LOW_BOLT = {"boltSpacingMm": 62.0, "pivot": {"xMm": 2.0, "yMm": 648.0, "zMm": 352.0}}


def turn(adjuster, amount, **more):
    return {"adjuster": adjuster, "amount": float(amount), **more}


def plan():
    """(corner, adjustments, reset toe)."""
    return [
        ("ST1", [turn("strutTopInboard", 10)], False), ("ST1", [turn("strutTopInboard", 10)], True), ("ST1", [turn("strutTopInboard", -5)], False),
        ("ST1", [turn("strutTopRearward", 10)], False), ("ST1", [turn("strutTopRearward", -8)], True),
        ("ST1", [turn("strutTopInboard", 8), turn("strutTopRearward", 6)], True),
        ("ST1", [turn("knuckleEccentric", 1.5, **ECCENTRIC)], False), ("ST1", [turn("knuckleEccentric", 1.5, **ECCENTRIC)], True),
        ("ST1", [turn("knuckleEccentric", -1.2, **LOW_BOLT)], False),
        ("ST1", [turn("strutTopInboard", 7), turn("knuckleEccentric", 1.0, **LOW_BOLT)], True),
        ("ST1", [turn("lowerJointOutboard", 5)], False), ("ST1", [turn("lowerJointForward", 6)], True), ("ST1", [turn("lowerJointSpacer", 20)], False),
        ("ST1", [turn("tieRodLength", 1)], False), ("ST1", [turn("tieRodLength", -1)], False), ("ST1", [turn("rackHeight", 8)], False),
        ("ST1", [turn("rideHeight", -30)], False), ("ST1", [turn("rideHeight", -30), turn("strutTopInboard", 8)], True),
        ("DW1", [turn("lowerJointOutboard", 5)], False), ("DW1", [turn("upperJointOutboard", -5)], False), ("DW1", [turn("upperJointOutboard", -5)], True),
        ("DW1", [turn("upperJointForward", -6)], False), ("DW1", [turn("lowerJointForward", 5)], True),
        ("DW1", [turn("lowerJointOutboard", 4), turn("lowerJointForward", 3)], True),
        ("DW1", [turn("lowerJointOutboard", 3), turn("upperJointOutboard", -4)], False),
        ("DW1", [turn("lowerJointSpacer", 12)], True), ("DW1", [turn("lowerJointSpacer", 10), turn("upperJointForward", -4)], False),
        ("DW1", [turn("tieRodLength", 1)], False), ("DW1", [turn("rackHeight", -10)], True), ("DW1", [turn("rideHeight", 25)], False),
        ("DW1", [turn("rideHeight", -20), turn("rackHeight", 5)], False),
        ("FL1", [turn("linkLength", 1, link=1)], False), ("FL1", [turn("linkLength", -2, link=2)], True), ("FL1", [turn("linkLength", 3, link=3)], False),
        ("FL1", [turn("linkLength", 2, link=4), turn("linkLength", -1.5, link=1)], True), ("FL1", [turn("linkLength", -1, link=5)], False),
        ("FL1", [turn("tieRodLength", 1)], False), ("FL1", [turn("rackHeight", 6)], False), ("FL1", [turn("hubShimCamber", -0.75)], False),
        ("FL1", [turn("hubShimToe", 0.3)], True), ("FL1", [turn("rideHeight", -25)], True),
        ("SA1", [turn("outerPivotUp", 8)], False), ("SA1", [turn("outerPivotForward", -6)], False),
        ("SA1", [turn("outerPivotUp", -5), turn("outerPivotForward", 4)], False), ("SA1", [turn("hubShimCamber", 0.5), turn("hubShimToe", -0.2)], False),
        ("SA1", [turn("rideHeight", -30)], False), ("SA1", [turn("outerPivotUp", 10), turn("rideHeight", -30)], False),
        ("TB1 parallel", [turn("hubShimCamber", -0.6)], False), ("TB1 parallel", [turn("hubShimToe", 0.25)], False),
        ("TB1 parallel", [turn("rideHeight", -35)], False), ("TB1 opposite", [turn("hubShimCamber", 0.4), turn("hubShimToe", 0.1)], False),
        ("high caster", [turn("upperJointForward", 7)], True), ("frame far from origin", [turn("upperJointOutboard", -8)], True),
        ("macPhersonStrut 3", [turn("strutTopInboard", 12)], True), ("fiveLink 2", [turn("linkLength", 4, link=1)], True),
        ("doubleWishbone 10", [turn("upperJointOutboard", 6), turn("rideHeight", -15)], True)]


def cases(requests):
    answer = []
    for number, (name, turns, reset) in enumerate(plan(), 1):
        answer.append(adjustment(f"{number} {name}", name, read_corner(requests[name]), turns, reset))
    return answer
