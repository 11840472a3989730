"""How far a corner can travel: the fold of its curve of poses, followed by arc length with travel as a tenth unknown."""

import numpy as np
from scipy.optimize import brentq

from geometry_constraints import system
from geometry_solver import DoesNotClose, Walk
from geometry_upright import Upright

STEP_MM, MOST_STEPS = 4.0, 400


def tangent(constraints, place, rack, like):
    """Unit tangent of the curve, on the side of `like`."""
    _, slopes, by_travel, _ = system(constraints, Upright(place[:9]), place[9], rack)
    matrix = np.column_stack([slopes, by_travel]).astype(float)
    along = np.linalg.svd(matrix)[2][-1]
    return along * np.sign(along @ like)


def step(constraints, place, along, size, rack):
    """The curve's point at a distance along its tangent: Newton at right angles to it."""
    target = place + size * along
    for _ in range(12):
        residuals, slopes, by_travel, _ = system(constraints, Upright(target[:9]), target[9], rack)
        matrix = np.vstack([np.column_stack([slopes, by_travel]).astype(float), along])
        fault = np.append(residuals.astype(float), float((target - place) @ along) - size)
        target = target - np.linalg.solve(matrix, fault)
    return target


def last_travel(corner, rack, towards):
    """The greatest (towards = 1) or least (-1) travel that closes at this rack, mm."""
    walk = Walk(corner)
    place = np.append(walk.at(0.0, rack), np.longdouble(0))
    like = np.append(walk.rates(0.0, rack)[0], 1).astype(float) * towards
    along = tangent(walk.constraints, place, rack, like)
    for _ in range(MOST_STEPS):
        following = step(walk.constraints, place, along, STEP_MM, rack)
        next_along = tangent(walk.constraints, following, rack, along)
        if next_along[9] * towards <= 0:
            def rise(size):
                return tangent(walk.constraints, step(walk.constraints, place, along, size, rack), rack, along)[9]
            return float(step(walk.constraints, place, along, brentq(rise, 0, STEP_MM, xtol=1e-9), rack)[9])
        place, along = following, next_along
    raise ValueError("no end of travel found")


def last_travel_by_halving(corner, rack, towards, guess):
    """The same by trying poses and halving, to 0.01 mm: a check of the fold by another way."""
    walk = Walk(corner)
    good, bad = guess - towards * 6.0, guess + towards * 6.0
    walk.at(good, rack)
    while abs(bad - good) > 0.01:
        middle = (good + bad) / 2
        try:
            walk.at(middle, rack)
            good = middle
        except (DoesNotClose, np.linalg.LinAlgError):
            bad = middle
    return good
