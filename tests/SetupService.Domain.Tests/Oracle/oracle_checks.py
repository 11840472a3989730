"""The checks that are not about room, the brake's outlines, and the verdict.

Each check returns a dict with its status and, where it has them, value and limit. Unknown is said, never guessed.
"""

from math import hypot, sqrt

import oracle_tyres as tyres
from oracle_clearance import (
    DEFAULT_MINIMUM_MARGIN_MM, DEFAULT_UNCERTAINTY_MM, Contradiction, Unknown, fitting, is_inside, margin, status_of)

# The order of gravity, and what must be known for a verdict unless asked otherwise.
GRAVITY = ("pass", "caution", "unknown", "fail")
REQUIRED = ("inboardClearance", "outboardClearance", "rimDiameter", "rimWidth", "loadCapacity", "speedRating",
            "boltCircle", "centreBore")

# Trade writes 114 for 114.3 and 108 for 107.95: common practice, no source.
SAME_CIRCLE_MM = 0.35

# UN Regulation 39, 5.3: 0 <= shown - true <= true / 10 + 4 km/h; highest test speed from memory.
TEST_SPEED_KMH = 120.0
# At 120 km/h true with the new tyre the old one stood for 120/r; shown is then at most 1.1 · 120/r + 4, and at least 120/r.
STILL_LOW_ABOVE = 1.1 * TEST_SPEED_KMH / (TEST_SPEED_KMH - 4.0)
STILL_HIGH_BELOW = TEST_SPEED_KMH / (1.1 * TEST_SPEED_KMH + 4.0)


def answer(status, value=None, limit=None, **more):
    return {"status": status, "value": value, "limit": limit, **more}


def unknown():
    return answer("unknown")


def rim_diameter(candidate):
    tyre, rim = candidate.tyre.rim_in, float(candidate.wheel["rimDiameterIn"])
    return answer("pass" if tyre == rim else "fail", rim, tyre)


def rim_width(candidate):
    least, greatest, listed = tyres.permitted_rims(candidate.tyre)
    rim = candidate.wheel["rimWidthIn"]
    beyond = max(least - rim, rim - greatest)
    status = "pass" if beyond <= 0 else "caution" if not listed and beyond <= 0.5 else "fail"
    return answer(status, rim)


def greatest_load(axle, driven_load):
    """The plate's load, or what the axle carries as driven where that is more; None without a plate."""
    plate = axle.get("maximumAxleLoadKg")
    return None if plate is None else max(plate, driven_load or 0.0)


def load_capacity(candidate, axle, top_speed, driven_load):
    """Capacity at pressure and top speed against half of the axle's greatest load (even sharing).

    Stated defaults, listed as assumptions: the pressure of the tyre fitted now, else the reference pressure; the speed of
    the tyre's own symbol. An index below the lowest allowed fails whatever else is known (French order, article 3), and so
    does a load beyond the index, which no pressure raises.
    """
    tyre = candidate.tyre
    load, lowest = greatest_load(axle, driven_load), axle.get("minimumLoadIndex")
    if tyre.index is None:
        return unknown()
    reference = tyres.reference_pressure(tyre)
    pressure = candidate.tyre_document.get("pressureKpa", axle.get("tyre", {}).get("pressureKpa", reference))
    speed = tyres.SPEED_KMH[tyre.symbol] if top_speed is None or slower_snow_tyre(tyre, top_speed) else top_speed
    share = tyres.speed_share(tyre, speed)
    # C, CP and LT: only the maker states the pressure; the index load stands for the best they can carry.
    carries = None
    if share is not None:
        carries = tyres.full_load(tyre) * share if reference is None else tyres.capacity(tyre, pressure, speed)
    # Without the axle's load, what the lowest index allowed carries is surely enough; less may be enough too.
    needed = load / 2 if load is not None else None if lowest is None else tyres.LOAD_KG[lowest]
    if lowest is not None and tyre.index < lowest:
        return answer("fail", carries if carries is not None else tyres.full_load(tyre), needed)
    if load is not None and tyres.full_load(tyre) < needed:
        return answer("fail", carries if carries is not None else tyres.full_load(tyre), needed)
    if carries is None:
        return unknown()
    if load is None and (needed is None or carries < needed):
        # The load as driven is not the greatest, but what cannot carry even that fails.
        too_much = driven_load is not None and carries < driven_load / 2
        return answer("fail", carries, driven_load / 2) if too_much else unknown()
    if carries < needed:
        return answer("fail", carries, needed)
    if reference is None:
        return answer("caution", carries, needed)
    if pressure < tyres.LOWEST_TABULATED_KPA:
        return unknown()
    # The addition goes on the table's pressure, which has a floor, and more than the reference pressure adds nothing.
    wanted = max(tyres.pressure_for(tyre, needed, speed), tyres.LOWEST_TABULATED_KPA) + (tyres.added_for_speed(tyre, speed) or 0.0)
    return answer("caution" if pressure < min(wanted, reference) else "pass", carries, needed)


