namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// The banded matrices of a natural cubic spline over knots x with standard errors s (Reinsch 1967): Q takes second differences
/// of divided first ones, R holds the integrals of the curvature's tents, B = Qᵀ S² Q. All of order n − 2, one row per inner knot.
/// </summary>
internal sealed class SplineBands
{
    private readonly double[] _gaps;
    private readonly double[] _variances;

    // Diagonals of B and R, and next to them; further[i] couples rows i and i + 2.
    private readonly double[] _errorDiagonal;
    private readonly double[] _errorNext;
    private readonly double[] _errorFurther;
    private readonly double[] _tentDiagonal;
    private readonly double[] _tentNext;

    public SplineBands(ReadOnlySpan<double> knots, ReadOnlySpan<double> standardErrors)
    {
        var rows = knots.Length - 2;
        _gaps = new double[knots.Length - 1];
        for (var i = 0; i < _gaps.Length; i++) _gaps[i] = knots[i + 1] - knots[i];
        _variances = new double[knots.Length];
        for (var i = 0; i < knots.Length; i++) _variances[i] = standardErrors[i] * standardErrors[i];
        (_errorDiagonal, _errorNext, _errorFurther) = (new double[rows], new double[rows], new double[rows]);
        (_tentDiagonal, _tentNext) = (new double[rows], new double[rows]);
        for (var i = 0; i < rows; i++)
        {
            var (before, at, after) = Differences(i);
            _errorDiagonal[i] = (before * before * _variances[i]) + (at * at * _variances[i + 1]) + (after * after * _variances[i + 2]);
            _tentDiagonal[i] = (_gaps[i] + _gaps[i + 1]) / 3;
            if (i + 1 < rows)
            {
                var (nextBefore, nextAt, _) = Differences(i + 1);
                _errorNext[i] = (at * nextBefore * _variances[i + 1]) + (after * nextAt * _variances[i + 2]);
                _tentNext[i] = _gaps[i + 1] / 6;
            }

            if (i + 2 < rows) _errorFurther[i] = after * Differences(i + 2).Before * _variances[i + 2];
        }
    }

    /// <summary>How many inner knots there are.</summary>
    public int RowCount => _tentDiagonal.Length;

    /// <summary>Distance from a knot to the next.</summary>
    public double Gap(int knot) => _gaps[knot];

    /// <summary>Variance of the reading at a knot.</summary>
    public double Variance(int knot) => _variances[knot];

    /// <summary>Factors of <paramref name="tentShare"/> R + <paramref name="errorShare"/> B; one share may be zero, not both.</summary>
    public BandFactors Factor(double tentShare, double errorShare)
    {
        var factors = new BandFactors(RowCount);
        for (var i = 0; i < RowCount; i++)
        {
            factors.Append(
                (tentShare * _tentDiagonal[i]) + (errorShare * _errorDiagonal[i]),
                i < 1 ? 0 : (tentShare * _tentNext[i - 1]) + (errorShare * _errorNext[i - 1]),
                i < 2 ? 0 : errorShare * _errorFurther[i - 2]);
        }

        return factors;
    }

    /// <summary>Qᵀ y: the jump of slope at every inner knot of the values joined by straight lines.</summary>
    public void Bends(ReadOnlySpan<double> values, Span<double> bends)
    {
        for (var i = 0; i < RowCount; i++)
        {
            var (before, at, after) = Differences(i);
            bends[i] = (before * values[i]) + (at * values[i + 1]) + (after * values[i + 2]);
        }
    }

    /// <summary>Q c at a knot: what <paramref name="curvatures"/> of the inner knots add up to there.</summary>
    public double Spread(ReadOnlySpan<double> curvatures, int knot)
    {
        var sum = 0.0;
        if (knot < RowCount) sum += Differences(knot).Before * curvatures[knot];
        if (knot >= 1 && knot - 1 < RowCount) sum += Differences(knot - 1).At * curvatures[knot - 1];
        if (knot >= 2) sum += Differences(knot - 2).After * curvatures[knot - 2];
        return sum;
    }

    /// <summary>R c.</summary>
    public void Tents(ReadOnlySpan<double> curvatures, Span<double> product)
    {
        for (var i = 0; i < RowCount; i++)
        {
            product[i] = _tentDiagonal[i] * curvatures[i];
            if (i > 0) product[i] += _tentNext[i - 1] * curvatures[i - 1];
            if (i + 1 < RowCount) product[i] += _tentNext[i] * curvatures[i + 1];
        }
    }

    /// <summary>A row of Qᵀ: its weights on the knot before, the inner knot and the one after.</summary>
    public (double Before, double At, double After) Differences(int row)
    {
        var (before, after) = (1 / _gaps[row], 1 / _gaps[row + 1]);
        return (before, -(before + after), after);
    }
}
