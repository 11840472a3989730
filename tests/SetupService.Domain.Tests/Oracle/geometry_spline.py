"""The natural cubic smoothing spline by scipy's make_smoothing_spline, as smooth as the readings' errors allow.

The smoothing is the one at which the sum of squared residuals over errors equals n - sqrt(2 n), the lower end of what n readings
leave about the truth (Reinsch 1967, from memory); where the weighted straight line has less than that, the straight line. Beyond the
ends it goes on by its end slope.
"""

from random import Random

import numpy as np
from scipy.interpolate import make_smoothing_spline
from scipy.optimize import brentq

SEED = 20261127


class Line:
    """The weighted straight line, in the shape of a spline."""

    def __init__(self, places, values, errors):
        self.slope, self.level = np.polyfit(places, values, 1, w=1 / errors)

    def __call__(self, places, order=0):
        places = np.asarray(places, dtype=float)
        return self.slope * places + self.level if order == 0 else np.full_like(places, self.slope)


def smoothed(places, values, errors, smoothing):
    return Line(places, values, errors) if smoothing is None else make_smoothing_spline(places, values, w=1 / errors ** 2, lam=smoothing)


def misfit(curve, places, values, errors):
    return float((((values - curve(places)) / errors) ** 2).sum())


def chosen_smoothing(places, values, errors):
    """None for the straight line."""
    least = len(places) - np.sqrt(2 * len(places))
    if misfit(Line(places, values, errors), places, values, errors) <= least:
        return None
    logarithm = brentq(lambda power: misfit(smoothed(places, values, errors, 10.0 ** power), places, values, errors) - least, -6, 14, xtol=1e-14, rtol=1e-15)
    return 10.0 ** logarithm


def value(curve, ends, place):
    """Straight beyond the ends."""
    inside = min(max(place, ends[0]), ends[1])
    slope = float(curve(inside) * 0 + derivative(curve, inside))
    return float(curve(inside)) + slope * (place - inside), slope


def derivative(curve, place):
    return float(curve(place, 1)) if isinstance(curve, Line) else float(curve.derivative()(place))


def case(name, places, values, errors):
    places, values, errors = (np.array(member, dtype=float) for member in (places, values, errors))
    ends = (places[0], places[-1])
    smoothing = chosen_smoothing(places, values, errors)
    curve = smoothed(places, values, errors, smoothing)
    units = [smoothed(places, unit, errors, smoothing) for unit in np.eye(len(places))]  # the smoother is linear in the readings
    asked = sorted(set(np.linspace(ends[0], ends[1], 17)) | set(places) | {ends[0] - 20, ends[0] - 7.5, ends[1] + 7.5, ends[1] + 20})
    rows = []
    for place in map(float, asked):
        weights = np.array([value(unit, ends, place)[0] for unit in units])
        rows.append([place, *value(curve, ends, place), float((weights ** 2 * errors ** 2).sum())])
    return {"name": name, "x": places.tolist(), "y": values.tolist(), "errors": errors.tolist(), "lambda": smoothing,
            "misfit": misfit(curve, places, values, errors), "columns": ["x", "value", "slope", "variance"], "rows": rows}


def cases():
    random, answer = Random(SEED), []
    shapes = [lambda z: -1.0 - 0.018 * z - 0.00012 * z * z, lambda z: -0.6 - 0.03 * z, lambda z: 0.15 - 0.004 * z + 2e-6 * z ** 3,
              lambda z: -1.8 + 0.5 * np.sin(z / 22), lambda z: -2.0 - 0.012 * z - 0.00008 * z * z + 1.2e-6 * z ** 3]
    for number in range(10):
        count = [5, 6, 7, 9, 12, 16, 25, 5, 8, 40][number]
        places = sorted({round(random.uniform(-70, 70), 1) for _ in range(count)} | {-72.0, 75.0}) if number % 2 else list(np.linspace(-60, 60, count))
        noise = [0.1, 0.1, 0.05, 0.03, 0.1, 0.08, 0.1, 0.02, 0.1, 0.15][number]
        errors = [noise * (random.choice([1.0, 0.5, 2.0]) if number >= 5 else 1.0) for _ in places]
        share = random.choice([0.8, 1.1, 1.4])
        values = [round(float(shapes[number % 5](place)) + random.gauss(0, share * error), 3) for place, error in zip(places, errors)]
        answer.append(case(f"readings {number + 1}", places, values, errors))
    answer.append(case("near a line", [-50, -30, -10, 10, 30, 50], [0.37, 0.02, -0.31, -0.72, -0.98, -1.37], [0.1] * 6))
    return answer