def slower_snow_tyre(tyre, top_speed):
    """Article 3: snow tyres of at least Q under a faster car, whose driver a label holds to the tyre's own speed."""
    if tyre.symbol is None or tyre.above_symbol or not tyre.snow or top_speed is None:
        return False
    return tyres.SPEED_KMH["Q"] <= tyres.SPEED_KMH[tyre.symbol] < top_speed


def speed_rating(candidate, top_speed):
    """French order of 24 October 1994: no slower than the car; article 3: snow tyres of at least Q with a label."""
    tyre = candidate.tyre
    if top_speed is None:
        return unknown()
    if tyre.symbol is None:
        # A Z inside the size marks a capability above 240 km/h: note to Annex I of the same order.
        return answer("pass", 240.0, top_speed) if tyre.z_mark and top_speed <= 240.0 else unknown()
    symbol = tyres.SPEED_KMH[tyre.symbol]
    if symbol >= top_speed:
        status = "pass"
    elif tyre.above_symbol:
        return unknown()  # brackets promise more without saying how much
    else:
        status = "caution" if tyre.snow and symbol >= tyres.SPEED_KMH["Q"] else "fail"
    return answer(status, symbol, top_speed)


def wheel_load_rating(candidate, axle, driven_load):
    """Rating of at least half the axle's greatest load: from memory."""
    rating, load = candidate.wheel.get("loadRatingKg"), greatest_load(axle, driven_load)
    if rating is None or load is None:
        return unknown()
    return answer("fail" if rating < load / 2 else "pass", rating, load / 2)


def bolt_circle(candidate, hub, wheel_now):
    """The hub's circle; where it is not given, that of the wheel fitted now, as a stated assumption."""
    wheel, car = candidate.wheel.get("boltCircle"), hub.get("boltCircle", wheel_now.get("boltCircle"))
    if wheel is None or car is None:
        return unknown()
    (holes, circle), (studs, hub_circle) = (map(float, text.split("x")) for text in (wheel, car))
    same = holes == studs and abs(circle - hub_circle) <= SAME_CIRCLE_MM
    return answer("pass" if same else "fail", circle, hub_circle)


def bore_on(bore, spigot):
    """Common practice, no source: a smaller bore does not go on; over 0.1 mm larger needs a ring."""
    return answer("fail" if bore < spigot else "caution" if bore - spigot > 0.1 else "pass", bore, spigot)


def centre_bore(candidate, hub):
    """Straight on the hub its spigot centres the wheel; on a spacer the spacer's own, and the hub's the spacer."""
    wheel = candidate.wheel
    bore, spigot = wheel.get("centreBoreMm"), hub.get("centreBoreMm")
    if not wheel.get("spacerMm"):
        return unknown() if bore is None or spigot is None else bore_on(bore, spigot)
    inner, outer = wheel.get("spacerPilotBoreMm"), wheel.get("spacerPilotDiameterMm")
    below = None if inner is None or spigot is None else bore_on(inner, spigot)
    above = None if bore is None or outer is None else bore_on(bore, outer)
    for part in (below, above):
        if part and part["status"] == "fail":
            return part
    if bore is None or spigot is None:
        return unknown()
    if below is None or above is None:
        return answer("caution", bore, spigot)
    return below if below["status"] == "caution" else above


