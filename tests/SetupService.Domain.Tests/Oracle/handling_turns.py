"""From standstill to the turn asked for; what of its grip each axle uses there, and where it uses all; the figures of the answer."""

from dataclasses import replace
from math import atan2, degrees, sqrt

import numpy as np

from handling_balance import WHEELS, Contact, NoBalance, Turn, balanced
from handling_tyre import MOST_USED, axle_peak

STEP_G, DIFFERENCE_G = 0.1, 2e-3


def raised(car, by):
    """The car whose axles' peaks are raised by these factors."""
    return replace(car, **{end: replace(getattr(car, end), tyre=replace(getattr(car, end).tyre, raised=by[end])) for end in by})


def start_of(car, radius_m):
    """Straight ahead at walking pace: no roll, the rear axle square to the radius."""
    steer = degrees((car.front.along - car.rear.along) / (1000 * radius_m))
    if car.front.left.guide.has_points:
        guide = car.front.left.guide
        steer = steer / ((guide.at(0.0, -0.5).toe - guide.at(0.0, 0.5).toe))
    return np.array([0.0, 0.0, 0.0, steer, car.rear.along / 1000] + 8 * [0.0])


class Search:
    """Follows one car's equilibrium over lateral acceleration."""

    def __init__(self, car, left, radius_m, longitudinal_g=0.0):
        self.car, self.left, self.radius_m, self.longitudinal_g = car, left, radius_m, longitudinal_g

    def turn(self, lateral_g):
        return Turn(self.car, self.left, lateral_g, self.radius_m, self.longitudinal_g)

    def climb(self, lateral_g):
        """By steps, halved where one fails."""
        u, contacts = balanced(self.turn(0.0), start_of(self.car, self.radius_m), (Contact(),) * 4)
        reached, step = 0.0, STEP_G
        while reached < lateral_g:
            aim = min(lateral_g, reached + step)
            try:
                u, contacts = balanced(self.turn(aim), u, contacts)
                reached, step = aim, min(STEP_G, 2 * step)
            except NoBalance:
                step /= 2
                if step < 1e-4:
                    raise
        return u, contacts


def used(turn, states):
    """What each axle needs of the most its tyres, as they are, give together."""
    answer = {}
    for n, end in ((0, "front"), (2, "rear")):
        raised = turn.axles[end].tyre.raised
        wheels = [(replace(s.tyre, raised=s.tyre.raised / raised), s.slip, s.load, s.camber_to_turn) for s in states[n:n + 2] if s.load > 0]
        answer[end] = turn.demand(end, states) / axle_peak(wheels)
    return answer


def past_the_peak(turn, states):
    """Whether an axle slips beyond its peak, where the same force is found a second time."""
    for n, end in ((0, "front"), (2, "rear")):
        wheels = [s for s in states[n:n + 2] if s.load > 0]
        at, further = (sum(s.tyre.force(s.slip + more, s.load, s.camber_to_turn) for s in wheels) for more in (0.0, 0.01))
        if further < at:
            return True
    return False


def settled(car, left, lateral_g, radius_m, start=None, longitudinal_g=0.0):
    """Equilibrium, its contacts and what each axle uses; an axle that needs more than 0.99 of its grip has its peak raised to that."""
    by, solved_with = {end: 1.2 + lateral_g for end in ("front", "rear")} if start is None else start[3], None
    for _ in range(200):
        search = Search(raised(car, by), left, radius_m, longitudinal_g)
        try:
            if solved_with is not None:
                u, contacts = balanced(search.turn(lateral_g), u, contacts)
            else:
                u, contacts = search.climb(lateral_g) if start is None else balanced(search.turn(lateral_g), *start[1:3])
        except NoBalance:
            if solved_with is None or max(abs(by[end] - solved_with[end]) for end in by) < 1e-6:
                raise
            by = {end: (by[end] + solved_with[end]) / 2 for end in by}  # so much less grip at once leads away from the solution: go half as far
            continue
        turn = search.turn(lateral_g)
        if abs(u[0]) > 60 or past_the_peak(turn, turn.states(u, contacts)):
            raise NoBalance("another solution than the car's")
        solved_with = by
        needs = used(turn, turn.states(u, contacts))
        wanted = {end: max(1.0, needs[end] / MOST_USED) for end in needs}
        if max(abs(wanted[end] - by[end]) for end in by) < 1e-12:
            return search, u, contacts, by, needs
        by = wanted
    raise NoBalance("the grip does not settle")


def grip_limit(car, left, radius_m, end, start_g, longitudinal_g=0.0):
    """The lateral acceleration at which an axle needs all its tyres have: where what they hold, a / used, is a; checked by the way from standstill."""
    for warm in (True, False):
        try:
            g = seek_limit(car, left, radius_m, end, start_g, warm, longitudinal_g)
        except NoBalance:
            continue
        if abs(settled(car, left, g, radius_m, longitudinal_g=longitudinal_g)[4][end] - 1) < 1e-8:
            return g
    raise NoBalance("the limit is not found")


