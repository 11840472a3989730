"""Turning about a fixed axis with scipy's Rotation, and caster and inclination fitted to readings with scipy's least_squares."""

from random import Random

import numpy as np
from scipy.optimize import brentq, least_squares
from scipy.spatial.transform import Rotation

SEED = 20261126
STEERS = [float(steer) for steer in range(-30, 31, 5)]


def axis_of(caster_deg, inclination_deg):
    along = np.array([-np.tan(np.radians(caster_deg)), -np.tan(np.radians(inclination_deg)), 1.0])
    return along / np.linalg.norm(along)


def spin_of(camber_deg, toe_deg):
    camber, toe = np.radians(camber_deg), np.radians(toe_deg)
    return np.array([np.sin(toe) * np.cos(camber), np.cos(toe) * np.cos(camber), -np.sin(camber)])


def turned(axis, spin, rotation_deg):
    return Rotation.from_rotvec(np.radians(rotation_deg) * axis).apply(spin)


def steer_deg(spin):
    return np.degrees(np.arctan2(-spin[0], spin[1]))


def rotation_for(axis, spin, steer):
    """Degrees about the axis that give this steer."""
    return brentq(lambda angle: steer_deg(turned(axis, spin, angle)) - steer, -80, 80, xtol=1e-14, rtol=1e-15)


def sweeps():
    random, answer = Random(SEED), []
    for _ in range(60):
        given = {"casterDeg": round(random.uniform(-2, 14), 2), "steeringAxisInclinationDeg": round(random.uniform(0, 18), 2),
                 "camberDeg": round(random.uniform(-5, 2), 2), "toeDeg": round(random.uniform(-1, 1), 2)}
        axis, spin = axis_of(given["casterDeg"], given["steeringAxisInclinationDeg"]), spin_of(given["camberDeg"], given["toeDeg"])
        rotations = [rotation_for(axis, spin, steer) for steer in STEERS]
        cambers = [float(-np.degrees(np.arcsin(turned(axis, spin, angle)[2]))) for angle in rotations]
        answer.append(given | {"steerDeg": STEERS, "rotationDeg": rotations, "camberOverSteerDeg": cambers})
    return answer


def camber_at(steer, caster, inclination, ahead):
    """Camber of a left wheel that stands at `ahead` when it is straight ahead: by turning it."""
    axis, spin = axis_of(caster, inclination), spin_of(ahead, 0.0)
    return -np.degrees(np.arcsin(turned(axis, spin, rotation_for(axis, spin, steer))[2]))


def residuals(angles, readings):
    return np.array([camber_at(steer, *angles) - camber for steer, camber in readings])


def slopes(angles, readings):
    """Of the residuals by the three angles: central differences of fourth order, good to about 1e-10."""
    columns = []
    for index in range(3):
        step = np.zeros(3)
        step[index] = 0.05
        near, far = (residuals(angles + k * step, readings) - residuals(angles - k * step, readings) for k in (1, 2))
        columns.append((8 * near - far) / 0.6)
    return np.column_stack(columns)


def fit(readings, gauge_error):
    found = least_squares(residuals, [4.0, 10.0, 0.0], jac=slopes, args=(readings,), xtol=1e-14, ftol=1e-15, gtol=1e-14, method="lm").x
    for _ in range(6):  # Gauss-Newton to the end
        found = found - np.linalg.lstsq(slopes(found, readings), residuals(found, readings), rcond=None)[0]
    matrix, rest = slopes(found, readings), residuals(found, readings)
    errors = gauge_error * np.sqrt(np.diag(np.linalg.inv(matrix.T @ matrix)))
    spread = float(np.sqrt(rest @ rest / (len(readings) - 3))) if len(readings) > 3 else None
    return {"casterDeg": float(found[0]), "casterStandardErrorDeg": float(errors[0]), "steeringAxisInclinationDeg": float(found[1]),
            "steeringAxisInclinationStandardErrorDeg": float(errors[1]), "straightAheadCamberDeg": float(found[2]),
            "straightAheadCamberStandardErrorDeg": float(errors[2]), "residualStandardDeviationDeg": spread}


def caster_readings():
    """Three to nine readings, left and right: a right wheel's steer has the other sign in the left wheel's model."""
    random, answer = Random(SEED + 1), []
    for number in range(30):
        side = "left" if number % 2 == 0 else "right"
        truth = (random.uniform(1, 12), random.uniform(5, 16), random.uniform(-3, 1))
        count, lock = 3 + number % 7, random.choice([15.0, 20.0, 20.0, 25.0])
        steers = [-lock + 2 * lock * place / (count - 1) + (random.uniform(-0.8, 0.8) if number % 3 else 0.0) for place in range(count)]
        sign, noise = (1 if side == "left" else -1), random.choice([0.0, 0.03, 0.08])
        readings = []
        for steer in (round(steer, 1) for steer in steers):
            camber = float(camber_at(sign * steer, *truth)) + random.gauss(0, noise)
            readings.append({"steerDeg": steer, "camberDeg": round(camber, 2) if noise else camber})
        gauge = random.choice([0.05, 0.1, 0.2])
        answer.append({"side": side, "readings": readings, "gaugeErrorDeg": gauge,
                       **fit([(sign * reading["steerDeg"], reading["camberDeg"]) for reading in readings], gauge)})
    return answer