def fastener(candidate, wheel_now, hub):
    """Common practice, no source: at least one thread diameter engaged, seats alike, bolts not much deeper than now.

    What is not said to be nuts may be bolts.
    """
    wheel = candidate.wheel
    if wheel.get("spacerMm") and wheel.get("spacerHasOwnFasteners"):
        return unknown()  # the wheel is held by the spacer's, which nobody described
    seats = (wheel.get("fastenerSeat"), hub.get("fastenerSeat"))
    length, pad, thread = hub.get("fastenerLengthMm"), wheel.get("padThicknessMm"), hub.get("fastenerThread")
    diameter = float(thread[1:].split("x")[0]) if thread else None
    engaged = None
    if length is not None and pad is not None:
        engaged = length - pad - wheel.get("spacerMm", 0.0)
    if None not in seats and seats[0] != seats[1]:
        status = "fail"
    elif engaged is not None and diameter is not None and engaged < diameter:
        status = "fail"
    elif None in seats or engaged is None or diameter is None:
        status = "unknown"
    else:
        status = "pass"
        if hub.get("fastenerKind") != "nut" and wheel_now.get("padThicknessMm") is not None and not wheel_now.get("spacerHasOwnFasteners"):
            now = length - wheel_now["padThicknessMm"] - wheel_now.get("spacerMm", 0.0)
            status = "caution" if engaged - now > 2.0 else "pass"
    return answer(status, engaged, diameter)


# Common practice, no source: a floating caliper follows its pads inboard until they are worn, and has play on its pins.
PAD_WEAR_MM = 10.0
FLOAT_MM = 0.5


def radii_at(points, station):
    """Every radius an outline has at a station; none beyond its ends."""
    found = [radius for place, radius in points if place == station]
    if not found:
        for (left, left_radius), (right, right_radius) in zip(points, points[1:]):
            if left < station < right:
                found.append(left_radius + (right_radius - left_radius) * (station - left) / (right - left))
    return found


def pieces(points):
    return list(zip(points, points[1:])) or [(points[0], points[0])]


def point_to_piece(point, piece):
    (x, y), ((ax, ay), (bx, by)) = point, piece
    square = (bx - ax) ** 2 + (by - ay) ** 2
    share = 0.0 if square == 0 else max(0.0, min(1.0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square))
    return hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay))


def crosses(first, second):
    def side(piece, point):
        (ax, ay), (bx, by) = piece
        return (bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax)

    return (side(first, second[0]) * side(first, second[1]) < 0) and (side(second, first[0]) * side(second, first[1]) < 0)


def piece_to_piece(first, second):
    if crosses(first, second):
        return 0.0
    return min(point_to_piece(first[0], second), point_to_piece(first[1], second),
               point_to_piece(second[0], first), point_to_piece(second[1], first))


def moved_piece_distance(caliper, wheel):
    """Least distance while the caliper's piece moves along the axis: convex in the movement, so a ternary search finds it."""
    def at(move):
        return piece_to_piece(tuple((x + move, y) for x, y in caliper), wheel)

    low, high = -(PAD_WEAR_MM + FLOAT_MM), FLOAT_MM
    for _ in range(90):
        left, right = low + (high - low) / 3, high - (high - low) / 3
        if at(left) < at(right):
            high = right
        else:
            low = left
    return at((low + high) / 2)


