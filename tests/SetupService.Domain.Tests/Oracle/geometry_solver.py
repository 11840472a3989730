"""Poses of a corner: scipy's root from a nearby pose, then Newton steps of our own until nothing changes.

The branch is the one that goes through the stated position: travel and rack are walked in short steps, and the sign of the
Jacobian's determinant must not change. Rates come from implicit differentiation of the same equations, not from differences.
"""

import numpy as np
from scipy.optimize import root

from geometry_constraints import system
from geometry_upright import Upright, stated_state

TRAVEL_STEP_MM, RACK_STEP_MM, ADJUSTMENT_STEPS = 5.0, 3.0, 4


class DoesNotClose(Exception):
    """No pose at this travel and rack on the branch of the stated position."""


def polish(constraints, state, travel, rack):
    """Newton steps: residuals in extended precision, so the pose is good to about 1e-15 of its size even where ill-conditioned."""
    best = np.inf
    for _ in range(12):
        residuals, slopes, _, _ = system(constraints, Upright(state), travel, rack)
        size = float(np.abs(residuals).max())
        if size >= best / 2 and best < 1e-12:
            return state
        best = min(best, size)
        state = state - np.linalg.solve(slopes.astype(float), residuals.astype(float))
    if best > 1e-12:
        raise DoesNotClose(f"residual {best:g} mm")
    return state


def pose(constraints, start, travel, rack):
    """The pose near `start`."""
    def residuals(state):
        return system(constraints, Upright(np.asarray(state, dtype=np.longdouble)), travel, rack)[0].astype(float)

    def slopes(state):
        return system(constraints, Upright(np.asarray(state, dtype=np.longdouble)), travel, rack)[1].astype(float)

    found = root(residuals, start.astype(float), jac=slopes, method="hybr", options={"xtol": 1e-12})
    if np.abs(residuals(found.x)).max() > 1e-6:
        raise DoesNotClose(f"residual {np.abs(residuals(found.x)).max():g} mm")
    state = polish(constraints, found.x.astype(np.longdouble), travel, rack)
    if orientation(constraints, state, travel, rack) != orientation(constraints, start, travel, rack):
        raise DoesNotClose("another branch")
    return state


def orientation(constraints, state, travel, rack):
    return np.sign(np.linalg.det(system(constraints, Upright(state), travel, rack)[1].astype(float)))


class Walk:
    """Poses of one corner, each reached from one already found."""

    def __init__(self, corner, known=None):
        """`known`: poses by (travel, rack); the stated one where none is given."""
        self.constraints = corner.constraints()
        self.found = known or {(0.0, 0.0): polish(self.constraints, stated_state(corner.frame), 0.0, 0.0)}

    def at(self, travel, rack=0.0):
        if (travel, rack) not in self.found:
            near = min(self.found, key=lambda place: abs(place[0] - travel) / TRAVEL_STEP_MM + abs(place[1] - rack) / RACK_STEP_MM)
            count = int(np.ceil(max(abs(near[0] - travel) / TRAVEL_STEP_MM, abs(near[1] - rack) / RACK_STEP_MM)))
            state = self.found[near]
            for step in range(1, count + 1):
                share = step / count
                state = pose(self.constraints, state, near[0] + share * (travel - near[0]), near[1] + share * (rack - near[1]))
            self.found[travel, rack] = state
        return self.found[travel, rack]

    def rates(self, travel, rack=0.0):
        """Rates of the nine unknowns per mm of travel and per mm of rack."""
        _, slopes, by_travel, by_rack = system(self.constraints, Upright(self.at(travel, rack)), travel, rack)
        answer = np.linalg.solve(slopes.astype(float), -np.column_stack([by_travel, by_rack]).astype(float))
        return answer[:, 0].astype(np.longdouble), answer[:, 1].astype(np.longdouble)
