"""Random cases, the same ones for the same seed: a request of the check, with a list of rims for the window."""

from random import Random

HALF_INCHES = [n / 2 for n in range(7, 25)]
SEATS = ["cone60", "ball12", "ball13", "ball14", "flat"]
CIRCLES = ["5x108", "5x107.95", "5x112", "5x114.3", "5x114", "5x120", "5x120.65", "4x100", "4x108", "6x139.7"]


class Draw(Random):
    """Half of the cases are wild; the other half are what a careful person would ask, so that passes are tried too."""

    careful = False


def some(random, chance, make):
    """A value, or none given."""
    return make() if random.random() < (0.97 + 0.03 * chance if random.careful and chance > 0.5 else chance) else None


def given(**members):
    return {name: value for name, value in members.items() if value is not None}


def number(random, low, high):
    return round(random.uniform(low, high), 2)


def size(random, rim, near):
    width = random.choice(range(125, 346, 10)) if near is None else min(345, max(125, near + random.choice([-20, -10, 0, 0, 10, 20])))
    aspect = random.choice([25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80])
    make = random.choices(["R", "ZR", "RF", "D", "B", "-"], [30, 4, 2, 2, 1, 1])[0]
    lead = random.choices(["", "P", "LT"], [20, 2, 1])[0]
    tail = "C" if lead == "" and random.random() < 0.06 else ""
    slash = f"/{aspect}" if random.random() < 0.95 else ""
    return f"{lead}{width}{slash}{make}{rim:g}{tail}", lead, tail


def careful_marking(random, rim):
    """Sizes that stand near each other on one rim, and descriptions that suit most cars."""
    sizes = {14: ["175/65R14", "185/60R14", "195/60R14"], 15: ["195/65R15", "205/60R15", "205/65R15"],
             16: ["205/55R16", "225/50R16", "215/55R16"], 17: ["225/45R17", "235/45ZR17", "215/50R17"],
             18: ["225/40R18", "245/40R18", "235/40ZR18"], 19: ["255/35R19", "245/35RF19", "235/35R19"],
             20: ["255/30R20", "275/30R20", "265/35R20"]}
    service = random.choice(["91H", "92V", "94W", "95Y", "97W", "98Y", "88T", "96Q M+S", "104/102T", "94"])
    service = "94W XL" if service == "94" else service
    tail = "C" if "/" in service else ""
    return random.choice(sizes[int(rim)]) + tail + " " + service


def marking(random, rim, near=None):
    roll = random.random()
    if random.careful:
        return careful_marking(random, rim)
    if roll < 0.15:
        text, lead, tail = random.choice(
            ["175/65R14", "195/65R15", "205/55R16", "225/45R17", "225/40R18", "245/40R18", "255/35R19"]), "", ""
    elif roll < 0.19:
        text, lead, tail = f"{random.choice([29, 31, 33])}x{random.choice(['9.50', '10.50', '12.50'])}R{random.choice([15, 16])}LT", "LT", ""
    else:
        text, lead, tail = size(random, rim, near)
    if random.random() < 0.95:
        symbol = random.choices("NQRSTUHVWY", [1, 2, 2, 3, 6, 1, 8, 10, 8, 8])[0]
        index = random.randint(72, 112)
        dual = f"/{index - 2}" if lead == "LT" or tail else ""
        service = f"{index}{dual}{symbol}"
        text += f" ({service})" if symbol in "WY" and "ZR" in text and random.random() < 0.4 else f" {service}"
    if lead != "LT" and not tail:
        text += random.choices(["", " XL", " LL", " SL", " HL"], [12, 6, 1, 1, 1 if lead == "" else 0])[0]
    return text + random.choices(["", " M+S", " 3PMSF", " M+S 3PMSF"], [10, 1, 1, 1])[0]


def tyre(random, rim, near=None):
    return given(
        marking=marking(random, rim, near), massKg=some(random, 0.7, lambda: number(random, 5, 16)),
        pressureKpa=some(random, 0.85, lambda: number(random, 200 if random.careful else 150, 340)),
        rimProtectorMm=some(random, 0.3, lambda: number(random, 0, 8)))


def outline(random, member, first, last, low, high):
    """Points from inboard to outboard; some of them steps at one station."""
    if random.careful and member == "fromMountingFaceMm":
        first, low = -130.0, low + 15  # a wheel that goes over its brake
    stations = [first] * random.careful + sorted(number(random, first, last) for _ in range(random.randint(1, 4))) + [last + number(random, 0, 20)]
    points = []
    for station in stations:
        for _ in range(2 if random.random() < 0.25 else 1):
            points.append({member: station, "radiusMm": number(random, low, high)})
    return points


