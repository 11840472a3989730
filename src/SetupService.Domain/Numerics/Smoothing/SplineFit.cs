namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>
/// The states of a smooth curve at its knots given readings: a mixture over how fast the second derivative may drift, each weighed by
/// its prior and the likelihood of the readings, put together as one mean and covariance. Derivation in docs/methods/smoothing-spline.md.
/// </summary>
internal sealed class SplineFit
{
    /// <summary>No reading is left further from the curve than this many of its standard errors.</summary>
    public const double LargestResidual = 2.5;

    // Drifts tried: the prior's, and tenfold steps up, each this much less likely beforehand than the one below.
    private const int DriftCount = 9;
    private const double DriftStep = 10;
    private const double StepShare = 0.003;

    // Drifts that have less of the whole than this are left out.
    private const double LeastShare = 1e-9;

    // Readings without error are taken as nearly so, and passed exactly in the end.
    private const double LeastError = 1e-7;
    private const double LeastVariance = 1e-16;

    // Readings further away than allowed pull harder, a little beyond what is needed; after many rounds all do.
    private const double Within = 0.999;
    private const int RoundsApart = 12;
    private const int MostRounds = 40;

    private readonly SplineReadings _readings;
    private readonly double[] _values;
    private readonly double[] _variances;
    private readonly byte[] _components;
    private readonly StateSmoother _smoother;
    private readonly double[] _drifts = new double[DriftCount];
    private readonly double[] _shares = new double[DriftCount];
    private readonly double _standardError;
    private readonly double _curvatureStandardDeviation;

    /// <summary>Fits; places of the readings are scaled by <paramref name="scale"/> about <paramref name="middle"/>.</summary>
    public SplineFit(SplineReadings readings, ReadOnlySpan<double> values, double standardError, SmoothnessPrior prior, double middle, double scale)
    {
        _readings = readings;
        _standardError = standardError;
        _curvatureStandardDeviation = prior.CurvatureStandardDeviation * scale * scale;
        var count = readings.Places.Length + 1;
        (Places, _values, _variances, _components, KnotOf) = (new double[count], new double[count], new double[count], new byte[count], new int[count - 1]);
        var (knot, error) = (0, Math.Max(standardError, LeastError));
        for (var i = 0; i < readings.Places.Length; i++)
        {
            var place = (readings.Places[i] - middle) / scale;
            if (place >= 0 && knot == i) AddMiddle(knot++);
            KnotOf[i] = knot;
            (Places[knot], _values[knot], _variances[knot++]) = (place, readings.Values[i], error * error / readings.Counts[i]);
        }

        _smoother = new(Places, _values, _components);
        (State, Covariance, CrossCovariance) = (new double[3 * count], new double[6 * count], new double[9 * count]);
        Weigh(prior.CurvatureDrift * Math.Pow(scale, 5));
        Mix();
        for (var round = 0; round < MostRounds && Tighten(values, round); round++) Mix();
        if (standardError == 0) Pin();
    }

    /// <summary>Knots, scaled: every place read, and the middle.</summary>
    public double[] Places { get; }

    /// <summary>The knot of each place read.</summary>
    public int[] KnotOf { get; }

    /// <summary>Mean of value, slope and second derivative at each knot, scaled.</summary>
    public double[] State { get; }

    /// <summary>Covariance of the state at each knot: 00, 01, 02, 11, 12, 22.</summary>
    public double[] Covariance { get; }

    /// <summary>Covariance of the state at each knot with that at the next, by rows.</summary>
    public double[] CrossCovariance { get; }

    /// <summary>Mean of the drift, scaled.</summary>
    public double Drift { get; private set; }

    private void AddMiddle(int knot) =>
        (Places[knot], _values[knot], _variances[knot], _components[knot]) = (0, 0, _curvatureStandardDeviation * _curvatureStandardDeviation, 2);

