"""What holds the upright: each constraint gives its residuals (mm), their 9 slopes, and their slopes by travel and by rack."""

from dataclasses import dataclass

import numpy as np

from geometry_upright import REACH_MM, across, vector


def rows(residuals, slopes, travel=0.0, rack=0.0):
    count = len(residuals)
    return (np.array(residuals, dtype=np.longdouble), np.array(slopes, dtype=np.longdouble).reshape(count, 9),
            np.full(count, travel, dtype=np.longdouble), np.full(count, rack, dtype=np.longdouble))


@dataclass(frozen=True)
class Rigid:
    """The three points keep their distances: 100, 100 and 100 times the root of 2 mm."""

    def at(self, upright, _travel, _rack):
        u, v = upright.e1 * REACH_MM, upright.e2 * REACH_MM
        w = v - u
        zero = np.zeros(3, dtype=np.longdouble)
        squares = [u @ u - REACH_MM ** 2, v @ v - REACH_MM ** 2, w @ w - 2 * REACH_MM ** 2]
        slopes = [np.concatenate([-u, u, zero]), np.concatenate([-v, zero, v]), np.concatenate([zero, -w, w])]
        return rows([s / (2 * REACH_MM) for s in squares], [s / REACH_MM for s in slopes])


@dataclass(frozen=True)
class Link:
    """A body point and an upright point keep their distance; the rack moves the body point along y."""

    body: np.ndarray
    place: np.ndarray
    length: np.longdouble
    steered: bool = False

    def at(self, upright, _travel, rack):
        anchor = self.body + vector(0, rack, 0) if self.steered else self.body
        reach = upright.point(self.place) - anchor
        return rows([(reach @ reach - self.length ** 2) / (2 * self.length)], [reach @ upright.point_slopes(self.place) / self.length],
                    rack=-reach[1] / self.length if self.steered else 0)


@dataclass(frozen=True)
class StrutLine:
    """The top mount lies on the line through `place` along `axis`, both of the upright."""

    mount: np.ndarray
    place: np.ndarray
    axis: np.ndarray

    def at(self, upright, _travel, _rack):
        reach = self.mount - upright.point(self.place)
        sides = across(self.axis)
        return rows([upright.direction(side) @ reach for side in sides],
                    [reach @ upright.direction_slopes(side) - upright.direction(side) @ upright.point_slopes(self.place) for side in sides])


@dataclass(frozen=True)
class Held:
    """A point of the upright stays where it is."""

    body: np.ndarray
    place: np.ndarray

    def at(self, upright, _travel, _rack):
        return rows(upright.point(self.place) - self.body, upright.point_slopes(self.place))


@dataclass(frozen=True)
class OnAxis:
    """A point of the upright stays on a line of the body."""

    body: np.ndarray
    axis: np.ndarray
    place: np.ndarray

    def at(self, upright, _travel, _rack):
        sides = across(self.axis)
        reach = upright.point(self.place) - self.body
        return rows([side @ reach for side in sides], [side @ upright.point_slopes(self.place) for side in sides])


@dataclass(frozen=True)
class Height:
    """The wheel centre stands `travel` above where it is stated."""

    def at(self, upright, travel, _rack):
        slopes = np.zeros(9, dtype=np.longdouble)
        slopes[2] = 1
        return rows([upright.centre[2] - travel], [slopes], travel=-1)


@dataclass(frozen=True)
class ToeHeld:
    """The wheel heads where it headed: stands in for the tie rod while its length is being set."""

    spin: np.ndarray
    toe_deg: float

    def at(self, upright, _travel, _rack):
        toe = np.radians(np.longdouble(self.toe_deg))
        across_heading = REACH_MM * vector(np.cos(toe), -np.sin(toe), 0)
        return rows([across_heading @ upright.direction(self.spin)], [across_heading @ upright.direction_slopes(self.spin)])


def system(constraints, upright, travel, rack):
    """Residuals (9), slopes (9 x 9), slopes by travel (9), slopes by rack (9)."""
    parts = [constraint.at(upright, travel, rack) for constraint in constraints]
    return tuple(np.concatenate(member) for member in zip(*parts))
