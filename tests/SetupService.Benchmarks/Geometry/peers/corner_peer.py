"""Two suspension corners solved with SciPy, to measure the service's own solve against.

Run: /usr/bin/python3 corner_peer.py [rounds] [sweeps a round]

The upright's pose is six unknowns: wheel centre x and y and a quaternion, held to length 1; its height is given. Link lengths (strut:
the top mount on the strut's line) are the equations, all links in one array. 61 positions from -60 to 60 mm, from the stated position
outward in steps of 2 mm, each started from the last pose; camber and toe at each. The corners are invented, those of corner_peer.cpp.
Prints lines `name value unit`; microseconds per position are the median of the rounds.
"""

import sys
from math import asin, atan2, cos, degrees, radians, sin
from statistics import median
from time import perf_counter

import numpy as np
from scipy.optimize import least_squares, root

HALF_SWEEP, STEP_MM, TOLERANCE = 30, 2.0, 1e-12


def rotation(w, x, y, z):
    return np.array([[w * w + x * x - y * y - z * z, 2 * (x * y - w * z), 2 * (x * z + w * y)],
                     [2 * (x * y + w * z), w * w - x * x + y * y - z * z, 2 * (y * z - w * x)],
                     [2 * (x * z - w * y), 2 * (y * z + w * x), w * w - x * x - y * y + z * z]])


def rotation_slopes(w, x, y, z):
    """By the quaternion's four members."""
    return 2 * np.array([[[w, -z, y], [z, w, -x], [-y, x, w]], [[x, y, z], [y, -x, -w], [z, w, -x]],
                         [[-y, x, w], [x, y, z], [-w, z, -y]], [[-z, -w, x], [w, -z, y], [x, y, z]]])


class Corner:
    """Body joints, upright joints and lengths of the links; of a strut, mount and foot and two directions across it."""

    def __init__(self, centre, camber_deg, toe_deg, links, strut=None):
        self.centre = np.array(centre, dtype=float)
        camber, toe = radians(camber_deg), radians(toe_deg)
        self.spin = np.array([sin(toe) * cos(camber), cos(toe) * cos(camber), -sin(camber)])
        self.bodies = np.array([body for body, _ in links], dtype=float)
        self.arms = np.array([joint for _, joint in links], dtype=float) - self.centre
        self.lengths = np.linalg.norm(self.arms + self.centre - self.bodies, axis=1)
        self.strut = strut is not None
        if self.strut:
            self.mount, foot = (np.array(place, dtype=float) for place in strut)
            first = np.cross(self.mount - foot, [1.0, 0.0, 0.0])
            second = np.cross(self.mount - foot, first)
            self.foot, self.sides = foot - self.centre, np.array([first / np.linalg.norm(first), second / np.linalg.norm(second)])

    def residuals(self, unknown, travel):
        turn = rotation(*unknown[2:])
        centre = np.array([unknown[0], unknown[1], self.centre[2] + travel])
        reach = centre + self.arms @ turn.T - self.bodies
        parts = [np.sqrt((reach * reach).sum(axis=1)) - self.lengths, [unknown[2:] @ unknown[2:] - 1]]
        if self.strut:
            parts.append((self.sides @ turn.T) @ (self.mount - centre - turn @ self.foot))
        return np.concatenate(parts)

    def slopes(self, unknown, travel):
        turn, turns = rotation(*unknown[2:]), rotation_slopes(*unknown[2:])
        centre = np.array([unknown[0], unknown[1], self.centre[2] + travel])
        reach = centre + self.arms @ turn.T - self.bodies
        along = reach / np.sqrt((reach * reach).sum(axis=1))[:, None]
        links = np.hstack([along[:, :2], np.einsum("li,qij,lj->lq", along, turns, self.arms)])
        parts = [links, np.concatenate([[0.0, 0.0], 2 * unknown[2:]])[None]]
        if self.strut:
            sides, rest = self.sides @ turn.T, self.mount - centre - turn @ self.foot
            parts.append(np.hstack([-sides[:, :2], np.einsum("sj,qij,i->sq", self.sides, turns, rest) - sides @ (turns @ self.foot).T]))
        return np.vstack(parts)

    def angles(self, unknown):
        spin = rotation(*unknown[2:]) @ self.spin
        return -degrees(asin(spin[2])), degrees(atan2(spin[0], spin[1]))


