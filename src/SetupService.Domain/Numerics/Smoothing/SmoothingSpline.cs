namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// The smoothest curve that explains readings within their errors: the natural cubic spline with the least integral of squared
/// curvature whose squared standardised residuals sum to no more than n − √(2 n), n the number of knots. A straight line where that
/// already does; straight beyond the ends. Made in time proportional to the readings; immutable. Derivation in
/// docs/methods/smoothing-spline.md.
/// </summary>
public sealed class SmoothingSpline
{
    private const int MostOnStack = 256;

    private readonly double[] _places;
    private readonly double[] _values;
    private readonly double[] _curvatures;
    private readonly SplineBands _bands;
    private readonly BandFactors _factors;
    private readonly double _tentShare;
    private readonly double _errorShare;

    private SmoothingSpline(SplineKnots knots)
    {
        _places = knots.Places;
        _bands = new(knots.Places, knots.StandardErrors);
        (_tentShare, _errorShare, SumOfSquares) = Discrepancy.Solve(_bands, knots.Values);
        _factors = _bands.Factor(_tentShare, _errorShare);

        Span<double> solved = new double[_bands.RowCount];
        _bands.Bends(knots.Values, solved);
        _factors.Solve(solved);
        _values = new double[_places.Length];
        _curvatures = new double[_places.Length];
        for (var i = 0; i < _values.Length; i++)
        {
            _values[i] = knots.Values[i] - (_errorShare * _bands.Variance(i) * _bands.Spread(solved, i));
            if (i > 0 && i <= solved.Length) _curvatures[i] = _tentShare * solved[i - 1];
        }
    }

    /// <summary>How many different places the readings stand at.</summary>
    public int KnotCount => _places.Length;

    /// <summary>The first place read.</summary>
    public double First => _places[0];

    /// <summary>The last place read.</summary>
    public double Last => _places[^1];

    /// <summary>Sum of squared residuals over their standard errors; at most n − √(2 n) of n = <see cref="KnotCount"/>, up to rounding.</summary>
    public double SumOfSquares { get; }

    /// <summary>What the integral of squared curvature weighs against the sum of squares; infinite for a straight line, 0 through every reading.</summary>
    public double Smoothing => _errorShare / _tentShare;

    /// <summary>True when a straight line explains the readings.</summary>
    public bool IsStraight => _tentShare == 0 || KnotCount == 2;

    /// <summary>Integral of the squared second derivative: what the curve has the least of.</summary>
    public double Roughness
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i + 1 < _places.Length; i++)
            {
                var (left, right) = (_curvatures[i], _curvatures[i + 1]);
                sum += _bands.Gap(i) * ((left * left) + (left * right) + (right * right)) / 3;
            }

            return sum;
        }
    }

    /// <summary>
    /// Fits a curve to readings in any order. Places closer than <paramref name="mergeWithin"/> to the first of them are one and
    /// averaged. Null where a number is not finite, an error not above zero, or fewer than two different places were read.
    /// </summary>
    public static SmoothingSpline? Fit(
        ReadOnlySpan<double> places, ReadOnlySpan<double> values, ReadOnlySpan<double> standardErrors, double mergeWithin = 0) =>
        SplineKnots.From(places, values, standardErrors, mergeWithin) is { } knots ? new(knots) : null;

    /// <summary>The curve's value.</summary>
    public double ValueAt(double place)
    {
        var at = SplineWeights.OfValue(_places, place);
        return at.Of(_values, _curvatures);
    }

    /// <summary>The curve's slope.</summary>
    public double SlopeAt(double place)
    {
        var at = SplineWeights.OfSlope(_places, place);
        return at.Of(_values, _curvatures);
    }

    /// <summary>
    /// What the readings' errors leave uncertain in the value, one standard error: the curve is a weighted sum of the readings, and
    /// these are the weights' squares. The smoothing counts as given; what it flattens away is not in it.
    /// </summary>
    public double StandardErrorAt(double place) => StandardError(SplineWeights.OfValue(_places, place));

    /// <summary>The same for the slope.</summary>
    public double SlopeStandardErrorAt(double place) => StandardError(SplineWeights.OfSlope(_places, place));

    private double StandardError(in SplineWeights at)
    {
        var rows = _bands.RowCount;
        var solved = rows <= MostOnStack ? stackalloc double[rows] : new double[rows];
        for (var row = 0; row < rows; row++) solved[row] = _tentShare * at.OnCurvature(row + 1);
        at.TakeBends(_bands, _errorShare, solved);
        _factors.Solve(solved);

        var variance = 0.0;
        for (var knot = 0; knot < _places.Length; knot++)
        {
            var weight = at.OnValue(knot) + _bands.Spread(solved, knot);
            variance += weight * weight * _bands.Variance(knot);
        }

        return Math.Sqrt(variance);
    }
}
