"""How a wheel is guided: figures over travel and steer, in the wheel's own mirrored axes (y outboard, toe-in positive).

A car without points has a straight camber line and an exact turn about the stated steering axis. A car with points is sampled from
the corner solver beside this file; between the samples stands a Chebyshev polynomial over travel and rack, whose error is checked
against the solver at every answer.
"""

import json
from dataclasses import dataclass
from functools import lru_cache
from math import acos, asin, atan2, cos, degrees, hypot, radians, sin, tan

import numpy as np
from numpy.polynomial import chebyshev

from geometry_corner import read_corner
from geometry_outputs import Position, unit_figures
from geometry_solver import Walk

TRAVELS, RACKS, TRAVEL_DEGREE, RACK_DEGREE = 80.0, 30.0, 18, 12


@dataclass(frozen=True)
class Place:
    """One wheel at a travel and steer. `rise` and `half` place its contact; `up` and `slope` are the velocity of the upright's point
    there per mm of travel: upward, and sideways over upward. `shortened` is how much the spring has been compressed."""

    camber: float
    unsteered: float
    toe: float
    rise: float
    half: float
    up: float
    slope: float
    shortened: float
    ratio: float
    contact_ahead: float = 0.0  # movement forward per mm of travel: of the upright's point at the contact
    centre_ahead: float = 0.0  # of the wheel centre


def spin_of(camber, toe):
    c, t = radians(camber), radians(toe)
    return np.array([sin(t) * cos(c), cos(t) * cos(c), -sin(c)])


def camber_when_steered(camber, caster, inclination, toe_in):
    """Camber after the wheel, heading straight, has been turned about its axis until it heads `toe_in`."""
    axis = np.array([-tan(radians(caster)), -tan(radians(inclination)), 1.0])
    axis /= np.linalg.norm(axis)
    spin, head = spin_of(camber, 0.0), radians(toe_in)
    along = axis * (axis @ spin)
    parts = [along, spin - along, np.cross(axis, spin)]  # Rodrigues: constant, cosine, sine
    level, cosine, sine = (part[0] * cos(head) - part[1] * sin(head) for part in parts)
    size, phase = hypot(cosine, sine), atan2(sine, cosine)
    swing = acos(-level / size)
    turn = min((phase + swing, phase - swing), key=lambda angle: abs(atan2(sin(angle), cos(angle))))
    turned = parts[0] + parts[1] * cos(turn) + parts[2] * sin(turn)
    return -degrees(asin(turned[2]))


@dataclass(frozen=True)
class StraightGuide:
    """`steer` is how far the wheel is turned towards the car's middle, degrees."""

    camber: float
    toe: float
    caster: float
    inclination: float
    swing_arm: float
    slope: float
    ratio: float
    has_points = False

    def at(self, travel, steer):
        unsteered = self.camber - degrees(travel / self.swing_arm)
        camber = camber_when_steered(unsteered, self.caster, self.inclination, steer) if steer else unsteered
        return Place(camber, unsteered, self.toe + steer, travel, 0.0, 1.0, self.slope, self.ratio * travel, self.ratio)


FIGURES = ("camber", "toe", "rise", "half", "up", "across", "length", "ratio", "contact_ahead", "centre_ahead")


class PointGuide:
    """`steer` is the rack's travel seen from a left wheel (a right one is its mirror)."""

    has_points = True

    def __init__(self, request, ratio, steered):
        self.corner = read_corner(request)
        self.walk = Walk(self.corner)
        self.stated_ratio, self.steered = ratio, steered
        self.rest = self.solved(0.0, 0.0)
        travels = TRAVELS * chebyshev.chebpts1(TRAVEL_DEGREE + 1)
        racks = RACKS * chebyshev.chebpts1(RACK_DEGREE + 1) if steered else np.zeros(1)
        samples = np.array([[[self.solved(t, r)[name] for name in FIGURES] for r in racks] for t in travels])
        across = chebyshev.chebvander(travels / TRAVELS, TRAVEL_DEGREE)
        along = chebyshev.chebvander(racks / RACKS, len(racks) - 1)
        self.series = {name: np.linalg.solve(across, samples[:, :, n]) @ np.linalg.inv(along).T for n, name in enumerate(FIGURES)}
        self.slope = self.rest["across"] / self.rest["up"]
        self.half = self.rest["half"]

    def solved(self, travel, rack):
        position = Position(self.corner, self.walk, float(travel), float(rack))
        velocity, contact = position.velocity(position.contact), position.contact + self.corner.origin
        spring = unit_figures(position, "spring")
        sprung = spring["springLengthMm"] is not None
        return {name: float(value) for name, value in zip(FIGURES, (
            position.camber_deg, position.toe_deg, position.contact[2] + self.corner.request["loadedRadiusMm"] * self.tilt, contact[1],
            velocity[2], velocity[1], spring["springLengthMm"] if sprung else -self.stated_ratio * travel,
            spring["springMotionRatio"] if sprung else self.stated_ratio, velocity[0], position.by_travel[0]))}

    @property
    def tilt(self):
        """The contact stands this share of the radius under the wheel centre at rest."""
        return np.sqrt(1 - self.corner.frame[0][2] ** 2)

    def read(self, travel, rack):
        return {name: float(chebyshev.chebval2d(travel / TRAVELS, rack / RACKS, series)) for name, series in self.series.items()}

    def at(self, travel, steer):
        if abs(travel) > TRAVELS or abs(steer) > RACKS:
            raise ValueError(f"not sampled: travel {travel:g}, rack {steer:g}")
        now = self.read(travel, steer)
        unsteered = self.read(travel, 0.0)["camber"] if steer else now["camber"]
        return Place(now["camber"], unsteered, now["toe"], now["rise"], now["half"], now["up"], now["across"] / now["up"],
                     self.rest["length"] - now["length"], now["ratio"], now["contact_ahead"], now["centre_ahead"])

    def error(self, travel, steer):
        """Largest error of the polynomial there."""
        now, exact = self.read(travel, steer), self.solved(travel, steer)
        return max(abs(now[name] - exact[name]) for name in FIGURES)


@lru_cache(maxsize=None)
def point_guide(key, ratio, steered):
    return PointGuide(json.loads(key), ratio, steered)