WISHBONE = Corner((0, 760, 310), -0.5, 0.05, [
    ((150, 390, 190), (10, 715, 180)), ((-180, 400, 180), (10, 715, 180)), ((90, 480, 455), (-18, 690, 480)),
    ((-130, 490, 440), (-18, 690, 480)), ((-125, 370, 208), (-130, 695, 205))])
STRUT = Corner((0, 750, 305), -0.75, 0.0, [
    ((15, 380, 190), (5, 720, 175)), ((-310, 390, 195), (5, 720, 175)), ((-150, 330, 235), (-140, 695, 225))],
    strut=((-35, 565, 840), (-5, 630, 400)))

WAYS = {
    "rootNumericJacobian": lambda corner, start, travel: root(corner.residuals, start, args=(travel,), method="hybr", options={"xtol": TOLERANCE}).x,
    "rootAnalyticJacobian": lambda corner, start, travel: root(
        corner.residuals, start, args=(travel,), jac=corner.slopes, method="hybr", options={"xtol": TOLERANCE}).x,
    "leastSquaresNumericJacobian": lambda corner, start, travel: least_squares(
        corner.residuals, start, args=(travel,), xtol=TOLERANCE, ftol=TOLERANCE, gtol=TOLERANCE).x,
    "leastSquaresAnalyticJacobian": lambda corner, start, travel: least_squares(
        corner.residuals, start, args=(travel,), jac=corner.slopes, xtol=TOLERANCE, ftol=TOLERANCE, gtol=TOLERANCE).x}


def sweep(corner, way):
    """Camber and toe by travel, and the worst residual, mm."""
    rows, worst = {}, 0.0
    for side in (1, -1):
        pose = np.array([corner.centre[0], corner.centre[1], 1.0, 0.0, 0.0, 0.0])
        for step in range(0 if side > 0 else 1, HALF_SWEEP + 1):
            travel = side * step * STEP_MM
            pose = way(corner, pose, travel)
            rows[travel] = (*corner.angles(pose), pose)
    for travel, (_, _, pose) in rows.items():
        worst = max(worst, np.abs(corner.residuals(pose, travel)).max())
    return rows, worst


def timed(corner, way):
    start = perf_counter()
    for side in (1, -1):
        pose = np.array([corner.centre[0], corner.centre[1], 1.0, 0.0, 0.0, 0.0])
        for step in range(0 if side > 0 else 1, HALF_SWEEP + 1):
            pose = way(corner, pose, side * step * STEP_MM)
            corner.angles(pose)
    return perf_counter() - start


def main(rounds, sweeps):
    for name, corner in (("doubleWishbone", WISHBONE), ("macPhersonStrut", STRUT)):
        for way_name, way in WAYS.items():
            rows, worst = sweep(corner, way)
            if worst > 1e-6:
                sys.exit(f"{name} {way_name}: residual {worst} mm")
            times = [sum(timed(corner, way) for _ in range(sweeps)) / sweeps / (2 * HALF_SWEEP + 1) for _ in range(rounds)]
            print(f"scipy.{name}.{way_name}.position {1e6 * median(times):.1f} us")
            print(f"scipy.{name}.{way_name}.camberInDroop {rows[-HALF_SWEEP * STEP_MM][0]:.10f} deg")
            print(f"scipy.{name}.{way_name}.camberInBump {rows[HALF_SWEEP * STEP_MM][0]:.10f} deg")
            print(f"scipy.{name}.{way_name}.worstResidual {worst:.2e} mm")


if __name__ == "__main__":
    main(*(int(word) for word in (sys.argv[1:] + ["5", "2"][len(sys.argv) - 1:])))