def wheel(random, rim, width, offset, hub_circle):
    return given(
        rimDiameterIn=rim, rimWidthIn=width, offsetMm=offset,
        spacerMm=some(random, 0.3, lambda: number(random, 0, 40)),
        spacerPilotBoreMm=some(random, 0.5, lambda: random.choice([63.4, 63.4, 60.1, 66.6])),
        spacerPilotDiameterMm=some(random, 0.5, lambda: random.choice([63.4, 63.4, 57.1, 72.6])),
        spacerHasOwnFasteners=some(random, 0.3, lambda: random.random() < 0.3),
        massKg=some(random, 0.8, lambda: number(random, 6, 15)),
        boltCircle=some(random, 0.85, lambda: hub_circle if random.random() < (0.95 if random.careful else 0.7) else random.choice(CIRCLES)),
        centreBoreMm=some(random, 0.85, lambda: random.choice([63.4, 63.45, 72.6] if random.careful else [57.1, 63.4, 63.4, 63.48, 63.55, 72.6])),
        loadRatingKg=some(random, 0.7, lambda: number(random, 500 if random.careful else 400, 900)),
        fastenerSeat=some(random, 0.85, lambda: random.choice(SEATS[:1] * (60 if random.careful else 6) + SEATS)),
        padThicknessMm=some(random, 0.8, lambda: number(random, 6, 18)),
        innerProfile=some(random, 0.6, lambda: outline(
            random, "fromMountingFaceMm", -110 + number(random, 0, 60), 10 + number(random, 0, 30), rim * 12.7 - 45, rim * 12.7 - 20)))


def suspension(random):
    kind = random.choices(["measured", "macPhersonStrut", "doubleWishbone", None], [6, 2, 2, 1])[0]
    if kind != "measured":
        return given(kind=kind) or None
    # Two heights make a straight line whatever curve is laid through readings; curves have workings of their own.
    stations = [random.choice(range(-90, 5, 5)), random.choice(range(30, 130, 5))]
    readings = [{"travelMm": float(place), "camberDeg": number(random, -3, 1.5)} for place in stations]
    return {"kind": kind, "gaugeErrorDeg": 0, "readings": readings}  # wild readings, which an error would have smoothed in steps


def usual_width(rim):
    return {14: 5.5, 15: 6.5, 16: 7.0, 17: 7.5, 18: 8.5, 19: 8.5, 20: 9.5}[int(rim)]


def axle(random, rim, circle):
    width, offset = random.choice(HALF_INCHES[2:14]), number(random, -20, 60)
    if random.careful:
        width = usual_width(rim)
    hub = given(
        boltCircle=some(random, 0.9, lambda: circle), centreBoreMm=some(random, 0.9, lambda: 63.4),
        fastenerThread=some(random, 0.85, lambda: random.choice(["M12x1.5", "M14x1.5", "M12x1.25"])),
        fastenerKind=some(random, 0.8, lambda: random.choice(["bolt", "nut"])),
        fastenerLengthMm=some(random, 0.85, lambda: number(random, 38 if random.careful else 20, 60)),
        fastenerSeat=some(random, 0.9, lambda: "cone60"),
        minimumRimDiameterIn=some(random, 0.6, lambda: rim + random.choice([-2, -1, 0, 1])),
        caliperProfile=some(random, 0.6, lambda: outline(
            random, "fromHubFaceMm", -80 + number(random, 0, 60), -10 + number(random, 0, 30), rim * 12.7 - 75, rim * 12.7 - 35)))

    def gap(low, high):
        return some(random, 0.85, lambda: number(random, low + 20 if random.careful else low, high))

    clearance = given(
        inboardMm=gap(2, 60), outboardMm=gap(-5, 60), radialMm=gap(5, 150), inboardAtFullLockMm=gap(2, 60), springSeatMm=gap(2, 60),
        measuredAt=random.choice([None, "worstTravel", "worstTravel", "rideHeight"]),
        uncertaintyMm=some(random, 0.5, lambda: number(random, 0, 4)),
        inboardTo=some(random, 0.6, lambda: random.choice(["body", "strut", "arm"])),
        inboardHeightMm=some(random, 0.6, lambda: number(random, 100, 550)))
    stop = given(
        lengthMm=some(random, 0.8, lambda: number(random, 20, 70)),
        compressedLengthMm=some(random, 0.6, lambda: number(random, 5, 30)),
        motionRatio=some(random, 0.6, lambda: number(random, 0.5, 1.1)))
    return given(
        loadedRadiusMm=number(random, 270, 330), bumpStop=some(random, 0.85, lambda: stop),
        damper=some(random, 0.6, lambda: given(motionRatio=some(random, 0.8, lambda: number(random, 0.5, 1.1)))),
        maximumAxleLoadKg=some(random, 0.85, lambda: number(random, 600, 1050 if random.careful else 1400)),
        minimumLoadIndex=some(random, 0.6, lambda: random.randint(75, 92 if random.careful else 98)),
        wheel=some(random, 0.95, lambda: wheel(random, rim, width, offset, circle)),
        tyre=some(random, 0.95, lambda: tyre(random, rim)),
        hub=some(random, 0.92, lambda: hub), clearance=some(random, 0.92, lambda: clearance),
        bumpTravelMm=some(random, 0.85, lambda: number(random, 10, 50 if random.careful else 90)), suspension=suspension(random))