def seek_limit(car, left, radius_m, end, start_g, warm, longitudinal_g=0.0):
    """By secants, each turn solved from the last one (warm) or from standstill."""
    answer = settled(car, left, start_g, radius_m, longitudinal_g=longitudinal_g)
    points = [(start_g, start_g / answer[4][end])]
    g = points[0][1]
    for _ in range(30):
        try:
            answer = settled(car, left, g, radius_m, answer if warm else None, longitudinal_g)
        except NoBalance:
            if abs(g - points[-1][0]) < 1e-3:
                raise
            g = (g + points[-1][0]) / 2  # too far at once: where the secant leads there is no equilibrium
            continue
        points.append((g, g / answer[4][end]))
        (g0, held0), (g1, held1) = points[-2:]
        if abs(held1 - g1) < 1e-11:
            return g1
        g = g1 - (held1 - g1) * (g1 - g0) / ((held1 - g1) - (held0 - g0))
    raise NoBalance("the limit is not found")


def axle_slips(turn, u, steer):
    """Slip of each axle's middle: its heading less the direction it moves in."""
    station = 1000 * u[4]
    across = sqrt(turn.radius ** 2 - station ** 2)
    return [head - degrees(atan2(axle.along - station, across)) for head, axle in ((steer, turn.car.front), (0.0, turn.car.rear))]


def understeer(turn, u, contacts, middle):
    """Front slip less rear slip, degrees: of the axles' middles, or the mean of the wheels'."""
    states = turn.states(u, contacts)
    if not middle:
        return (states[0].slip + states[1].slip - states[2].slip - states[3].slip) / 2
    steer = u[3]
    if turn.car.front.left.guide.has_points:  # the steering alone: both wheels at rest height, toe taken off
        places = [turn.wheel("front", side).guide for side in (1, -1)]
        steer = sum(side * (guide.at(0.0, -side * u[3]).toe - guide.at(0.0, 0.0).toe) for side, guide in zip((1, -1), places)) / 2
    front, rear = axle_slips(turn, u, steer)
    return front - rear


def gradient(search, u, contacts, lateral_g, middle):
    """Degrees per g with the radius held, and what the peaks are raised by: differences at two widths, extrapolated."""
    def across(width):
        values = []
        for g in (lateral_g - width, lateral_g + width):
            turn = search.turn(g)
            values.append(understeer(turn, *balanced(turn, u, contacts), middle))
        return (values[1] - values[0]) / (2 * width)

    return (4 * across(DIFFERENCE_G / 2) - across(DIFFERENCE_G)) / 3


def names(left):
    return {(end, side): end + ("Right" if (side > 0) == left else "Left") for end, side in WHEELS}


def answer(car, left, lateral_g, radius_m, longitudinal_g=0.0):
    search, u, contacts, _, needs = settled(car, left, lateral_g, radius_m, longitudinal_g=longitudinal_g)
    turn, called, to_left = search.turn(lateral_g), names(left), 1 if left else -1
    states = dict(zip(WHEELS, turn.states(u, contacts)))
    wheels = {called[key]: {
        "loadN": s.load, "travelMm": s.travel, "sideForceN": s.force, "slipDeg": s.slip, "steerDeg": to_left * s.heading,
        "inclinationDeg": s.inclination, "contributions": s.parts, "isLifted": contacts[n].lifted, "isOnBumpStop": contacts[n].on_stop,
        "stopForceN": s.stop} for n, (key, s) in enumerate(states.items())}
    axles, total = {}, 0.0
    for end in ("front", "rear"):
        axle, outer, inner = turn.axles[end], states[end, 1], states[end, -1]
        moved, unsprung = turn.moved(end, outer, inner), 2 * axle.unsprung * axle.radius * turn.a / axle.track
        geometric = (outer.geometric + inner.geometric) / 2
        axles[end] = {"loadTransferN": moved, "unsprungN": unsprung, "geometricN": geometric, "elasticN": moved - unsprung - geometric,
                      "rollCentreHeightMm": axle.roll_centre, "trackMm": axle.track, "heaveMm": u[1] if end == "front" else u[2]}
        total += moved
    for end in axles:
        axles[end]["gripUsed"] = needs[end]
    steer = {"rackMm": to_left * u[3]} if car.front.left.guide.has_points else {"steerDeg": to_left * u[3]}
    errors = [turn.wheel(end, side).guide.error(s.travel, 0.0 if end == "rear" else -side * u[3])
              for (end, side), s in states.items() if turn.wheel(end, side).guide.has_points]
    return {"rollDeg": u[0], **steer, "turnCentreMm": 1000 * u[4], "wheels": wheels, "axles": axles,
            "balance": {"frontLoadTransferPct": 100 * axles["front"]["loadTransferN"] / total,
                        "understeerDegPerG": gradient(search, u, contacts, lateral_g, True),
                        "wheelSlipUndersteerDegPerG": gradient(search, u, contacts, lateral_g, False)},
            "residual": float(np.abs(turn.residuals(u, contacts)).max()), "guideError": max(errors, default=0.0)}


def last_g(car, left, radius_m):
    """Lateral acceleration at which the last inner wheel leaves the ground, whatever the tyres hold."""
    def inner_load(g):
        search, u, contacts, _, _ = settled(car, left, g, radius_m)
        states = search.turn(g).states(u, contacts)
        return max(states[1].tyre_load, states[3].tyre_load)

    low, high = 0.3, 0.3
    while True:
        try:
            if inner_load(high) < 0:
                break
            low = high
        except NoBalance:
            break
        high += 0.05
    while high - low > 1e-9:
        middle = (low + high) / 2
        try:
            above = inner_load(middle) < 0
        except NoBalance:
            above = True
        low, high = (low, middle) if above else (middle, high)
    return low