    private void Weigh(double leastDrift)
    {
        Span<double> logs = stackalloc double[DriftCount];
        var (drift, logPrior, most) = (leastDrift, 0.0, double.NegativeInfinity);
        for (var i = 0; i < DriftCount; i++)
        {
            _drifts[i] = drift;
            logs[i] = _smoother.Filter(drift, _variances) + logPrior;
            most = Math.Max(most, logs[i]);
            drift *= DriftStep;
            logPrior += Math.Log(StepShare);
        }

        var sum = 0.0;
        for (var i = 0; i < DriftCount; i++) sum += _shares[i] = Math.Exp(logs[i] - most);
        var kept = 0.0;
        for (var i = 0; i < DriftCount; i++)
        {
            _shares[i] = _shares[i] / sum < LeastShare ? 0 : _shares[i] / sum;
            kept += _shares[i];
        }

        for (var i = 0; i < DriftCount; i++)
        {
            _shares[i] /= kept;
            Drift += _shares[i] * _drifts[i];
        }
    }

    /// <summary>Smooths with every drift that counts, and puts their states together.</summary>
    private void Mix()
    {
        Array.Clear(State);
        Array.Clear(Covariance);
        Array.Clear(CrossCovariance);
        Span<double> change = stackalloc double[6];
        var done = 0.0;
        for (var one = 0; one < DriftCount; one++)
        {
            if (_shares[one] == 0) continue;
            _smoother.Filter(_drifts[one], _variances);
            _smoother.Smooth();

            // A running mean and covariance: what was there keeps its part, and the difference of the means is added.
            done += _shares[one];
            var share = _shares[one] / done;
            var spread = share * (1 - share);
            for (var knot = 0; knot < Places.Length; knot++)
            {
                var last = knot + 1 == Places.Length;
                for (var i = 0; i < (last ? 3 : 6); i++) change[i] = _smoother.State[(3 * knot) + i] - State[(3 * knot) + i];
                var at = 6 * knot;
                for (var i = 0; i < 3; i++)
                {
                    for (var k = i; k < 3; k++, at++)
                    {
                        Covariance[at] += (share * (_smoother.Covariance[at] - Covariance[at])) + (spread * change[i] * change[k]);
                    }
                }

                for (var i = 0; !last && i < 9; i++)
                {
                    at = (9 * knot) + i;
                    CrossCovariance[at] += (share * (_smoother.CrossCovariance[at] - CrossCovariance[at])) + (spread * change[i / 3] * change[3 + (i % 3)]);
                }

                for (var i = 0; i < 3; i++) State[(3 * knot) + i] += share * change[i];
            }
        }
    }

    /// <summary>Makes readings that are further from the curve than allowed pull harder; false where there is none.</summary>
    private bool Tighten(ReadOnlySpan<double> values, int round)
    {
        var allowed = LargestResidual * _standardError;
        if (allowed == 0) return false;
        var found = false;
        for (var i = 0; i < _readings.Places.Length; i++)
        {
            var knot = KnotOf[i];
            var largest = 0.0;
            for (var k = 0; k < values.Length; k++)
            {
                if (_readings.PlaceOf[k] == i) largest = Math.Max(largest, Math.Abs(values[k] - State[3 * knot]));
            }

            if (largest <= allowed) continue;
            found = true;
            _variances[knot] = Math.Max(LeastVariance, round < RoundsApart ? Pulling(knot, allowed) : _variances[knot] * 1e-3);
        }

        for (var i = 0; found && round >= RoundsApart && i < KnotOf.Length; i++) _variances[KnotOf[i]] = Math.Max(LeastVariance, _variances[KnotOf[i]] * 0.1);
        return found;
    }

    // The variance that would leave the mean at a knot just near enough, the other readings being as they are.
    private double Pulling(int knot, double allowed)
    {
        var variance = _variances[knot];
        var without = variance - Covariance[6 * knot];
        var residual = Math.Abs(_values[knot] - State[3 * knot]);
        if (!(without > 0) || !(residual > 0)) return variance / 10;
        var apart = residual * variance / without;
        var share = Within * allowed / apart;
        return share >= 1 ? variance / 2 : Math.Min(variance / 1.1, Covariance[6 * knot] * variance / without * share / (1 - share));
    }

    /// <summary>Readings without error are passed exactly: rounding has left the value there a trace of variance.</summary>
    private void Pin()
    {
        for (var i = 0; i < KnotOf.Length; i++)
        {
            var knot = KnotOf[i];
            State[3 * knot] = _values[knot];
            Covariance.AsSpan(6 * knot, 3).Clear();
            CrossCovariance.AsSpan(9 * knot, 3).Clear();
            for (var row = 0; knot > 0 && row < 3; row++) CrossCovariance[(9 * (knot - 1)) + (3 * row)] = 0;
        }
    }
}