def camber_change(random):
    return given(
        changeDeg=number(random, -1.5, 1.5) if random.careful else number(random, -4, 4), at=random.choice(["strutTop", "strutToKnuckle", "lowerJoint"]),
        pivotHeightMm=some(random, 0.75, lambda: number(random, 100, 700)),
        narrowestHeightMm=some(random, 0.75, lambda: number(random, 100, 700)))


def near_width(document):
    """The present tyre's width, so that most candidates are near it; none for a size in inches."""
    digits = document.get("tyre", {}).get("marking", "").lstrip("PLTH")[:3]
    return int(digits) if digits.isdigit() else None


def make_case(random, ids):
    random.careful = random.random() < 0.5
    rim = random.choice([14, 15, 16, 17, 17, 18, 18, 19, 20, 16.5, 17.5])
    circle = random.choice(CIRCLES)
    if random.careful:
        rim = int(rim)
    here = axle(random, rim, circle)
    there = given(tyre=some(random, 0.95, lambda: tyre(random, rim)))
    name = random.choice(["front", "front", "rear"])
    vehicle = given(
        drivenAxle=some(random, 0.85, lambda: random.choice(["front", "rear", "both"])),
        topSpeedKmh=some(random, 0.88, lambda: number(random, 140, 230 if random.careful else 310)))
    vehicle |= given(**{name + "AxleLoadKg": some(random, 0.6, lambda: number(random, 500, 1300))})
    vehicle |= {"front": here, "rear": there} if name == "front" else {"rear": here, "front": there}
    if random.random() < 0.1:
        del vehicle["rear" if name == "front" else "front"]
    new_rim = rim if random.careful or random.random() < 0.6 else rim + random.choice([-1, 1, 2])
    tyre_rim = new_rim if random.careful or random.random() < 0.9 else new_rim + 1
    present = here.get("wheel", {"rimWidthIn": 7.5, "offsetMm": 40.0})
    if not random.careful and random.random() < 0.15:
        width, offset = random.choice(HALF_INCHES), number(random, -150, 150)  # far from anything usual
    else:
        width, offset = present["rimWidthIn"] + random.choice([-0.5, 0, 0, 0.5, 1, 1.5]), present["offsetMm"] + number(random, -10 if random.careful else -20, 15)
        width = min(12.0, width)
    near = near_width(here) if random.random() < 0.8 else None
    return given(
        axle=name, vehicle=vehicle,
        candidate={"wheel": wheel(random, new_rim, width, offset, circle), "tyre": tyre(random, tyre_rim, near)},
        camberChange=some(random, 0.45, lambda: camber_change(random)),
        tolerances=some(random, 0.4, lambda: {"minimumMarginMm": number(random, 0, 8)}),
        required=some(random, 0.3, lambda: sorted(random.sample(ids, random.randint(0, 8)))),
        rimWidthsIn=[width, 7.0, 9.5], steeringAxisInclinationDeg=some(random, 0.7, lambda: number(random, 5, 16)),
        indicatedKmh=number(random, 30, 150), askedPressureKpa=number(random, 130, 330), askedSpeedKmh=number(random, 60, 310),
        askedLoadKg=number(random, 200, 900))
