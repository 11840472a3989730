"""The turns that are worked out: an invented car, changed one thing at a time, then at random; without points and with."""

from copy import deepcopy
from math import pi
from random import Random

from geometry_hard import ARM, FIVE, STRUT, WISHBONE, WISHBONE_SPRING

SEED = 20261125
TYRE = {"tyreNominalLoadN": 3885.0, "tyreFriction": 1.05}
STATED = {"front": {"loadedRadiusMm": 302.0, "swingArmMm": 1700.0} | TYRE, "rear": {"loadedRadiusMm": 306.0, "swingArmMm": 2100.0} | TYRE}
STOPS = {"bumpStop": {"rateNPerMm": 90.0, "lengthMm": 45.0}, "damper": {"bumpNsPerM": 1500.0, "reboundNsPerM": 3200.0, "motionRatio": 0.94}}
SPRUNG = WISHBONE | WISHBONE_SPRING


def axle(track, roll_centre, unsprung, rate, ratio, bar, camber, toe, caster=0.0, inclination=0.0):
    return {"trackMm": track, "unsprungMassKg": unsprung, "tyre": {"marking": "225/45R17 91W", "verticalRateNPerMm": 215.0},
            "alignment": {"camberDeg": camber, "casterDeg": caster, "toeDeg": toe, "steeringAxisInclinationDeg": inclination},
            "spring": {"rateNPerMm": rate, "motionRatio": ratio}, "antiRollBar": {"rollRateNmPerDeg": bar}, "rollCentreHeightMm": roll_centre}


BASE = {"wheelbaseMm": 2570.0, "centreOfGravityHeightMm": 505.0, "frontAxleLoadKg": 690.0, "rearAxleLoadKg": 640.0,
        "front": axle(1510.0, 55.0, 38.0, 27.0, 0.94, 310.0, -0.7, 0.08, 6.4, 13.1), "rear": axle(1525.0, 95.0, 36.0, 48.0, 0.72, 140.0, -1.3, 0.12)}


def merged(base, change):
    answer = deepcopy(base)
    for name, value in change.items():
        answer[name] = merged(answer[name], value) if isinstance(value, dict) and isinstance(answer.get(name), dict) else deepcopy(value)
    return answer


def case(name, lateral_g=0.8, turn="left", radius_m=80.0, base=BASE, stated=None, **change):
    vehicle = merged(base, {key: value for key, value in change.items()})
    return {"name": name, "vehicle": vehicle, "stated": merged(STATED, stated or {}), "lateralG": lateral_g, "turn": turn, "cornerRadiusM": radius_m}


def worked(tyre_rate):
    """The car of the load-transfer table that is worked by hand: no camber, no caster, roll stiffness as given per radian."""
    def end(track, height, rate, bar):
        return axle(track, height, 40.0, rate, 1.0, bar * pi / 180, 0.0, 0.0) | {"tyre": {"marking": "225/45R17 91W", "verticalRateNPerMm": tyre_rate}}

    return {"wheelbaseMm": 2600.0, "centreOfGravityHeightMm": (1180 * 530 + 160 * 305) / 1340, "frontAxleLoadKg": 1180 * 1400 / 2600 + 80,
            "rearAxleLoadKg": 1180 * 1200 / 2600 + 80, "front": end(1520.0, 70.0, 28.0, 32990.167), "rear": end(1500.0, 110.0, 26.0, 12097.678)}


UPRIGHT = {end: {"loadedRadiusMm": 305.0, "swingArmMm": 1e9} | TYRE for end in ("front", "rear")}
BUMP = {"bumpTravelMm": 20.0} | STOPS
SHORT_STOP = {"bumpTravelMm": 10.0, "bumpStop": {"rateNPerMm": 40.0, "lengthMm": 6.0}, "damper": STOPS["damper"]}
STIFF = {"spring": {"rateNPerMm": 160.0, "motionRatio": 0.9}, "reboundTravelMm": 70.0}
CORNERS = {"frontLeft": 371.0, "frontRight": 322.0, "rearLeft": 301.0, "rearRight": 336.0}


