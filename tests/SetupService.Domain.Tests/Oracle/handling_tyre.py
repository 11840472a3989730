"""Side force of the published tyre: the Magic Formula in its form of 2006, set A3.1 of Pacejka's book (205/60R15 91V, FZ0 = 4000 N).

PCY1 1.193, PDY1 0.99 (here the axle's friction), PDY2 -0.145, PEY1 -1.003, PEY2 -0.537, PKY1 14.95, PKY2 2.13, PKY6 0.92, PKY7 0.24; PKY4 = 2.
Ply steer, conicity, PEY3, PEY4, PKY3 and PDY3 are left out; the last is replaced by a gain and a best lean (docs/methods/cornering). Another size has another
FZ0. Slip angle and inclination in degrees, positive towards the turn; forces in N.
"""

from dataclasses import dataclass, replace
from math import atan, pi, radians, sin, tan

import numpy as np
from scipy.optimize import minimize_scalar

PCY1, PDY2, PEY1, PEY2, PKY1, PKY2, PKY6, PKY7 = 1.193, 0.145 / 0.99, -1.003, -0.537, 803.01 / 4000, 2.13, 0.92, 0.24
GAIN, BEST = 0.0053, 3.0
ALONG, PDX2, EXPONENT, LEAST_BESIDE = 1.21 / 0.99, 0.037 / 1.21, 2.0, 0.1  # PDX1 by PDY1, PDX2 by PDX1; the friction ellipse
MOST_USED = 0.99


@dataclass(frozen=True)
class Tyre:
    """`stiffness` multiplies the cornering stiffness, `friction` is the peak over the load at nominal load; `raised` multiplies the peak, the slope kept."""

    nominal: float
    friction: float
    stiffness: float = 1.0
    raised: float = 1.0

    def slope(self, load):
        """Cornering stiffness in N/rad: as PKY1 FZ0 sin(2 atan(FZ/(PKY2 FZ0))), PKY1 by way of the stiffness at nominal load."""
        at_nominal = PKY1 * 180 / pi * self.nominal
        return self.stiffness * at_nominal * sin(2 * atan(load / (PKY2 * self.nominal))) / sin(2 * atan(1 / PKY2))

    def along(self, load):
        """The most longitudinal force, without side force."""
        return self.friction * ALONG * (1 - PDX2 * (load / self.nominal - 1)) * load

    def beside(self, along, load):
        """The tyre beside a longitudinal force: what the ellipse leaves of its peak."""
        most = self.along(load)
        left = 1 - (abs(along) / most) ** EXPONENT if most > 0 else 0.0
        return replace(self, raised=self.raised * (max(LEAST_BESIDE, left ** (1 / EXPONENT)) if left > 0 else LEAST_BESIDE))

    def force(self, slip, load, lean):
        more = load / self.nominal - 1
        change = GAIN * (1 + more) ** 1.5 * (lean - lean ** 2 / (2 * BEST))
        by_lean = 1 + change if change >= 0 else 1 / (1 - change)
        peak = self.raised * self.friction * (1 - PDY2 * more) * load * by_lean
        if peak <= 0:
            return 0.0
        bend = PEY1 + PEY2 * more
        slope = self.slope(load)
        at = slope / (PCY1 * peak) * (tan(radians(slip)) + (PKY6 + PKY7 * more) * load / slope * sin(radians(lean)))
        return peak * sin(PCY1 * atan(at - bend * (at - atan(at))))


def fitted(axle_load_n, nominal, friction, cornering_stiffness=None):
    """The tyre whose slope at half the axle's static load is the stated one."""
    tyre = Tyre(nominal, friction)
    return tyre if cornering_stiffness is None else replace(tyre, stiffness=cornering_stiffness * 180 / pi / tyre.slope(axle_load_n / 2))


def axle_peak(wheels):
    """Most that two wheels (tyre, slip, load, inclination) give together when the same slip is added to both."""
    def lost(more):
        return -sum(tyre.force(slip + more, load, camber) for tyre, slip, load, camber in wheels)

    scan = np.linspace(-20, 50, 281)
    best = min(scan, key=lost)
    found = minimize_scalar(lost, bounds=(best - 0.5, best + 0.5), method="bounded", options={"xatol": 1e-9})
    return -min(found.fun, lost(best))
