using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// Value, slope and second derivative of a curve at each of a row of places, from what was observed there, where the second
/// derivative is a Wiener process: the Kalman filter forward, and de Jong's smoother backward, which divides by nothing but the
/// variances of the innovations; the first state, of which nothing is known, is found by generalised least squares (P. de Jong, The
/// diffuse Kalman filter, 1991, and J. Durbin and S. J. Koopman, Time Series Analysis by State Space Methods, chapters 4 and 5, both
/// from memory). Time in proportion to the places.
/// </summary>
/// <param name="places">Ascending.</param>
/// <param name="values">What was observed at each.</param>
/// <param name="components">Which member of the state was observed at each: 0 the value, 2 the second derivative.</param>
internal sealed class StateSmoother(double[] places, double[] values, byte[] components)
{
    private readonly double[] _state = new double[3 * places.Length];
    private readonly double[] _covariance = new double[6 * places.Length];
    private readonly double[] _innovation = new double[places.Length];
    private readonly double[] _innovationVariance = new double[places.Length];

    // How the state and the innovation at each place answer to each member of the first state: columns of three, and threes.
    private readonly double[] _response = new double[9 * places.Length];
    private readonly double[] _innovationResponse = new double[3 * places.Length];

    // The first state, and the covariance of what is not known of it.
    private readonly double[] _first = new double[3];
    private readonly double[] _firstCovariance = new double[9];
    private readonly double[] _smoothedResponse = new double[9 * places.Length];

    /// <summary>Smoothed states, three numbers a place.</summary>
    public double[] State { get; } = new double[3 * places.Length];

    /// <summary>Their covariances, six numbers a place: 00, 01, 02, 11, 12, 22.</summary>
    public double[] Covariance { get; } = new double[6 * places.Length];

    /// <summary>Covariances of the states at a place (rows) and at the next (columns), nine numbers a place.</summary>
    public double[] CrossCovariance { get; } = new double[9 * places.Length];

    /// <summary>Filters forward, and finds the first state. Answers the logarithm of the restricted likelihood up to a constant;
    /// minus infinity where the places are too close together to tell a first state.</summary>
    /// <param name="drift">Variance the second derivative gains per unit of place, above zero.</param>
    /// <param name="variances">Of what was observed at each place, above zero.</param>
    public double Filter(double drift, ReadOnlySpan<double> variances)
    {
        double x0 = 0, x1 = 0, x2 = 0, p00 = 0, p01 = 0, p02 = 0, p11 = 0, p12 = 0, p22 = 0;
        Span<double> response = [1, 0, 0, 0, 1, 0, 0, 0, 1];
        for (var t = 0; t < places.Length; t++)
        {
            if (t > 0)
            {
                var d = places[t] - places[t - 1];
                var (half, third) = (d * d / 2, d * d * d / 3);
                x0 += (d * x1) + (half * x2);
                x1 += d * x2;
                for (var k = 0; k < 9; k += 3)
                {
                    response[k] += (d * response[k + 1]) + (half * response[k + 2]);
                    response[k + 1] += d * response[k + 2];
                }

                // F P Fᵀ + Q.
                p00 += (2 * d * p01) + (2 * half * p02) + (d * d * p11) + (2 * d * half * p12) + (half * half * p22) + (drift * d * d * third * 3 / 20);
                p01 += (d * p02) + (d * p11) + (d * d * p12) + (half * p12) + (half * d * p22) + (drift * d * third * 3 / 8);
                p02 += (d * p12) + (half * p22) + (drift * third / 2);
                p11 += (2 * d * p12) + (d * d * p22) + (drift * third);
                p12 += (d * p22) + (drift * half);
                p22 += drift * d;
            }

            (_state[3 * t], _state[(3 * t) + 1], _state[(3 * t) + 2]) = (x0, x1, x2);
            response.CopyTo(_response.AsSpan(9 * t));
            var p = _covariance.AsSpan(6 * t, 6);
            (p[0], p[1], p[2], p[3], p[4], p[5]) = (p00, p01, p02, p11, p12, p22);
            var isValue = components[t] == 0;
            var (h0, h1, h2) = isValue ? (p00, p01, p02) : (p02, p12, p22);
            var variance = (isValue ? p00 : p22) + variances[t];

            var innovation = values[t] - (isValue ? x0 : x2);
            (_innovation[t], _innovationVariance[t]) = (innovation, variance);
            var (g0, g1, g2) = (h0 / variance, h1 / variance, h2 / variance);
            x0 += g0 * innovation;
            x1 += g1 * innovation;
            x2 += g2 * innovation;
            for (var k = 0; k < 3; k++)
            {
                var change = -response[(3 * k) + components[t]];
                _innovationResponse[(3 * t) + k] = change;
                response[3 * k] += g0 * change;
                response[(3 * k) + 1] += g1 * change;
                response[(3 * k) + 2] += g2 * change;
            }

            p00 -= g0 * h0;
            p01 -= g0 * h1;
            p02 -= g0 * h2;
            p11 -= g1 * h1;
            p12 -= g1 * h2;
            p22 -= g2 * h2;
        }

        return FindFirst();
    }