def brake_distances(caliper, wheel):
    """(as measured, moved to where it is nearest) of the two outlines; negative = a point of one lies so deep in the other."""
    def high(place):
        return max(radii_at(caliper, place), default=float("-inf"))

    def low(place):
        return min(radii_at(wheel, place), default=float("inf"))

    deep = [min(point_to_piece(point, piece) for piece in pieces(wheel)) for point in caliper if low(point[0]) < point[1]]
    # Out of the caliper a point comes through its outline or through a face at either end.
    deep += [min([point_to_piece(point, piece) for piece in pieces(caliper)] + [point[0] - caliper[0][0], caliper[-1][0] - point[0]])
             for point in wheel if high(point[0]) > point[1]]
    if deep:
        return -max(deep), -max(deep)
    pairs = [(a, b) for a in pieces(caliper) for b in pieces(wheel)]
    return min(piece_to_piece(a, b) for a, b in pairs), min(moved_piece_distance(a, b) for a, b in pairs)


def brake_clearance(candidate, hub, axle, minimum):
    caliper = [(point["fromHubFaceMm"], point["radiusMm"]) for point in hub.get("caliperProfile", [])]
    spacer = candidate.wheel.get("spacerMm", 0.0)
    inside = [(point["fromMountingFaceMm"] + spacer, point["radiusMm"]) for point in candidate.wheel.get("innerProfile", [])]
    smallest, rim = hub.get("minimumRimDiameterIn"), candidate.wheel["rimDiameterIn"]
    if not caliper or not inside:
        if smallest is None:
            return unknown()
        return answer("fail" if rim < smallest else "pass", rim, smallest)
    gap, moved = brake_distances(caliper, inside)
    error = axle.get("clearance", {}).get("uncertaintyMm", DEFAULT_UNCERTAINTY_MM)
    margins = (gap, moved - sqrt(2) * error, moved - 2 * error)
    status = status_of(margins, minimum)
    shared = inside[0][0] <= caliper[-1][0] and caliper[0][0] <= inside[-1][0]
    if not (status == "fail" and (gap < 0 or shared)):
        # What the outline does not show may begin at its end; inboard there is nothing beyond the rim's own flange.
        reach = [inside[-1][0] - caliper[-1][0]]
        flange = spacer - (candidate.over_flanges / 2 + candidate.wheel["offsetMm"])
        if inside[0][0] > flange:
            reach.append(caliper[0][0] - inside[0][0])
        if min(reach) < minimum:
            return unknown()
        if status == "pass" and min(reach) < minimum + 2 * error:
            status = "caution"
    return answer(status, margins[2], minimum, nominalMm=margins[0], probableMm=margins[1], worstCaseMm=margins[2])


def axle_diameter_match(candidate, tyre_now, other_axle, driven):
    """Rolling circumference front to rear; the limits are common practice, no source."""
    other = other_axle.get("tyre")
    if other is None:
        return unknown()
    across = tyres.rolling_circumference(tyres.read(other["marking"]))

    def apart(tyre):
        return (tyres.rolling_circumference(tyre) / across - 1) * 100

    signed = apart(candidate.tyre)
    difference = abs(signed)
    status = "pass"
    if difference > 2 and driven == "both":
        status = "fail"
    elif difference > 1 and (tyre_now is None or difference > abs(apart(tyre_now)) + 1e-9):
        status = "caution"
    return answer(status, signed)


def overall_diameter(candidate, tyre_now):
    if tyre_now is None:
        return unknown()
    ratio = tyres.rolling_circumference(candidate.tyre) / tyres.rolling_circumference(tyre_now)
    if not STILL_HIGH_BELOW <= ratio <= STILL_LOW_ABOVE:
        status = "fail"
    else:
        status = "caution" if ratio > 1 else "pass"
    return answer(status, 100 * (tyres.overall_diameter(candidate.tyre) / tyres.overall_diameter(tyre_now) - 1))


def arch_cover(nominal_outboard):
    """Dutch Regeling voertuigen 5.2.48 (4): not more than 30 mm outside the cover; local law decides."""
    if nominal_outboard is None:
        return unknown()
    status = "fail" if nominal_outboard < -30 else "caution" if nominal_outboard < 0 else "pass"
    return answer(status, nominal_outboard)


