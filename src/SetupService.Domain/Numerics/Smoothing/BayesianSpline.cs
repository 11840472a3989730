namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// A smooth curve through readings with independent normal errors: mean and standard deviation of the curve given the readings and a
/// <see cref="SmoothnessPrior"/>. Between readings a quintic spline, beyond them a parabola with growing uncertainty. It passes every
/// reading without error exactly, and no reading at more than 2.5 of its standard errors. Made in time proportional to the readings,
/// asked without allocation; immutable. Derivation in docs/methods/smoothing-spline.md.
/// </summary>
public sealed class BayesianSpline
{
    /// <summary>No reading is left further from the curve than this many of its standard errors.</summary>
    public const double LargestResidual = SplineFit.LargestResidual;

    private readonly double _middle;
    private readonly double _scale;
    private readonly double _offset;
    private readonly double _drift;
    private readonly double[] _places;
    private readonly double[] _state;
    private readonly double[] _covariance;
    private readonly double[] _crossCovariance;

    private BayesianSpline(SplineReadings readings, ReadOnlySpan<double> values, double standardError, SmoothnessPrior prior)
    {
        (First, Last) = (readings.Places[0], readings.Places[^1]);
        (_middle, _scale) = ((First + Last) / 2, (Last - First) / 2);

        // About their mean, so that a constant added to all is added to the curve and to nothing else.
        foreach (var value in readings.Values) _offset += value / readings.Values.Length;
        for (var i = 0; i < readings.Values.Length; i++) readings.Values[i] -= _offset;
        Span<double> centred = new double[values.Length];
        for (var i = 0; i < values.Length; i++) centred[i] = values[i] - _offset;
        var fit = new SplineFit(readings, centred, standardError, prior, _middle, _scale);
        (_places, _state, _covariance, _crossCovariance, _drift) = (fit.Places, fit.State, fit.Covariance, fit.CrossCovariance, fit.Drift);
    }

    /// <summary>The first place read.</summary>
    public double First { get; }

    /// <summary>The last place read.</summary>
    public double Last { get; }

    /// <summary>
    /// Fits a curve to readings in any order, each with the same standard error, 0 or more. Null where a number is not finite, the error or
    /// the prior's figures are below what they may be, or fewer than two different places were read.
    /// </summary>
    public static BayesianSpline? Fit(ReadOnlySpan<double> places, ReadOnlySpan<double> values, double standardError, SmoothnessPrior prior)
    {
        if (!(standardError >= 0) || !double.IsFinite(standardError)) return null;
        if (!(prior.CurvatureStandardDeviation > 0) || !(prior.CurvatureDrift > 0)) return null;
        return SplineReadings.From(places, values) is { } readings ? new(readings, values, standardError, prior) : null;
    }

    /// <summary>The mean curve's value.</summary>
    public double ValueAt(double place)
    {
        Span<double> weights = stackalloc double[6];
        return _offset + Sum(ValueWeights(Scaled(place), weights, out _), weights);
    }

    /// <summary>Value and slope with their standard deviations.</summary>
    public SplinePoint At(double place)
    {
        Span<double> weights = stackalloc double[6];
        var knot = ValueWeights(Scaled(place), weights, out var freeValue);
        var value = Sum(knot, weights);
        var valueDeviation = Deviation(knot, weights, freeValue);
        SlopeWeights(Scaled(place), weights, out var freeSlope);
        return new(_offset + value, valueDeviation, Sum(knot, weights) / _scale, Deviation(knot, weights, freeSlope) / _scale);
    }

    private double Scaled(double place) => (place - _middle) / _scale;

    // The knot to the left of a place between the ends; beyond them the end knot, with isBeyond set.
    private int KnotOf(double place, out bool isBeyond)
    {
        var last = _places.Length - 1;
        isBeyond = place < _places[0] || place > _places[last];
        if (isBeyond) return place < 0 ? 0 : last;
        var (low, high) = (0, last);
        while (high - low > 1)
        {
            var half = (low + high) / 2;
            if (_places[half] <= place) low = half;
            else high = half;
        }

        return low;
    }

