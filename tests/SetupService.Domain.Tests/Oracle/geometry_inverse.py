"""Targets of camber and caster: the least movement that meets them within the limits, or the nearest that the limits allow.

SciPy's SLSQP finds which limits are touched; the conditions of optimality with those held are then solved exactly. Movements are
weighed in mm, a degree of hub shim as 5 mm.
"""

import numpy as np
from scipy.optimize import minimize, root

from geometry_adjusters import stand
from geometry_outputs import Position
from geometry_solver import Walk

SHIM_MM_PER_DEG, SLOPE_STEP = 5.0, 0.05


class Question:
    """Adjusters with limits, targets in degrees, the toe reset or not, and the gap of the tyre's top to the arch, mm."""

    def __init__(self, corner, adjusters, targets, reset_toe=False, arch_gap=None):
        self.corner, self.adjusters, self.targets, self.reset_toe, self.arch_gap = corner, adjusters, targets, reset_toe, arch_gap
        self.scale = np.array([SHIM_MM_PER_DEG if "Shim" in a["adjuster"] else 1.0 for a in adjusters])
        self.low, self.high = (np.array([a[name] for a in adjusters]) * self.scale for name in ("minimum", "maximum"))
        stated = Walk(corner)
        self.state, self.top = stated.at(0.0), Position(corner, stated, 0.0, 0.0).top[1]

        self.known = {}

    def at(self, weighed):
        if tuple(weighed) not in self.known:
            self.known[tuple(weighed)] = self.solved(weighed)
        return self.known[tuple(weighed)]

    def solved(self, weighed):
        turns = [{**a, "amount": value} for a, value in zip(self.adjusters, np.asarray(weighed) / self.scale)]
        standing, _ = stand(self.corner, turns, self.reset_toe, self.state, steps=1 if np.abs(weighed).max() < 3 else 2)
        return standing.position

    def angles(self, position):
        place_along = position.axis()
        caster = None if place_along is None else float(np.degrees(np.arctan2(-place_along[1][0], place_along[1][2])))
        return {"camberDeg": float(position.camber_deg), "casterDeg": caster}

    def errors(self, weighed):
        reached = self.angles(self.at(weighed))
        return np.array([reached[name] - value for name, value in self.targets.items()])

    def room(self, weighed):
        """What is left of the arch gap."""
        return float(self.arch_gap - (self.at(weighed).top[1] - self.top))

    def slopes(self, function, weighed, free):
        """By the movements that are free: central differences of fourth order."""
        columns = []
        for index in free:
            step = np.zeros(len(weighed))
            step[index] = SLOPE_STEP
            near, far = (np.atleast_1d(function(weighed + k * step)) - np.atleast_1d(function(weighed - k * step)) for k in (1, 2))
            columns.append((8 * near - far) / (12 * SLOPE_STEP))
        return np.column_stack(columns)


def first_guess(question, reachable):
    """SLSQP on the movement (targets as equations) or on the errors."""
    everything, limits = range(len(question.low)), list(zip(question.low, question.high))
    held = [] if question.arch_gap is None else [
        {"type": "ineq", "fun": question.room, "jac": lambda w: question.slopes(question.room, w, everything)[0]}]
    start = np.clip(np.zeros(len(limits)), question.low, question.high)

    def slopes(w):
        return question.slopes(question.errors, w, everything)

    if reachable:
        held.append({"type": "eq", "fun": question.errors, "jac": slopes})
        return minimize(lambda w: w @ w, start, jac=lambda w: 2 * w, method="SLSQP", bounds=limits, constraints=held,
                        options={"ftol": 1e-10, "maxiter": 60}).x
    return minimize(lambda w: (question.errors(w) ** 2).sum(), start, jac=lambda w: 2 * slopes(w).T @ question.errors(w), method="SLSQP",
                    bounds=limits, constraints=held, options={"ftol": 1e-14, "maxiter": 100}).x


def finish(question, guess, reachable):
    """Limits that are touched are held; the rest meets the conditions of optimality exactly."""
    weighed = guess.copy()
    low, high = np.abs(weighed - question.low) < 1e-4, np.abs(weighed - question.high) < 1e-4
    weighed[low], weighed[high] = question.low[low], question.high[high]
    free = np.flatnonzero(~(low | high))
    arch = question.arch_gap is not None and question.room(weighed) < 1e-5
    touched = [question.adjusters[index]["adjuster"] for index in np.flatnonzero(low | high)] + ["archGap"] * arch
    if len(free) == 0:
        return weighed, touched

    def met(w):
        return np.concatenate([question.errors(w) if reachable else [], [question.room(w)] if arch else []])

    count = len(met(weighed))

    def conditions(unknown):
        w = weighed.copy()
        w[free] = unknown[:len(free)]
        wanted = w[free] if reachable else question.slopes(question.errors, w, free).T @ question.errors(w)
        if count:
            wanted = wanted + question.slopes(met, w, free).T @ unknown[len(free):]
        return np.concatenate([wanted, met(w)])

    def plain(values):
        w = weighed.copy()
        w[free] = values
        return met(w)

    found = root(plain, weighed[free], tol=1e-13) if count == len(free) else root(
        conditions, np.concatenate([weighed[free], np.zeros(count)]), tol=1e-13)
    weighed[free] = found.x[:len(free)]
    if np.abs(found.fun).max() > 1e-9:
        raise ValueError(f"not finished: {found.fun}")
    return weighed, touched


def answer(name, corner_name, corner, adjusters, targets, **more):
    question = Question(corner, adjusters, targets, more.get("resetToe", False), more.get("archGapMm"))
    guess = first_guess(question, True)
    reachable = bool(np.abs(question.errors(guess)).max() < 1e-5) and (question.arch_gap is None or question.room(guess) > -1e-5)
    weighed, touched = finish(question, guess if reachable else first_guess(question, False), reachable)
    inside = np.all(weighed >= question.low - 1e-9) and np.all(weighed <= question.high + 1e-9)
    if not inside or (question.arch_gap is not None and question.room(weighed) < -1e-9):
        raise ValueError(f"{name}: outside its limits")
    return {"name": name, "corner": corner_name, "adjusters": adjusters, "targets": targets, **more, "met": reachable,
            "amounts": [float(value) for value in weighed / question.scale], "reached": question.angles(question.at(weighed)),
            "atLimit": touched}
