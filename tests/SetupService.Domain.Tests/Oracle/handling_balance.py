"""The equations of a steady turn, all of them at once, and their solution by scipy's root.

Unknowns: roll (deg), heave of the body at each axle (mm), steer (deg, or mm of rack), station of the turn's centre (m), and of each
wheel its travel (mm) and side force (kN). Turns are seen as left ones; a right turn is its mirror. Which wheels hang in the air, which
springs are slack and which stops are touched is stated before each solution (`Contact`), so that the equations are smooth, and
corrected after it until it fits. A stop pressed solid leaves no travel unknown; its force takes that place.
"""

from dataclasses import dataclass, replace
from math import asin, atan, atan2, cos, degrees, radians, sin, sqrt, tan

import numpy as np
from scipy.optimize import root

from handling_car import GRAVITY
from handling_guides import spin_of

WHEELS = [("front", 1), ("front", -1), ("rear", 1), ("rear", -1)]  # 1 the outer wheel, -1 the inner


class NoBalance(Exception):
    """No equilibrium was found from where the search stood."""


@dataclass(frozen=True)
class Contact:
    lifted: bool = False
    slack: bool = False
    on_stop: bool = False
    solid: int = 0  # 1 bump, -1 droop


@dataclass(frozen=True)
class WheelState:
    travel: float
    force: float
    load: float
    tyre_load: float
    slip: float
    heading: float
    inclination: float
    parts: dict
    suspension: float
    geometric: float
    spring: float
    stop: float
    camber_to_turn: float
    lever: float
    ahead: tuple  # movement forward, per mm of travel, of the upright's point at the contact and of the wheel centre
    tyre: object
    along: float = 0.0
    forward: float = 0.0
    used: float = 0.0


