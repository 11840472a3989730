"""The upright in natural coordinates: three of its points, nine unknowns, all constraints polynomials in them.

The points are the wheel centre W, one 100 mm outboard along the spin axis as stated and one 100 mm forward in the wheel's plane.
Any other point of the upright is W + a e1 + b e2 + c e1 x e2, with e1, e2 the unit vectors to the two. No angle and no rotation
matrix is unknown. Formulation: natural (fully Cartesian) coordinates, Garcia de Jalon and Bayo 1994, from memory.
Lengths in mm, in the extended precision of np.longdouble.
"""

import numpy as np

REACH_MM = np.longdouble(100)


def vector(*members):
    return np.array(members, dtype=np.longdouble)


def skew(v):
    """[v], for which [v] u = v x u."""
    return np.array([[0, -v[2], v[1]], [v[2], 0, -v[0]], [-v[1], v[0], 0]], dtype=np.longdouble)


def unit(v):
    return v / np.sqrt(v @ v)


def across(v):
    """Two unit vectors at right angles to v and to each other."""
    axis = unit(v)
    other = np.zeros(3, dtype=np.longdouble)
    other[int(np.argmin(np.abs(axis)))] = 1
    first = unit(np.cross(axis, other))
    return first, np.cross(axis, first)


def spin_of(camber_deg, toe_deg):
    """Outboard spin axis of a left wheel."""
    camber, toe = np.radians(np.longdouble(camber_deg)), np.radians(np.longdouble(toe_deg))
    return vector(np.sin(toe) * np.cos(camber), np.cos(toe) * np.cos(camber), -np.sin(camber))


def stated_frame(camber_deg, toe_deg):
    """e1, e2, e3 at the stated position, as rows."""
    spin = spin_of(camber_deg, toe_deg)
    forward = unit(np.cross(spin, vector(0, 0, 1)))
    return np.array([spin, forward, np.cross(spin, forward)])


def stated_state(frame):
    """The nine unknowns at the stated position, with the wheel centre there as origin."""
    return np.concatenate([np.zeros(3, dtype=np.longdouble), REACH_MM * frame[0], REACH_MM * frame[1]])


class Upright:
    """The upright at nine values of the unknowns; places by their coordinates (a, b, c) in it."""

    def __init__(self, state):
        self.centre = state[:3]
        self.e1 = (state[3:6] - self.centre) / REACH_MM
        self.e2 = (state[6:9] - self.centre) / REACH_MM
        self.e3 = np.cross(self.e1, self.e2)

    def direction(self, place):
        return place[0] * self.e1 + place[1] * self.e2 + place[2] * self.e3

    def point(self, place):
        return self.centre + self.direction(place)

    def direction_slopes(self, place):
        """Derivatives of a direction by the nine unknowns, 3 x 9."""
        by_first = (place[0] * np.eye(3) - place[2] * skew(self.e2)) / REACH_MM
        by_second = (place[1] * np.eye(3) + place[2] * skew(self.e1)) / REACH_MM
        return np.hstack([-by_first - by_second, by_first, by_second])

    def point_slopes(self, place):
        slopes = self.direction_slopes(place)
        slopes[:, :3] += np.eye(3)
        return slopes

    def spin_rate(self, change):
        """Angular velocity of the upright for a rate of the nine unknowns: half the sum of e x de."""
        d1, d2 = (change[3:6] - change[:3]) / REACH_MM, (change[6:9] - change[:3]) / REACH_MM
        d3 = np.cross(d1, self.e2) + np.cross(self.e1, d2)
        return (np.cross(self.e1, d1) + np.cross(self.e2, d2) + np.cross(self.e3, d3)) / 2