    // The first state that leaves the least of the innovations, its covariance, and the likelihood with it.
    private double FindFirst()
    {
        var equations = new NormalEquations(stackalloc double[NormalEquations.MemoryFor(3)], 3);
        Span<double> gradient = stackalloc double[3];
        var logLikelihood = 0.0;
        for (var t = 0; t < places.Length; t++)
        {
            var deviation = Math.Sqrt(_innovationVariance[t]);
            for (var k = 0; k < 3; k++) gradient[k] = -_innovationResponse[(3 * t) + k] / deviation;
            equations.Add(gradient, _innovation[t] / deviation);
            logLikelihood -= Math.Log(deviation);
        }

        if (!equations.TryFactor()) return double.NegativeInfinity;
        equations.Solve(_first);
        equations.Covariance(_firstCovariance);
        for (var t = 0; t < places.Length; t++)
        {
            _innovation[t] += (_innovationResponse[3 * t] * _first[0]) + (_innovationResponse[(3 * t) + 1] * _first[1]) + (_innovationResponse[(3 * t) + 2] * _first[2]);
            for (var i = 0; i < 3; i++)
            {
                _state[(3 * t) + i] += (_response[(9 * t) + i] * _first[0]) + (_response[(9 * t) + 3 + i] * _first[1]) + (_response[(9 * t) + 6 + i] * _first[2]);
            }

            logLikelihood -= 0.5 * _innovation[t] * _innovation[t] / _innovationVariance[t];
        }

        return logLikelihood - equations.HalfLogDeterminant;
    }

    /// <summary>Smooths backward what was filtered last.</summary>
    public void Smooth()
    {
        Span<double> r = stackalloc double[3];
        Span<double> n = stackalloc double[9];
        Span<double> a = stackalloc double[3];
        Span<double> m = stackalloc double[9];
        Span<double> p = stackalloc double[9];
        Span<double> next = stackalloc double[9];
        Span<double> work = stackalloc double[9];
        Span<double> gain = stackalloc double[3];

        // The same pass for the answer to each member of the first state.
        Span<double> answers = stackalloc double[9];
        answers.Clear();
        r.Clear();
        n.Clear();
        for (var t = places.Length - 1; t >= 0; t--)
        {
            var h = components[t];
            var variance = _innovationVariance[t];
            Full(_covariance.AsSpan(6 * t, 6), p);
            for (var i = 0; i < 3; i++) gain[i] = p[(3 * i) + h] / variance;
            var d = t + 1 < places.Length ? places[t + 1] - places[t] : 0;
            if (t + 1 < places.Length) Cross(d, h, gain, p, n, next, work, CrossCovariance.AsSpan(9 * t, 9));

            // a = Fᵀ r, m = Fᵀ n F.
            Transpose(d, r, a);
            for (var column = 0; column < 3; column++) TransposeColumn(d, n, column, work);
            for (var row = 0; row < 3; row++) TransposeRow(d, work, row, m);

            // r = a + Hᵀ (v / S − gᵀ a), n = (I − g H)ᵀ m (I − g H) + Hᵀ H / S.
            var along = (gain[0] * a[0]) + (gain[1] * a[1]) + (gain[2] * a[2]);
            a.CopyTo(r);
            r[h] += (_innovation[t] / variance) - along;
            for (var k = 0; k < 3; k++)
            {
                var answer = answers.Slice(3 * k, 3);
                Transpose(d, answer, a);
                a.CopyTo(answer);
                answer[h] += (_innovationResponse[(3 * t) + k] / variance) - ((gain[0] * a[0]) + (gain[1] * a[1]) + (gain[2] * a[2]));
                for (var i = 0; i < 3; i++)
                {
                    _smoothedResponse[(9 * t) + (3 * k) + i] = _response[(9 * t) + (3 * k) + i] + (p[3 * i] * answer[0]) + (p[(3 * i) + 1] * answer[1]) + (p[(3 * i) + 2] * answer[2]);
                }
            }

            for (var i = 0; i < 3; i++) work[i] = (m[3 * i] * gain[0]) + (m[(3 * i) + 1] * gain[1]) + (m[(3 * i) + 2] * gain[2]);
            var both = (gain[0] * work[0]) + (gain[1] * work[1]) + (gain[2] * work[2]);
            m.CopyTo(n);
            for (var i = 0; i < 3; i++)
            {
                n[(3 * i) + h] -= work[i];
                n[(3 * h) + i] -= work[i];
            }

            n[(3 * h) + h] += both + (1 / variance);
            Write(t, p, r, n, work);
            p.CopyTo(next);
        }

        AddFirst();
    }