def by_hand():
    lift = {"rear": {"antiRollBar": {"rollRateNmPerDeg": 1500.0}, "reboundTravelMm": 75.0}}
    slack = {"centreOfGravityHeightMm": 540.0, "front": {"antiRollBar": {"rollRateNmPerDeg": 0.0}}, "rear": STIFF | {"antiRollBar": {"rollRateNmPerDeg": 0.0}}}
    return [
        case("worked car, hard tyres", 1.0, base=worked(1e6), stated=UPRIGHT, radius_m=100.0),
        case("worked car", 1.0, base=worked(220.0), stated=UPRIGHT, radius_m=100.0),
        case("worked car, slowly", 0.05, base=worked(220.0), stated=UPRIGHT, radius_m=100.0),
        case("plain"), case("plain to the right", turn="right"), case("gently", 0.1), case("hard", 1.15, radius_m=60.0), case("hairpin", 0.6, radius_m=12.0),
        case("wide", 0.9, "right", 400.0),
        case("no toe, no camber", front={"alignment": {"camberDeg": 0.0, "toeDeg": 0.0}}, rear={"alignment": {"camberDeg": 0.0, "toeDeg": 0.0}}),
        case("no bars", front={"antiRollBar": {"rollRateNmPerDeg": 0.0}}, rear={"antiRollBar": {"rollRateNmPerDeg": 0.0}}),
        case("bump stop touched", 1.0, front=BUMP, rear=BUMP),
        case("bump stop touched behind only, to the right", 1.0, "right", rear=BUMP | {"bumpTravelMm": 8.0}),
        case("bump stop solid in front", 1.0, front=SHORT_STOP),
        case("bump stops solid at both ends", 1.1, front=SHORT_STOP, rear=SHORT_STOP),
        case("droop stop in front", 0.9, front={"reboundTravelMm": 25.0}), case("droop stops", 1.0, front={"reboundTravelMm": 30.0}, rear={"reboundTravelMm": 35.0}),
        case("droop and bump stops", 1.1, front=BUMP | {"reboundTravelMm": 30.0}, rear=BUMP | {"reboundTravelMm": 35.0}),
        case("inner rear wheel lifted", 1.1, **lift), case("inner rear wheel lifted, to the right", 1.1, "right", **lift),
        case("inner rear wheel hangs on the bar", 1.1, rear={"antiRollBar": {"rollRateNmPerDeg": 1500.0}}),
        case("inner front wheel lifted", 1.15, front={"antiRollBar": {"rollRateNmPerDeg": 1900.0}, "reboundTravelMm": 60.0}),
        case("inner rear spring slack", 0.8, **slack), case("spring slack, inner rear wheel on its droop stop", 1.0, "right", **slack),
        case("corner weights", cornerWeightsKg=CORNERS, frontAxleLoadKg=693.0, rearAxleLoadKg=637.0),
        case("corner weights, to the right", 0.95, "right", cornerWeightsKg=CORNERS, frontAxleLoadKg=693.0, rearAxleLoadKg=637.0),
        case("corner weights, slowly", 0.02, cornerWeightsKg=CORNERS, frontAxleLoadKg=693.0, rearAxleLoadKg=637.0),
        case("right side differs", front={"alignment": {"right": {"camberDeg": -1.9, "casterDeg": 3.2, "toeDeg": -0.2}}}),
        case("right side differs, to the right", 0.9, "right", rear={"alignment": {"right": {"camberDeg": -0.2, "toeDeg": 0.35}}},
             front={"alignment": {"right": {"camberDeg": 0.6, "casterDeg": 7.5, "toeDeg": 0.0}}}),
        case("held with ease", 0.5), case("beyond the limit", 1.3, centreOfGravityHeightMm=430.0),
        case("sticky tyres", 1.2, stated={"front": {"tyreFriction": 1.35}, "rear": {"tyreFriction": 1.3}}, centreOfGravityHeightMm=430.0),
        case("wider behind", 0.9, stated={"rear": {"tyreNominalLoadN": 4880.0}}), case("small tyres", 0.9, stated={end: {"tyreNominalLoadN": 2900.0} for end in ("front", "rear")}),
        case("cornering stiffness", 0.7, front={"tyre": {"corneringStiffnessNPerDeg": 1350.0}}, rear={"tyre": {"corneringStiffnessNPerDeg": 1600.0}}),
        case("cornering stiffness, near the limit", 1.0, "right", front={"tyre": {"corneringStiffnessNPerDeg": 900.0}}, rear={"tyre": {"corneringStiffnessNPerDeg": 1200.0}}),
        case("compliance", front={"compliance": {"camberDegPerKn": 0.22, "toeDegPerKn": 0.09}}, rear={"compliance": {"camberDegPerKn": 0.15, "toeDegPerKn": -0.04}}),
        case("compliance, to the right", 1.0, "right", front={"compliance": {"camberDegPerKn": -0.1, "toeDegPerKn": 0.03}},
             rear={"compliance": {"camberDegPerKn": 0.3, "toeDegPerKn": 0.05}}),
        case("high", 0.6, centreOfGravityHeightMm=680.0, front={"trackMm": 1450.0}, rear={"trackMm": 1440.0}),
        case("roll centres under the road", front={"rollCentreHeightMm": -40.0}, rear={"rollCentreHeightMm": -15.0}),
        case("roll centres high", front={"rollCentreHeightMm": 180.0}, rear={"rollCentreHeightMm": 320.0}),
        case("short swing arms", stated={"front": {"swingArmMm": 900.0}, "rear": {"swingArmMm": 800.0}})]