class Turn:
    """One car in one turn."""

    def __init__(self, car, left, lateral_g, radius_m, longitudinal_g=0.0):
        self.car, self.left, self.a, self.radius = car, left, lateral_g * GRAVITY, radius_m * 1000
        self.axles = {"front": car.front, "rear": car.rear}
        self.forward = longitudinal_g * GRAVITY
        reference, down_front, down_rear, drag = car.drive.air or (100.0, 0.0, 0.0, 0.0)
        blow, mass, base = self.a * radius_m / (reference / 3.6) ** 2, car.weight / GRAVITY, car.front.along - car.rear.along
        tyres, moved = mass * self.forward + blow * drag, mass * self.forward * car.height / base
        front = (car.drive.brake_front if tyres < 0 else car.drive.drive_front) / 100
        self.along = {"front": front * tyres, "rear": (1 - front) * tyres}
        self.added = {"front": blow * down_front - moved, "rear": blow * down_rear + moved}

    def wheel(self, end, side):
        axle = self.axles[end]
        return axle.right if (side > 0) == self.left else axle.left

    def demand(self, end, states):
        """Side force of an axle: its mass's, and what holds the yaw moment of unlike longitudinal forces."""
        yaw = sum((states[n].along - states[n + 1].along) * self.axles[at].track / 2 for n, at in ((0, "front"), (2, "rear")))
        by_yaw = yaw / (self.car.front.along - self.car.rear.along)
        return self.axles[end].load / GRAVITY * self.a + (-by_yaw if end == "front" else by_yaw)

    def slip(self, axle, side, heading, station):
        across = sqrt(self.radius ** 2 - station ** 2)
        return heading - degrees(atan2(axle.along - station, across + side * axle.track / 2))

    def stop_limits(self, axle):
        """Travel at the stop's touch, where it is solid, and where the wheel hangs on the droop stop."""
        touch = axle.bump
        solid = None if touch is None or not axle.stop_length else touch + axle.stop_length / axle.damper_ratio
        return touch, solid, None if axle.rebound is None else -axle.rebound

    def states(self, u, contacts):
        """What the unknowns say of the four wheels."""
        roll, heave, steer, station = radians(u[0]), {"front": u[1], "rear": u[2]}, u[3], 1000 * u[4]
        travels = {}
        for n, (end, side) in enumerate(WHEELS):
            touch, solid, droop = self.stop_limits(self.axles[end])
            travels[end, side] = {0: u[5 + n], 1: solid, -1: droop}[contacts[n].solid]
        answer = []
        for n, (end, side) in enumerate(WHEELS):
            axle, wheel, contact = self.axles[end], self.wheel(end, side), contacts[n]
            travel, force = travels[end, side], 1000 * u[9 + n]
            guide = wheel.guide
            turned = 0.0 if end == "rear" else (-side if guide.has_points else side) * steer
            place = guide.at(travel, turned)
            if guide.has_points:
                rise = heave[end] + place.rise * cos(roll) - side * place.half * sin(roll)
                lean, lever = side * roll, place.up * (cos(roll) - side * place.slope * sin(roll))
            else:
                # The stated roll centre stays where it is stated while the body rolls, as the textbook form has it.
                rise, lean, lever = travel + heave[end] - side * axle.track / 2 * sin(roll), 0.0, 1.0
            tyre_load = wheel.load - axle.tyre_rate * rise
            load = 0.0 if contact.lifted else tyre_load
            unsprung_weight = axle.unsprung * GRAVITY
            ratio_rest, up_rest = (guide.rest["ratio"], guide.rest["up"]) if guide.has_points else (guide.ratio, 1.0)
            spring = (wheel.load - unsprung_weight) * up_rest / ratio_rest + axle.spring_rate * place.shortened
            other = travels[end, -side]
            bar = axle.bar * 1000 / axle.track * degrees((travel - other) / axle.track)
            touch, _, _ = self.stop_limits(axle)
            stop = axle.stop_rate * axle.damper_ratio ** 2 * (travel - touch) if contact.on_stop else 0.0
            if contact.solid:
                stop += 1000 * u[5 + n]
            suspension = (0.0 if contact.slack else spring) * place.ratio + bar + stop
            geometric = tan(atan(place.slope) + lean) * (force - axle.unsprung * self.a)
            leaned = side * axle.camber_compliance * force / 1000
            toe = place.toe - side * axle.toe_compliance * force / 1000
            spin = spin_of(place.camber + leaned, toe)
            inclination = -degrees(asin(spin[2] * cos(roll) - side * spin[1] * sin(roll)))
            parts = {"static": wheel.static_camber, "kinematic": place.unsteered - wheel.static_camber, "roll": inclination - place.camber - leaned,
                     "steer": place.camber - place.unsteered, "compliance": leaned}
            heading = side * toe
            answer.append(WheelState(travel, force, load, tyre_load, self.slip(axle, side, heading, station), heading, inclination, parts,
                                     suspension / lever, geometric, spring, stop, -side * inclination, lever, (place.contact_ahead, place.centre_ahead), axle.tyre))
        return [state for n in (0, 2) for state in self.driven(WHEELS[n][0], answer[n:n + 2])]

    def driven(self, end, pair):
        """The two wheels of an axle with their longitudinal forces: braked at the upright, driven through half-shafts."""
        axle, force = self.axles[end], self.along[end]
        shares, used = self.car.drive.shared(force, [axle.tyre.along(state.load) for state in pair]) if force else ((0.0, 0.0), 0.0)
        return [replace(state, along=along, used=used, tyre=axle.tyre.beside(along, state.load) if along and state.load > 0 else axle.tyre,
                        forward=-(along * state.ahead[0 if along < 0 else 1] - axle.unsprung * self.forward * state.ahead[1]) / state.lever)
                for state, along in zip(pair, shares)]

    def residuals(self, u, contacts):
        states = self.states(u, contacts)
        answer = []
        for (end, side), state in zip(WHEELS, states):
            axle = self.axles[end]
            carried = axle.unsprung * GRAVITY + side * 2 * axle.unsprung * axle.radius * self.a / axle.track
            answer.append((state.load - carried - state.suspension - side * state.geometric - state.forward) / 1000)
            answer.append((state.force - (state.tyre.force(state.slip, state.load, state.camber_to_turn) if state.load > 0 else 0.0)) / 1000)
        moment = 0.0
        for n, end in ((0, "front"), (2, "rear")):
            outer, inner, axle = states[n], states[n + 1], self.axles[end]
            answer.append((outer.load + inner.load - axle.load - self.added[end]) / 1000)
            answer.append((outer.force + inner.force - self.demand(end, states)) / 1000)
            moment += self.moved(end, outer, inner) * axle.track - 2 * axle.unsprung * axle.radius * self.a
        mass, height, share, arm = self.car.sprung
        roll, lift = radians(u[0]), share * u[1] + (1 - share) * u[2]
        moment -= mass * self.a * (height + lift - arm * (1 - cos(roll))) + mass * GRAVITY * arm * sin(roll)
        return np.array(answer + [moment / 1e6])

    def moved(self, end, outer, inner):
        """Load that has gone from the inner wheel to the outer one."""
        rest = self.wheel(end, 1).load - self.wheel(end, -1).load
        return (outer.load - inner.load - rest) / 2

    def fitting(self, u, contacts):
        """The contacts that the solution calls for."""
        answer = []
        for n, (state, (end, _)) in enumerate(zip(self.states(u, contacts), WHEELS)):
            touch, solid, droop = self.stop_limits(self.axles[end])
            was = contacts[n]
            pressed = was.solid
            if pressed and u[5 + n] * pressed < 0:
                pressed = 0
            elif not pressed:
                pressed = 1 if solid is not None and state.travel > solid else -1 if droop is not None and state.travel < droop else 0
            lifted, slack = state.tyre_load < 0, state.spring < 0
            if lifted and slack and droop is not None:  # nothing else holds it
                pressed = -1
            answer.append(Contact(lifted, slack, touch is not None and state.travel > touch, pressed))
        return tuple(answer)


