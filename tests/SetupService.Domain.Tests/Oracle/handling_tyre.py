"""Side force of the example tyre: the Magic Formula of Bakker, Nyborg and Pacejka (SAE 870421, 1987).

a0 to a8 as read in a university control project's file; the camber coefficients a9 to a12 from memory. Slip angle and inclination in
degrees, positive towards the turn; load in N in, kN inside; force in N, positive towards the turn.
"""

from dataclasses import dataclass
from math import atan, sin

import numpy as np
from scipy.optimize import minimize_scalar

A = (1.30, -22.1, 1011.0, 1078.0, 1.82, 0.208, 0.0, -0.354, 0.707, 0.028, 0.0, 14.8, 0.022)
HELD_WITH = 1.05


def slope_at_no_camber(load_n):
    """BCD in N/deg."""
    return A[3] * sin(A[4] * atan(A[5] * load_n / 1000))


@dataclass(frozen=True)
class Tyre:
    """`stiffness` multiplies the slope BCD; `grip` the peak D with the slope kept."""

    stiffness: float = 1.0
    grip: float = 1.0

    def force(self, slip, load_n, camber):
        load = load_n / 1000
        peak = self.grip * load * (A[1] * load + A[2])
        if peak <= 0:
            return 0.0
        steepness = self.stiffness * slope_at_no_camber(load_n) * (1 - A[12] * abs(camber)) / (A[0] * peak)
        bend = A[6] * load ** 2 + A[7] * load + A[8]
        at = steepness * (slip + A[9] * camber)
        return peak * sin(A[0] * atan((1 - bend) * at + bend * atan(at))) + load * (A[10] * load + A[11]) * camber


def fitted(axle_load_n, cornering_stiffness=None):
    """The tyre whose slope at half the axle's static load is the stated one."""
    return Tyre() if cornering_stiffness is None else Tyre(cornering_stiffness / slope_at_no_camber(axle_load_n / 2))


def axle_peak(tyre, wheels):
    """Most that two wheels (slip, load, inclination) give together when the same slip is added to both."""
    def lost(more):
        return -sum(tyre.force(slip + more, load, camber) for slip, load, camber in wheels)

    scan = np.linspace(-10, 90, 401)
    best = min(scan, key=lost)
    found = minimize_scalar(lost, bounds=(best - 0.25, best + 0.25), method="bounded", options={"xatol": 1e-9})
    return -min(found.fun, lost(best))