def grip_cars(count):
    """Cars drawn at random whose limits are sought: low enough not to lean over before, without droop stops (rigid here, not there)."""
    cases = at_random(count, SEED + 1, (430, 540), (0.4, 0.95))
    for number, one in enumerate(cases, 1):
        one["name"] = f"grip {number}"
        for end in ("front", "rear"):
            del one["vehicle"][end]["reboundTravelMm"]
    return cases


def at_random(count, seed=SEED, heights=(430, 580), lateral=(0.2, 1.05)):
    random = Random(seed)

    def between(low, high):
        return round(random.uniform(low, high), 3)

    def end(front):
        return {"trackMm": between(1420, 1600), "rollCentreHeightMm": between(0, 150), "unsprungMassKg": between(28, 48),
                "tyre": {"verticalRateNPerMm": between(170, 280)}, "spring": {"rateNPerMm": between(22, 70), "motionRatio": between(0.6, 1.0)},
                "antiRollBar": {"rollRateNmPerDeg": between(0, 500)}, "compliance": {"camberDegPerKn": between(0, 0.3), "toeDegPerKn": between(-0.05, 0.1)},
                "alignment": {"camberDeg": between(-3, 0.5), "toeDeg": between(-0.2, 0.2), "casterDeg": between(2, 9) if front else 0.0,
                              "steeringAxisInclinationDeg": between(7, 16) if front else 0.0},
                "bumpTravelMm": between(25, 70), "reboundTravelMm": between(35, 90)} | STOPS

    return [case(f"random {n}", between(*lateral), random.choice(["left", "right"]), between(25, 200),
                 wheelbaseMm=between(2300, 2900), centreOfGravityHeightMm=between(*heights), frontAxleLoadKg=between(480, 850),
                 rearAxleLoadKg=between(480, 850), front=end(True), rear=end(False),
                 stated={name: {"loadedRadiusMm": between(280, 330), "swingArmMm": between(900, 4000), "tyreNominalLoadN": between(3000, 5000), "tyreFriction": between(0.9, 1.35)}
                         for name in ("front", "rear")})
            for n in range(1, count + 1)]


def pointed(points, radius, ratio, base, camber, toe, **change):
    """An axle that has points: what the points say is taken out. `ratio` stands where there is no spring among them."""
    answer = merged({name: value for name, value in base.items() if name not in ("trackMm", "rollCentreHeightMm")}, change)
    answer["suspension"], answer["alignment"] = points, {"camberDeg": camber, "toeDeg": toe}
    if ratio is None:
        del answer["spring"]["motionRatio"]
    else:
        answer["spring"]["motionRatio"] = ratio
    return answer, {"loadedRadiusMm": radius} | TYRE


def strut(camber=-0.75, toe=0.0, end="front", **change):
    return pointed(STRUT, 305.0, None, BASE[end], camber, toe, **change)


