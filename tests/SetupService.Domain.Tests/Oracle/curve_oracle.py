"""Cases for the curve through readings: curve_cases.json. Plain Python; see README.md."""

import json
from math import sin
from pathlib import Path
from random import Random

from curve_posterior import CAMBER, TOE, Curve

SEED = 20261129


def case(name, prior, places, values, error):
    curve = Curve(places, values, error, prior)
    first, last = min(places), max(places)
    asked = sorted({first - 20, first - 7.5, last + 7.5, last + 20, *places, *(first + (last - first) * k / 14 for k in range(15))})
    rows = [[place, *curve.at(place), *curve.at(place, 1)] for place in asked]
    largest = max(abs(value - curve.at(place)[0]) for place, value in zip(places, values))
    assert largest <= 2.5 * error + 1e-12, f"{name}: a residual over 2.5 errors, which the method would not leave"
    return {"name": name, "prior": "camber" if prior is CAMBER else "toe", "places": places, "values": values, "error": error, "rows": rows}


def read(random, places, shape, error):
    return [round(shape(place) + random.gauss(0, error), 3) for place in places]


def cases():
    random = Random(SEED)
    strut = lambda z: -0.8 - 0.0167 * z + 0.95e-4 * z * z + 1.3e-7 * z ** 3
    wishbone = lambda z: -1.2 - 0.0343 * z - 1.45e-4 * z * z - 1.5e-7 * z ** 3
    arm = lambda z: -1.5 - 0.0417 * z
    toe = lambda z: 0.1 + 0.005 * z - 2e-5 * z * z + 6e-7 * z ** 3
    wavy = lambda z: -1.5 + 0.6 * sin(z / 12)
    five, nine = [-60.0, -30.0, 0.0, 30.0, 60.0], [-60.0 + 15 * k for k in range(9)]
    scattered = lambda count: sorted(round(random.uniform(-90, 90), 1) for _ in range(count))
    sixty = scattered(60)
    return [
        case("two readings", CAMBER, [-20.0, 35.0], [-0.4, -1.3], 0.1),
        case("three readings", CAMBER, [-40.0, 0.0, 50.0], read(random, [-40, 0, 50], strut, 0.1), 0.1),
        case("a strut at five heights", CAMBER, five, read(random, five, strut, 0.05), 0.1),
        case("a wishbone at nine heights", CAMBER, nine, read(random, nine, wishbone, 0.05), 0.1),
        case("an arm, uneven heights", CAMBER, [-55.0, -41.0, -8.0, 12.0, 77.0], read(random, [-55, -41, -8, 12, 77], arm, 0.05), 0.1),
        case("toe", TOE, five, read(random, five, toe, 0.02), 0.03),
        case("without error", CAMBER, nine, read(random, nine, strut, 0), 0),
        case("toe without error, uneven", TOE, [-47.0, -3.0, 4.5, 60.0], read(random, [-47, -3, 4.5, 60], toe, 0), 0),
        case("near-duplicate heights", CAMBER, [-50.0, 0.0, 0.3, 0.31, 50.0], [-0.1, -0.82, -0.9, -0.75, -1.4], 0.1),
        case("doubled heights", CAMBER, [-50.0, -50.0, 0.0, 0.0, 0.0, 40.0], [0.1, 0.0, -0.8, -0.9, -0.75, -1.3], 0.1),
        case("a kinked curve and a good gauge", CAMBER, nine, [round(wavy(place), 3) for place in nine], 0.02),
        case("a large error", CAMBER, five, [-0.2, 0.9, -1.9, -0.4, -3.0], 2),
        case("a small error", CAMBER, nine, [round(wishbone(place), 4) for place in nine], 0.001),
        case("sixty readings", CAMBER, sixty, [round(strut(place) + max(-0.15, min(0.15, random.gauss(0, 0.08))), 2) for place in sixty], 0.1),
        case("far from ride height, close together", CAMBER, [120.0, 122.0, 125.0], [-3.0, -3.1, -3.15], 0.1),
    ]


if __name__ == "__main__":
    made = cases()
    text = "[\n" + ",\n".join(json.dumps(one) for one in made) + "\n]\n"
    Path(__file__).with_name("curve_cases.json").write_text(text)
