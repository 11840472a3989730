"""Questions asked the other way round: which movement gives this camber and this caster."""

from geometry_corner import read_corner
from geometry_inverse import answer


def within(adjuster, minimum, maximum, **more):
    return {"adjuster": adjuster, "minimum": float(minimum), "maximum": float(maximum), **more}


def plan():
    """(corner, adjusters, targets, more)."""
    top, back = within("strutTopInboard", -12, 12), within("strutTopRearward", -10, 10)
    bolt = within("knuckleEccentric", -2, 2, boltSpacingMm=55.0)
    upper_out, upper_ahead = within("upperJointOutboard", -10, 10), within("upperJointForward", -10, 10)
    lower_out, lower_ahead = within("lowerJointOutboard", -8, 8), within("lowerJointForward", -8, 8)
    return [
        ("ST1", [top], {"camberDeg": -1.5}, {}), ("ST1", [top], {"camberDeg": -1.5}, {"resetToe": True}),
        ("ST1", [within("strutTopInboard", -5, 5)], {"camberDeg": -1.8}, {}),
        ("ST1", [back], {"casterDeg": 4.1}, {}), ("ST1", [top, back], {"camberDeg": -1.4, "casterDeg": 4.0}, {"resetToe": True}),
        ("ST1", [within("strutTopInboard", 0, 6), back], {"camberDeg": -1.9, "casterDeg": 3.9}, {"resetToe": True}),
        ("ST1", [top, back], {"camberDeg": -1.2, "casterDeg": 5.5}, {}),
        ("ST1", [top, bolt], {"camberDeg": -2.2}, {}), ("ST1", [top, bolt], {"camberDeg": -3.0}, {"resetToe": True}),
        ("ST1", [within("strutTopInboard", -6, 6), bolt], {"camberDeg": -3.5}, {}),
        ("ST1", [lower_out], {"camberDeg": -1.1}, {"resetToe": True}), ("ST1", [within("lowerJointOutboard", -10, 12)], {"camberDeg": -1.6}, {"resetToe": True, "archGapMm": 1.5}),
        ("DW1", [upper_out], {"camberDeg": -1.7}, {"resetToe": True}), ("DW1", [upper_out, lower_out], {"camberDeg": -2.0}, {"resetToe": True}),
        ("DW1", [upper_out, upper_ahead], {"camberDeg": -1.2, "casterDeg": 6.4}, {"resetToe": True}),
        ("DW1", [upper_out, lower_ahead], {"camberDeg": -1.0, "casterDeg": 7.4}, {}),
        ("DW1", [upper_ahead, lower_ahead], {"casterDeg": 7.0}, {"resetToe": True}),
        ("DW1", [upper_out, lower_out], {"camberDeg": 0.6}, {"resetToe": True, "archGapMm": 2.0}),
        ("DW1", [within("rideHeight", -30, 30)], {"camberDeg": -1.25}, {}),
        ("FL1", [within("linkLength", -4, 4, link=1)], {"camberDeg": -1.3}, {"resetToe": True}),
        ("FL1", [within("linkLength", -4, 4, link=2), within("hubShimCamber", -0.5, 0.5)], {"camberDeg": -1.6}, {"resetToe": True}),
        ("SA1", [within("hubShimCamber", -0.5, 0.5)], {"camberDeg": -0.4}, {}),
        ("SA1", [within("outerPivotUp", -6, 6), within("hubShimCamber", -1, 1)], {"camberDeg": -2.0}, {}),
        ("TB1 parallel", [within("hubShimCamber", -1, 1)], {"camberDeg": -2.0}, {})]


def cases(requests):
    return [answer(f"{number} {name}", name, read_corner(requests[name]), adjusters, targets, **more)
            for number, (name, adjusters, targets, more) in enumerate(plan(), 1)]
