"""Invented corners of all kinds: random points within plausible ranges, the same ones for the same seed, and four by hand."""

from random import Random

from geometry_corner import read_corner
from geometry_outputs import Position, figures
from geometry_solver import DoesNotClose, Walk

SEED = 20261125


def at(x, y, z):
    return {"xMm": float(x), "yMm": float(y), "zMm": float(z)}


def near(random, x, y, z):
    """A point within ranges, to a tenth of a millimetre."""
    return at(*(round(random.uniform(*span), 1) for span in (x, y, z)))


def wishbone(random):
    lower = near(random, (0, 15), (690, 725), (165, 200))
    tie_x, tie_z = random.choice([-130, 125]), random.uniform(200, 225)
    return {
        "kind": "doubleWishbone", "lowerBallJoint": lower,
        "lowerArmFront": near(random, (110, 190), (340, 410), (180, 205)), "lowerArmRear": near(random, (-210, -130), (340, 410), (170, 195)),
        "upperArmFront": near(random, (60, 110), (430, 490), (425, 470)), "upperArmRear": near(random, (-150, -90), (430, 490), (415, 455)),
        "upperBallJoint": near(random, (-45, -12), (650, 690), (460, 500)),
        "tieRodInner": near(random, (tie_x - 10, tie_x + 10), (355, 400), (tie_z - 6, tie_z + 6)),
        "tieRodOuter": near(random, (tie_x - 10, tie_x + 10), (670, 705), (tie_z - 8, tie_z + 4)),
        "wheelCentre": near(random, (-3, 3), (745, 780), (300, 325))}


def strut(random):
    tie_x, tie_z = random.choice([-140, -150, 130]), random.uniform(215, 260)
    return {
        "kind": "macPhersonStrut", "lowerArmFront": near(random, (5, 60), (350, 400), (180, 215)),
        "lowerArmRear": near(random, (-320, -240), (350, 400), (180, 215)), "lowerBallJoint": near(random, (0, 20), (700, 730), (165, 195)),
        "strutTop": near(random, (-75, -15), (540, 600), (800, 880)), "strutLower": near(random, (-15, 5), (615, 650), (380, 440)),
        "tieRodInner": near(random, (tie_x - 8, tie_x + 8), (310, 360), (tie_z, tie_z + 12)),
        "tieRodOuter": near(random, (tie_x - 5, tie_x + 10), (675, 705), (tie_z - 12, tie_z)),
        "wheelCentre": near(random, (-4, 4), (735, 770), (295, 325))}


def five_link(random):
    spans = [((120, 200), (420, 480), (415, 470), (15, 55), (640, 675), (430, 475)),
             ((-120, -60), (400, 460), (410, 455), (-40, -10), (640, 675), (440, 480)),
             ((220, 340), (440, 510), (195, 245), (25, 65), (665, 700), (190, 215)),
             ((-80, -20), (260, 340), (195, 220), (-30, 0), (680, 710), (180, 210)),
             ((-200, -140), (310, 370), (255, 285), (-160, -115), (665, 700), (255, 285))]
    return {"kind": "fiveLink", "wheelCentre": near(random, (-3, 3), (745, 775), (305, 325)),
            "links": [{"chassis": near(random, *span[:3]), "upright": near(random, *span[3:])} for span in spans]}


def arm(random):
    inner = near(random, (260, 400), (200, 340), (280, 350))
    outer = near(random, (340, 450), (540, 640), (290, 350))
    if random.random() < 0.3:
        outer |= {"xMm": inner["xMm"], "zMm": inner["zMm"]}  # a trailing arm
    return {"kind": "semiTrailingArm", "pivotInner": inner, "pivotOuter": outer, "wheelCentre": near(random, (-3, 3), (720, 760), (295, 325))}


def beam(random):
    shear = near(random, (180, 320), (0, 0), (280, 360))
    return {"kind": "twistBeam", "pivotLeft": near(random, (390, 470), (520, 600), (300, 370)), "beamShearCentre": shear,
            "wheelCentre": near(random, (-3, 3), (715, 750), (295, 325))}