def wishbone(camber=-0.5, toe=0.05, end="rear", **change):
    return pointed(SPRUNG, 310.0, None, BASE[end], camber, toe, **({"spring": {"rateNPerMm": 62.0}} | change))


def linked(name, ahead, behind, lateral_g=0.8, turn="left", radius_m=80.0, **change):
    base = {key: value for key, value in BASE.items() if key not in ("front", "rear")} | {"front": BASE["front"] if ahead is None else ahead[0],
                                                                                        "rear": BASE["rear"] if behind is None else behind[0]}
    stated = {end: STATED[end] if given is None else given[1] for end, given in (("front", ahead), ("rear", behind))}
    answer = case(name, lateral_g, turn, radius_m, base, **change)
    return answer | {"stated": stated}


def with_points():
    right = {"alignment": {"right": {"camberDeg": -1.6, "toeDeg": 0.2}}}
    soft = {"antiRollBar": {"rollRateNmPerDeg": 0.0}}
    give = {"compliance": {"camberDegPerKn": 0.2, "toeDegPerKn": 0.06}}
    five = pointed(FIVE, 305.0, 0.68, BASE["rear"], -1.0, 0.15)
    arm = pointed(ARM, 300.0, 0.78, BASE["rear"], -1.2, 0.1)
    return [
        linked("strut and wishbone", strut(), wishbone()), linked("strut and wishbone, to the right", strut(), wishbone(), turn="right"),
        linked("strut and wishbone, slowly", strut(), wishbone(), 0.05), linked("strut and wishbone, gently", strut(), wishbone(), 0.3),
        linked("strut and wishbone, hard", strut(), wishbone(), 1.1, radius_m=60.0), linked("strut and wishbone, tight", strut(), wishbone(), 0.6, "right", 22.0),
        linked("strut and wishbone, wide", strut(), wishbone(), 0.95, radius_m=300.0),
        linked("camber and toe", strut(-2.2, 0.12), wishbone(-1.8, 0.2), 0.9),
        linked("right side differs", strut(), wishbone(), 0.85, front=right, rear=right),
        linked("right side differs, to the right", strut(), wishbone(), 0.85, "right", front=right, rear=right),
        linked("compliance", strut(), wishbone(), 0.9, front=give, rear=give),
        linked("no bars", strut(), wishbone(), 0.7, front=soft, rear=soft),
        linked("stiff springs", strut(), wishbone(), 1.0, front={"spring": {"rateNPerMm": 60.0}}, rear={"spring": {"rateNPerMm": 140.0}}),
        linked("cornering stiffness", strut(), wishbone(), 0.7, front={"tyre": {"corneringStiffnessNPerDeg": 1250.0}}, rear={"tyre": {"corneringStiffnessNPerDeg": 1450.0}}),
        linked("corner weights", strut(), wishbone(), 0.8, "right", cornerWeightsKg=CORNERS, frontAxleLoadKg=693.0, rearAxleLoadKg=637.0),
        linked("inner rear wheel lifted", strut(), wishbone(), 1.1, rear={"antiRollBar": {"rollRateNmPerDeg": 1500.0}, "reboundTravelMm": 60.0}),
        linked("droop stops", strut(), wishbone(), 0.9, front={"reboundTravelMm": 20.0}, rear={"reboundTravelMm": 25.0}),
        linked("wishbone in front, strut behind", wishbone(end="front"), strut(end="rear")),
        linked("wishbones at both ends", wishbone(end="front"), wishbone(), 0.9, "right"),
        linked("five links behind", strut(), five, 0.85), linked("semi-trailing arms behind", strut(), arm, 0.85),
        linked("points in front only", strut(), None, 0.8), linked("points behind only", None, wishbone(), 0.8, "right")]


def limits():
    """Cars that lean over before anything else ends the search."""
    return [case("plain", centreOfGravityHeightMm=560.0), case("high", centreOfGravityHeightMm=700.0), case("high, to the right", turn="right", centreOfGravityHeightMm=760.0, cornerWeightsKg=CORNERS,
                                                                             frontAxleLoadKg=693.0, rearAxleLoadKg=637.0),
            case("high, with stops", centreOfGravityHeightMm=700.0, front=BUMP | {"reboundTravelMm": 60.0}, rear=BUMP | {"reboundTravelMm": 60.0})]
