"""Corners by hand: plain ones to hold on to, hard ones by name, and travel that does not close."""

from scipy.optimize import brentq

from geometry_corner import read_corner
from geometry_examples import answered, at, shift
from geometry_outputs import figures
from geometry_reach import last_travel, last_travel_by_halving
from geometry_solver import Walk

WISHBONE = {
    "kind": "doubleWishbone", "lowerArmFront": at(150, 390, 190), "lowerArmRear": at(-180, 400, 180), "lowerBallJoint": at(10, 715, 180),
    "upperArmFront": at(90, 480, 455), "upperArmRear": at(-130, 490, 440), "upperBallJoint": at(-18, 690, 480),
    "tieRodInner": at(-125, 370, 208), "tieRodOuter": at(-130, 695, 205), "wheelCentre": at(0, 760, 310)}
WISHBONE_SPRING = {"springChassis": at(-10, 520, 560), "springMoving": at(0, 600, 195), "springOn": "lowerArm"}
STRUT = {
    "kind": "macPhersonStrut", "lowerArmFront": at(15, 380, 190), "lowerArmRear": at(-310, 390, 195), "lowerBallJoint": at(5, 720, 175),
    "strutTop": at(-35, 565, 840), "strutLower": at(-5, 630, 400), "tieRodInner": at(-150, 330, 235), "tieRodOuter": at(-140, 695, 225),
    "wheelCentre": at(0, 750, 305)}
PLANAR = {
    "kind": "doubleWishbone", "lowerArmFront": at(150, 400, 200), "lowerArmRear": at(-150, 400, 200), "lowerBallJoint": at(0, 700, 180),
    "upperArmFront": at(100, 480, 430), "upperArmRear": at(-100, 480, 430), "upperBallJoint": at(0, 680, 450),
    "tieRodInner": at(-120, 400, 200), "tieRodOuter": at(-120, 700, 180), "wheelCentre": at(0, 750, 300)}
FIVE = {"kind": "fiveLink", "wheelCentre": at(0, 755, 312), "links": [
    {"chassis": at(155, 452, 438), "upright": at(32, 655, 452)}, {"chassis": at(-95, 428, 430), "upright": at(-22, 658, 462)},
    {"chassis": at(285, 478, 222), "upright": at(48, 684, 203)}, {"chassis": at(-48, 302, 206), "upright": at(-14, 694, 196)},
    {"chassis": at(-172, 338, 268), "upright": at(-136, 682, 270)}]}
ARM = {"kind": "semiTrailingArm", "pivotInner": at(310, 255, 315), "pivotOuter": at(395, 590, 300), "wheelCentre": at(0, 742, 308)}
BEAM = {"kind": "twistBeam", "pivotLeft": at(430, 560, 335), "beamShearCentre": at(245, 0, 318), "wheelCentre": at(0, 735, 306)}
SHORT = {"upperArmFront": at(60, 570, 470), "upperArmRear": at(-90, 575, 465)}
CAR = {"axle": "front", "wheelbaseMm": 2600.0, "centreOfGravityHeightMm": 500.0, "brakeShareFrontPct": 65.0, "drivenAxle": "front",
       "measuringDiameterMm": 406.4}
REAR = CAR | {"axle": "rear", "drivenAxle": "rear"}
TRAVELS = tuple((float(travel), 0.0) for travel in range(-60, 61, 10))
RACKS = tuple((0.0, float(rack)) for rack in range(-40, 41, 10) if rack) + ((-40.0, -20.0), (-40.0, 20.0), (40.0, -20.0), (40.0, 20.0))


def asked(suspension, camber=-0.5, toe=0.05, radius=310.0, car=CAR, **more):
    return {"suspension": suspension, "alignment": {"camberDeg": camber, "toeDeg": toe}, "loadedRadiusMm": radius, **car, **more}


def example(name, request, rows):
    return {"name": name, "request": request, "rows": answered(request, rows)}


def plain():
    """DW1, ST1 and PL1 are the corners of the reference working; FL1, SA1, TB1 are ours."""
    return [
        example("DW1", asked(WISHBONE | WISHBONE_SPRING), TRAVELS + RACKS),
        example("ST1", asked(STRUT, -0.75, 0.0, 305.0), TRAVELS + RACKS),
        example("PL1", asked(PLANAR, 0.0, 0.0, 300.0), TRAVELS),
        example("FL1", asked(FIVE, -1.0, 0.15, 305.0, REAR), TRAVELS),
        example("SA1", asked(ARM, -1.2, 0.1, 300.0, REAR), TRAVELS[::2]),
        example("TB1 parallel", asked(BEAM, -1.4, 0.15, 300.0, REAR, motion="parallel"), TRAVELS[::2]),
        example("TB1 opposite", asked(BEAM, -1.4, 0.15, 300.0, REAR, motion="opposite"), TRAVELS[::2])]