def spring_and_damper(random, kind):
    """Points of spring and damper, on the parts that the kind has."""
    if random.random() < 0.25:
        return {}
    parts = {"doubleWishbone": ["lowerArm", "lowerArm", "upperArm", "upright"], "macPhersonStrut": ["lowerArm", "upright"],
             "fiveLink": ["upright"], "semiTrailingArm": ["upright"], "twistBeam": ["beam"]}[kind]
    answer = {}
    for name in ["spring", "damper"]:
        if random.random() < 0.8:
            part = random.choice(parts)
            low = {"lowerArm": (185, 215), "upperArm": (440, 480)}.get(part, (230, 290))
            back = (60, 120) if kind in ("semiTrailingArm", "twistBeam") else (-30, 20)
            answer |= {name + "Chassis": near(random, back, (480, 540), (560, 640)), name + "Moving": near(random, back, (560, 640), low),
                       name + "On": part}
    return answer


def car(random, steered):
    """What the car gives beside the points; now and then something is missing."""
    given = {"axle": "front" if steered else random.choice(["rear", "rear", "front"]), "wheelbaseMm": float(random.randrange(2350, 2950, 10)),
             "centreOfGravityHeightMm": float(random.randrange(440, 620, 5)), "brakeShareFrontPct": float(random.randrange(55, 76)),
             "drivenAxle": random.choice(["front", "rear", "both"]), "measuringDiameterMm": random.choice([381.0, 406.4, 431.8, 600.0])}
    for name in list(given):
        if random.random() < 0.08:
            del given[name]
    return given


def shift(suspension, x, z):
    """The same corner with its origin elsewhere."""
    def moved(value):
        if isinstance(value, dict) and "xMm" in value:
            return at(value["xMm"] + x, value["yMm"], value["zMm"] + z)
        if isinstance(value, dict):
            return {name: moved(member) for name, member in value.items()}
        return [moved(item) for item in value] if isinstance(value, list) else value
    return moved(suspension)


def places(random, steered):
    """Travel and rack of the rows."""
    rows = [(float(travel), 0.0) for travel in random.choice([(-70, -50, -30, -10, 0, 15, 30, 50, 70), (-60, -45, -25, -5, 5, 20, 40, 60, 80)])]
    if steered:
        rows += [(0.0, float(rack)) for rack in (-36, -27, -18, -6, 6, 18, 27, 36)]
        rows += [(40.0, -24.0), (-35.0, 24.0), (55.0, 24.0), (-45.0, -24.0)]
    return rows


def plausible(position):
    slopes = abs(position.turn[0]) < 0.0014 and abs(position.turn[2]) < 0.0009  # radians per mm: camber and toe gain
    return slopes and abs(position.camber_deg) < 9 and abs(position.toe_deg) < 32


def answered(request, wanted):
    """The rows of the places asked for, but for those where one wheel steers 5 degrees and the other less or the other way."""
    corner = read_corner(request)
    walk, rows = Walk(corner), []
    for travel, rack in wanted:
        try:
            rows.append(figures(corner, walk, travel, rack))
        except ValueError:
            continue
    return rows


def drawn(random, make, number, steered):
    """The first draw that reaches all its places and looks like a car."""
    while True:
        suspension = make(random)
        kind = suspension["kind"]
        suspension |= spring_and_damper(random, kind)
        request = {"suspension": shift(suspension, random.choice([0.0, 0.0, -1250.5, 2600.25]), random.choice([0.0, 0.0, 112.5, -310.0])),
                   "alignment": {"camberDeg": round(random.uniform(-2.8, 0.6), 2), "toeDeg": round(random.uniform(-0.3, 0.4), 2)},
                   "loadedRadiusMm": round(suspension["wheelCentre"]["zMm"] + random.uniform(-12, 12), 1), **car(random, steered)}
        if kind == "twistBeam":
            request["motion"] = "parallel" if number % 2 else "opposite"
        wanted = places(random, steered)
        corner = read_corner(request)
        walk = Walk(corner)
        try:
            if all(plausible(Position(corner, walk, *place)) for place in wanted):
                return {"name": f"{kind} {number}", "request": request, "rows": answered(request, wanted)}
        except DoesNotClose:
            continue


def corners():
    random = Random(SEED)
    plan = [(strut, 10, 8), (wishbone, 11, 8), (five_link, 8, 3), (arm, 6, 0), (beam, 6, 0)]
    return [drawn(random, make, number, number <= steered) for make, count, steered in plan for number in range(1, count + 1)]