    // What is not known of the first state, at every place and between it and the next.
    private void AddFirst()
    {
        Span<double> spread = stackalloc double[9];
        for (var t = 0; t < places.Length; t++)
        {
            var here = _smoothedResponse.AsSpan(9 * t, 9);
            for (var i = 0; i < 3; i++)
            {
                for (var k = 0; k < 3; k++)
                {
                    spread[(3 * i) + k] = (here[i] * _firstCovariance[k]) + (here[3 + i] * _firstCovariance[3 + k]) + (here[6 + i] * _firstCovariance[6 + k]);
                }
            }

            var at = 6 * t;
            for (var i = 0; i < 3; i++)
            {
                for (var k = i; k < 3; k++) Covariance[at++] += Along(spread, i, here, k);
            }

            for (var i = 0; t + 1 < places.Length && i < 9; i++)
            {
                CrossCovariance[(9 * t) + i] += Along(spread, i / 3, _smoothedResponse.AsSpan(9 * (t + 1), 9), i % 3);
            }
        }

        static double Along(ReadOnlySpan<double> spread, int row, ReadOnlySpan<double> response, int member) =>
            (spread[3 * row] * response[member]) + (spread[(3 * row) + 1] * response[3 + member]) + (spread[(3 * row) + 2] * response[6 + member]);
    }

    // x + P r, P − P n P.
    private void Write(int t, ReadOnlySpan<double> p, ReadOnlySpan<double> r, ReadOnlySpan<double> n, Span<double> work)
    {
        for (var i = 0; i < 3; i++) State[(3 * t) + i] = _state[(3 * t) + i] + (p[3 * i] * r[0]) + (p[(3 * i) + 1] * r[1]) + (p[(3 * i) + 2] * r[2]);
        Product(p, n, work);
        var at = 6 * t;
        for (var i = 0; i < 3; i++)
        {
            for (var k = i; k < 3; k++)
            {
                Covariance[at++] = p[(3 * i) + k] - ((work[3 * i] * p[k]) + (work[(3 * i) + 1] * p[3 + k]) + (work[(3 * i) + 2] * p[6 + k]));
            }
        }
    }

    // P (I − g H)ᵀ Fᵀ (I − n P₊), n and P₊ being those of the next place.
    private static void Cross(
        double d, int h, ReadOnlySpan<double> gain, ReadOnlySpan<double> p, ReadOnlySpan<double> n, ReadOnlySpan<double> next, Span<double> work, Span<double> cross)
    {
        Product(n, next, work);
        Span<double> left = stackalloc double[9];
        for (var i = 0; i < 3; i++)
        {
            var seen = p[(3 * i) + h];
            var (c0, c1, c2) = (p[3 * i] - (seen * gain[0]), p[(3 * i) + 1] - (seen * gain[1]), p[(3 * i) + 2] - (seen * gain[2]));
            left[3 * i] = c0 + (d * c1) + (d * d / 2 * c2);
            left[(3 * i) + 1] = c1 + (d * c2);
            left[(3 * i) + 2] = c2;
        }

        Product(left, work, cross);
        for (var i = 0; i < 9; i++) cross[i] = left[i] - cross[i];
    }

    private static void Full(ReadOnlySpan<double> upper, Span<double> full)
    {
        (full[0], full[1], full[2]) = (upper[0], upper[1], upper[2]);
        (full[3], full[4], full[5]) = (upper[1], upper[3], upper[4]);
        (full[6], full[7], full[8]) = (upper[2], upper[4], upper[5]);
    }

    private static void Product(ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> product)
    {
        for (var i = 0; i < 3; i++)
        {
            for (var k = 0; k < 3; k++) product[(3 * i) + k] = (a[3 * i] * b[k]) + (a[(3 * i) + 1] * b[3 + k]) + (a[(3 * i) + 2] * b[6 + k]);
        }
    }

    private static void Transpose(double d, ReadOnlySpan<double> r, Span<double> a)
    {
        a[0] = r[0];
        a[1] = (d * r[0]) + r[1];
        a[2] = (d * d / 2 * r[0]) + (d * r[1]) + r[2];
    }

    private static void TransposeColumn(double d, ReadOnlySpan<double> n, int column, Span<double> product)
    {
        product[column] = n[column];
        product[3 + column] = (d * n[column]) + n[3 + column];
        product[6 + column] = (d * d / 2 * n[column]) + (d * n[3 + column]) + n[6 + column];
    }

    private static void TransposeRow(double d, ReadOnlySpan<double> n, int row, Span<double> product) =>
        Transpose(d, n.Slice(3 * row, 3), product.Slice(3 * row, 3));
}