def travels(*values):
    return tuple((float(value), 0.0) for value in values)


def without_scrub():
    """The wheel centre stands where the steering axis meets the ground at the contact centre."""
    def moved(y):
        return asked(STRUT | {"wheelCentre": at(0, y, 305)}, -0.75, 0.0, 305.0)

    def scrub(y):
        corner = read_corner(moved(y))
        return figures(corner, Walk(corner), 0.0, 0.0)["scrubRadiusMm"]

    return moved(brentq(scrub, 700, 800, xtol=1e-13, rtol=1e-15))


def hard():
    near_end = last_travel(read_corner(asked(WISHBONE | SHORT)), 0.0, 1)
    thin_arm = {"lowerArmFront": at(16, 395, 188), "lowerArmRear": at(-8, 396, 187)}
    upright_axis = {"lowerBallJoint": at(0, 700, 180), "upperBallJoint": at(0, 700, 480)}
    steep = {"pivotInner": at(255, 300, 420), "pivotOuter": at(255, 560, 420)}
    return [
        example("near-singular pose", asked(WISHBONE | SHORT, car={}), travels(*(round(near_end - gap, 3) for gap in (40, 10, 3, 1, 0.3, 0.1, 0.02)))),
        example("full droop", asked(STRUT, -0.75, 0.0, 305.0), travels(-90, -110, -130, -150, -170)),
        example("long travel", asked(WISHBONE | WISHBONE_SPRING), travels(-190, -150, -110, -70, 70, 110, 150, 190)),
        example("zero scrub", without_scrub(), TRAVELS[::2] + RACKS),
        example("negative scrub", asked(STRUT | {"wheelCentre": at(0, 722, 305)}, -0.75, 0.0, 305.0), TRAVELS[::2] + RACKS),
        example("high caster", asked(WISHBONE | {"lowerBallJoint": at(25, 715, 180), "upperBallJoint": at(-55.4, 690, 480)}), TRAVELS[::2] + RACKS),
        example("arm nearly in line", asked(WISHBONE | thin_arm | WISHBONE_SPRING), TRAVELS[::2] + RACKS),
        example("big lock", asked(WISHBONE), tuple((0.0, float(r)) for r in (-100, -90, -80, -70, 70, 80, 90, 100)) + ((45.0, -85.0), (-45.0, -85.0))),
        example("frame far from origin", asked(shift(WISHBONE | WISHBONE_SPRING, 4000.0, -750.0)), TRAVELS[::2] + RACKS),
        example("five links that steer", asked(FIVE, -1.0, 0.05, 305.0), TRAVELS[::3] + RACKS),
        example("much camber and toe", asked(WISHBONE, -4.5, 1.2), TRAVELS[::2] + RACKS[::2]),
        example("upright steering axis", asked(WISHBONE | upright_axis), TRAVELS[::2] + RACKS),
        example("long travel of a strut", asked(STRUT, -0.75, 0.0, 305.0), travels(90, 120, 150, 180)),
        example("steep trailing arm", asked(ARM | steep, -1.0, 0.1, 300.0, REAR), travels(-120, -80, -40, 0, 40, 80, 120))]


def end_of_travel(name, request, rack=0.0, towards=1):
    corner = read_corner(request)
    last = last_travel(corner, rack, towards)
    halved = last_travel_by_halving(corner, rack, towards, last)
    if not -1e-6 < (last - halved) * towards < 0.011:
        raise ValueError(f"{name}: {last} by arc length, {halved} by halving")
    return {"name": name, "request": request, "rackMm": rack, "lastTravelMm": last,
            "unreachable": [last + towards * beyond for beyond in (0.01, 0.5, 5.0, 40.0)],
            "reachable": [last - towards * short for short in (0.01, 0.5, 5.0)]}


def unreachable():
    short = asked(WISHBONE | SHORT)
    near_strut = asked(STRUT | {"lowerArmFront": at(15, 560, 190), "lowerArmRear": at(-200, 565, 195), "tieRodInner": at(-150, 520, 235)}, -0.75, 0.0, 305.0)
    return [
        end_of_travel("short upper arm in bump", short), end_of_travel("short upper arm in droop", short, towards=-1),
        end_of_travel("short upper arm in droop at lock", short, rack=-30.0, towards=-1),
        end_of_travel("short lower arm of a strut in bump", near_strut), end_of_travel("the same in droop at lock", near_strut, rack=30.0, towards=-1),
        end_of_travel("five links in droop", asked(FIVE, -1.0, 0.15, 305.0, REAR), towards=-1),
        end_of_travel("arm straight down", asked(ARM, -1.2, 0.1, 300.0, REAR), towards=-1)]
