"""The posterior of a smooth curve given readings, from the covariance of a Gaussian process, in decimals of 60 digits.

Nothing is filtered or smoothed here: the prior is written as a covariance, the readings' matrix is factored whole, and level and slope,
of which nothing is known beforehand, are eliminated by generalised least squares (restricted likelihood). The prior: at the middle of the
readings the second derivative is normal about zero; away from there, either way, it is a Wiener process.
"""

from decimal import Decimal, getcontext

getcontext().prec = 60

CAMBER = (Decimal("4e-4"), Decimal("1e-9"))
TOE = (Decimal("4e-4"), Decimal("4e-9"))
DRIFTS = 9
STEP = Decimal(10)
STEP_SHARE = Decimal("0.003")
HALF, ONE, ZERO = Decimal("0.5"), Decimal(1), Decimal(0)


def wiener(s, t, drift, by_s=0, by_t=0):
    """Covariance of the parts of value (order 0) or slope (order 1) that the second derivative's drift makes, at s and t from the middle."""
    if s * t <= 0:
        return ZERO
    a, b = abs(s), abs(t)
    end = min(a, b)
    factor = drift * (1 if s > 0 else -1) ** (by_s + by_t)

    # The integral of (a - v)^p (b - v)^q / (p! q!) from 0 to end; with v = end - w a polynomial in w.
    p, q = 2 - by_s, 2 - by_t
    left, right = expanded(a - end, p), expanded(b - end, q)
    total = ZERO
    for i, x in enumerate(left):
        for k, y in enumerate(right):
            total += x * y * end ** (i + k + 1) / (i + k + 1)
    return factor * total / ((2 if p == 2 else 1) * (2 if q == 2 else 1))


def expanded(constant, power):
    """Coefficients of (constant + w)^power in w."""
    return [constant, ONE] if power == 1 else [constant * constant, 2 * constant, ONE]


def bend(s, order):
    """How the second derivative at the middle shows in value or slope."""
    return s * s / 2 if order == 0 else s


def prior_covariance(s, t, curvature, drift, by_s=0, by_t=0):
    """Of everything but the open level and slope. Some level and slope are in it too, which changes nothing where both are open, and
    without which the covariance of a place at the middle would be none."""
    trend = (ONE if by_s == by_t == 0 else ZERO) + (s if by_s == 0 else ONE) * (t if by_t == 0 else ONE) / 10 ** 4
    return trend + curvature ** 2 * bend(s, by_s) * bend(t, by_t) + wiener(s, t, drift, by_s, by_t)


def factored(matrix):
    """Lower triangle of Cholesky's factor."""
    n = len(matrix)
    lower = [[ZERO] * n for _ in range(n)]
    for i in range(n):
        for k in range(i + 1):
            rest = matrix[i][k] - sum((lower[i][j] * lower[k][j] for j in range(k)), ZERO)
            lower[i][k] = rest.sqrt() if i == k else rest / lower[k][k]
    return lower


def forward(lower, right):
    """L^-1 right."""
    solved = []
    for i, row in enumerate(lower):
        solved.append((right[i] - sum((row[k] * solved[k] for k in range(i)), ZERO)) / row[i])
    return solved


def dot(a, b):
    return sum((x * y for x, y in zip(a, b)), ZERO)


class Component:
    """The posterior at one drift."""

    def __init__(self, places, values, variances, curvature, drift):
        self.places, self.curvature, self.drift = places, curvature, drift
        n = len(places)
        matrix = [[prior_covariance(s, t, curvature, drift) for t in places] for s in places]
        for i in range(n):
            matrix[i][i] += variances[i]
        self.lower = factored(matrix)
        self.values = forward(self.lower, values)
        self.basis = [forward(self.lower, [ONE] * n), forward(self.lower, places)]
        gram = [[dot(a, b) for b in self.basis] for a in self.basis]
        self.gram = factored(gram)
        right = [dot(a, self.values) for a in self.basis]
        self.half = forward(self.gram, right)
        second = self.half[1] / self.gram[1][1]
        self.trend = [(self.half[0] - self.gram[1][0] * second) / self.gram[0][0], second]
        logs = sum((self.lower[i][i].ln() for i in range(n)), ZERO) + self.gram[0][0].ln() + self.gram[1][1].ln()
        self.log_likelihood = -logs - HALF * (dot(self.values, self.values) - dot(self.half, self.half))

    def at(self, place, order):
        """Mean and variance of the value (order 0) or the slope (order 1)."""
        seen = forward(self.lower, [prior_covariance(place, t, self.curvature, self.drift, order) for t in self.places])
        own = prior_covariance(place, place, self.curvature, self.drift, order, order)
        here = [ONE, place] if order == 0 else [ZERO, ONE]
        residual = [value - self.trend[0] * a - self.trend[1] * b for value, a, b in zip(self.values, *self.basis)]
        mean = here[0] * self.trend[0] + here[1] * self.trend[1] + dot(seen, residual)
        left = forward(self.gram, [here[0] - dot(self.basis[0], seen), here[1] - dot(self.basis[1], seen)])
        return mean, own - dot(seen, seen) + dot(left, left)


class Curve:
    """Readings of places, values and one standard error; the mixture over the drifts."""

    def __init__(self, places, values, error, prior=CAMBER):
        gathered = {}
        for place, value in zip(places, values):
            gathered.setdefault(Decimal(repr(float(place))), []).append(Decimal(repr(float(value))))
        self.first, self.last = min(gathered), max(gathered)
        self.middle = (self.first + self.last) / 2
        ordered = sorted(gathered)
        means = [sum(gathered[place], ZERO) / len(gathered[place]) for place in ordered]
        variances = [Decimal(repr(float(error))) ** 2 / len(gathered[place]) for place in ordered]
        self.components = []
        for step in range(DRIFTS):
            component = Component([place - self.middle for place in ordered], means, variances, prior[0], prior[1] * STEP ** step)
            self.components.append((component.log_likelihood + step * STEP_SHARE.ln(), component))
        most = max(log for log, _ in self.components)
        weights = [(log - most).exp() for log, _ in self.components]
        total = sum(weights, ZERO)
        self.components = [(weight / total, component) for weight, (_, component) in zip(weights, self.components) if weight / total > Decimal("1e-12")]

    def at(self, place, order=0):
        """Mean and standard deviation."""
        place = Decimal(repr(float(place))) - self.middle
        found = [(weight, *component.at(place, order)) for weight, component in self.components]
        mean = sum((weight * one for weight, one, _ in found), ZERO)
        variance = sum((weight * (own + (one - mean) ** 2) for weight, one, own in found), ZERO)
        return float(mean), float(max(variance, ZERO).sqrt())