    /// <summary>
    /// How the mean is made of the states at a knot and the next (quintic Hermite polynomials), and the variance the curve keeps when both
    /// are known: drift h⁵ (t (1 − t))⁵ / 20. Beyond the ends of the end state alone, and drift d⁵ / 20.
    /// </summary>
    private int ValueWeights(double place, Span<double> weights, out double freeVariance)
    {
        var knot = KnotOf(place, out var isBeyond);
        var way = place - _places[knot];
        if (isBeyond)
        {
            (weights[0], weights[1], weights[2]) = (1, way, way * way / 2);
            weights[3..].Clear();
            freeVariance = _drift * Math.Abs(way * way * way * way * way) / 20;
            return knot;
        }

        var h = _places[knot + 1] - _places[knot];
        var t = way / h;
        var (t2, t3) = (t * t, t * t * t);
        var (t4, t5) = (t2 * t2, t2 * t3);
        weights[3] = (10 * t3) - (15 * t4) + (6 * t5);
        weights[0] = 1 - weights[3];
        weights[1] = h * (t - (6 * t3) + (8 * t4) - (3 * t5));
        weights[2] = h * h / 2 * (t2 - (3 * t3) + (3 * t4) - t5);
        weights[4] = h * (-(4 * t3) + (7 * t4) - (3 * t5));
        weights[5] = h * h / 2 * (t3 - (2 * t4) + t5);
        var both = h * t * (1 - t);
        freeVariance = _drift * both * both * both * both * both / 20;
        return knot;
    }

    /// <summary>The same for the slope: drift h³ x³ (1 − 15/4 x) / 3 with x = t (1 − t), and drift d³ / 3.</summary>
    private int SlopeWeights(double place, Span<double> weights, out double freeVariance)
    {
        var knot = KnotOf(place, out var isBeyond);
        var way = place - _places[knot];
        if (isBeyond)
        {
            (weights[0], weights[1], weights[2]) = (0, 1, way);
            weights[3..].Clear();
            freeVariance = _drift * Math.Abs(way * way * way) / 3;
            return knot;
        }

        var h = _places[knot + 1] - _places[knot];
        var t = way / h;
        var (t2, t3, t4) = (t * t, t * t * t, t * t * t * t);
        weights[3] = ((30 * t2) - (60 * t3) + (30 * t4)) / h;
        weights[0] = -weights[3];
        weights[1] = 1 - (18 * t2) + (32 * t3) - (15 * t4);
        weights[2] = h / 2 * ((2 * t) - (9 * t2) + (12 * t3) - (5 * t4));
        weights[4] = -(12 * t2) + (28 * t3) - (15 * t4);
        weights[5] = h / 2 * ((3 * t2) - (8 * t3) + (5 * t4));
        var x = t * (1 - t);
        freeVariance = _drift * h * h * h * x * x * x * (1 - (3.75 * x)) / 3;
        return knot;
    }

    private double Sum(int knot, ReadOnlySpan<double> weights)
    {
        var state = _state.AsSpan(3 * knot);
        var sum = (weights[0] * state[0]) + (weights[1] * state[1]) + (weights[2] * state[2]);
        return state.Length < 6 ? sum : sum + (weights[3] * state[3]) + (weights[4] * state[4]) + (weights[5] * state[5]);
    }

    private double Deviation(int knot, ReadOnlySpan<double> weights, double freeVariance)
    {
        var variance = freeVariance + Quadratic(_covariance.AsSpan(6 * knot, 6), weights);
        if (knot + 1 < _places.Length)
        {
            variance += Quadratic(_covariance.AsSpan(6 * (knot + 1), 6), weights[3..]);
            var cross = _crossCovariance.AsSpan(9 * knot, 9);
            for (var i = 0; i < 3; i++)
            {
                variance += 2 * weights[i] * ((cross[3 * i] * weights[3]) + (cross[(3 * i) + 1] * weights[4]) + (cross[(3 * i) + 2] * weights[5]));
            }
        }

        // Below zero by rounding only.
        return Math.Sqrt(Math.Max(0, variance));
    }

    private static double Quadratic(ReadOnlySpan<double> covariance, ReadOnlySpan<double> weights) =>
        (weights[0] * ((weights[0] * covariance[0]) + (2 * weights[1] * covariance[1]) + (2 * weights[2] * covariance[2])))
        + (weights[1] * ((weights[1] * covariance[3]) + (2 * weights[2] * covariance[4])))
        + (weights[2] * weights[2] * covariance[5]);
}