def may_have_spring_seat(axle):
    """A seat stands over the tyre on a strut; elsewhere the check applies only where somebody measured one."""
    kind = axle.get("suspension", {}).get("kind")
    return kind in (None, "macPhersonStrut", "measured") or "springSeatMm" in axle.get("clearance", {})


def check(request):
    """Every check of a request, with verdict, unknowns and the governing place."""
    vehicle, front = request["vehicle"], request["axle"] == "front"
    axle, other = (vehicle.get(name, {}) for name in (("front", "rear") if front else ("rear", "front")))
    candidate = fitting(request["candidate"]["wheel"], request["candidate"]["tyre"])
    current = fitting(axle.get("wheel"), axle.get("tyre"))
    minimum = request.get("tolerances", {}).get("minimumMarginMm", DEFAULT_MINIMUM_MARGIN_MM)
    tyre_now = tyres.read(axle["tyre"]["marking"]) if "tyre" in axle else None
    hub, top_speed = axle.get("hub", {}), vehicle.get("topSpeedKmh")
    checks = {}
    places = ["inboard", "outboard", "radial"] + (["fullLock"] if front else [])
    if may_have_spring_seat(axle):
        places.append("springSeat")
    for place in places:
        try:
            room = margin(place, axle, candidate, request.get("camberChange"))
            status = "pass" if is_inside(place, axle, candidate, request.get("camberChange")) else status_of(room, minimum)
            checks[place + "Clearance"] = answer(
                status, room[2], minimum, nominalMm=room[0], probableMm=room[1], worstCaseMm=room[2])
        except Contradiction:
            checks[place + "Clearance"] = unknown()
        except Unknown:
            inside = is_inside(place, axle, candidate, request.get("camberChange"))
            checks[place + "Clearance"] = answer("pass") if inside else unknown()
    checks["rimDiameter"] = rim_diameter(candidate)
    checks["rimWidth"] = rim_width(candidate)
    checks["loadCapacity"] = load_capacity(candidate, axle, top_speed, vehicle.get(request["axle"] + "AxleLoadKg"))
    checks["speedRating"] = speed_rating(candidate, top_speed)
    checks["wheelLoadRating"] = wheel_load_rating(candidate, axle, vehicle.get(request["axle"] + "AxleLoadKg"))
    checks["boltCircle"] = bolt_circle(candidate, hub, axle.get("wheel", {}))
    checks["centreBore"] = centre_bore(candidate, hub)
    checks["fastener"] = fastener(candidate, axle.get("wheel", {}), hub)
    checks["brakeClearance"] = brake_clearance(candidate, hub, axle, minimum)
    checks["axleDiameterMatch"] = axle_diameter_match(candidate, tyre_now, other, vehicle.get("drivenAxle"))
    checks["overallDiameter"] = overall_diameter(candidate, tyre_now)
    try:
        checks["archCover"] = arch_cover(margin("outboard", axle, candidate, request.get("camberChange"), standing=True)[0])
    except Unknown:
        inside = is_inside("outboard", axle, candidate, request.get("camberChange"))
        checks["archCover"] = answer("pass") if inside else unknown()
    required = request.get("required")
    if required is None:
        required = list(REQUIRED)
        if "wheel" in axle and candidate.wheel["rimDiameterIn"] < axle["wheel"]["rimDiameterIn"]:
            required.append("brakeClearance")
    counted = [c["status"] for name, c in checks.items() if c["status"] != "unknown" or name in required]
    rooms = [place + "Clearance" for place in places] + ["brakeClearance"]
    measured = [name for name in rooms if "worstCaseMm" in checks[name]]
    return {
        "verdict": max(counted, key=GRAVITY.index) if counted else "pass",
        "unknown": [name for name, result in checks.items() if result["status"] == "unknown"],
        "governing": min(measured, key=lambda name: checks[name]["worstCaseMm"], default=None),
        "checks": checks,
    }