def slopes(function, u):
    """Central differences, fine enough to polish with."""
    columns = []
    for n in range(len(u)):
        step = 1e-5 * max(1.0, abs(u[n]))
        up, down = u.copy(), u.copy()
        up[n] += step
        down[n] -= step
        columns.append((function(up) - function(down)) / (2 * step))
    return np.column_stack(columns)


def solved(turn, start, contacts):
    """The solution for these contacts nearest to `start`."""
    def function(u):
        return turn.residuals(u, contacts)

    try:
        found = root(function, start, method="hybr", options={"xtol": 1e-13, "maxfev": 1000}).x
        best = found
        for _ in range(12):
            if np.abs(function(found)).max() < 1e-13:
                break
            found = found - np.linalg.solve(slopes(function, found), function(found))
            if np.abs(function(found)).max() < np.abs(function(best)).max():
                best = found
    except (ValueError, np.linalg.LinAlgError) as fault:
        raise NoBalance(str(fault)) from fault
    if np.abs(function(best)).max() > 1e-10:
        raise NoBalance(f"residual {np.abs(function(best)).max():g} kN")
    return best


def balanced(turn, start, contacts):
    """Solve, correct the contacts, solve again."""
    for _ in range(24):
        u = solved(turn, start, contacts)
        fit = turn.fitting(u, contacts)
        if fit == contacts:
            return u, contacts
        start = u.copy()
        for n, (before, after) in enumerate(zip(contacts, fit)):
            if before.solid != after.solid:
                end, _ = WHEELS[n]
                _, solid, droop = turn.stop_limits(turn.axles[end])
                start[5 + n] = 0.0 if after.solid else {1: solid, -1: droop}[before.solid]
        contacts = fit
    raise NoBalance("contacts do not settle")
