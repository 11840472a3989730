using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>
/// How much further use, read a few times on the way, would show a change of a rate: the chance that the test of the difference of both
/// rates finds it at 90 %, with this gauge. Between the further readings only the compared clock moves, by equal steps.
/// </summary>
public sealed class FurtherReadings
{
    /// <summary>How often a change is to be found: four times in five, common practice.</summary>
    public const double WantedPower = 0.8;

    // More laps or kilometres than any tyre sees; what needs more needs another plan.
    private const double MostUse = 1e6;
    private const int MostHalvings = 60;
    private const double Nothing = 1e-6;

    private readonly WearFit _before;
    private readonly TyreUse _unit;
    private readonly double _beforeVariance;
    private readonly SessionVariance _sessions;
    private readonly DepthReading[] _after;
    private readonly int _there;

    // The quantile depends on the degrees of freedom alone, which hardly change while a plan is sought.
    private (int DegreesOfFreedom, double Quantile) _test;

    /// <summary>Makes ready to try plans.</summary>
    /// <param name="before">The fit before, with the scatter of all readings.</param>
    /// <param name="after">The readings after that are there.</param>
    /// <param name="unit">The use rates are compared by.</param>
    /// <param name="count">How many further readings; at least 2.</param>
    /// <param name="sessions">What sessions add; further use is in the sessions there are.</param>
    public FurtherReadings(WearFit before, ReadOnlySpan<DepthReading> after, TyreUse unit, int count, SessionVariance sessions)
    {
        ArgumentNullException.ThrowIfNull(before);
        _before = before;
        _unit = unit;
        _sessions = sessions;
        _beforeVariance = before.Design.Share(unit) is { } share ? before.Design.Variance(share) : double.PositiveInfinity;
        _there = after.Length;
        _after = new DepthReading[after.Length + count];
        after.CopyTo(_after);
    }

    /// <summary>
    /// How often the change would be found.
    /// </summary>
    /// <param name="place">The zone.</param>
    /// <param name="ratio">Rate after over rate before that is looked for; not 1.</param>
    /// <param name="use">Further use, in units.</param>
    public double Power(TreadPlace place, double ratio, double use)
    {
        var from = _there > 0 ? _after[_there - 1] : default;
        var count = _after.Length - _there;

        // Where nothing was read yet, the first of the readings is the one at the start.
        var steps = _there > 0 ? count : count - 1;
        for (var i = 0; i < count; i++)
        {
            var way = use * (_there > 0 ? i + 1 : i) / steps;
            _after[_there + i] = new(from.RoadKm + (way * _unit.RoadKm), from.TrackLaps + (way * _unit.TrackLaps), default);
        }

        var design = WearDesign.Create(_after);
        return design.Share(_unit) is { } share ? Power(place, ratio, design.Variance(share), design.UnknownCount) : 0;
    }

    /// <summary>
    /// How many further sessions on each side find the change four times in five, each as long and as closely read as the present ones; null where
    /// no number up to <see cref="ShoulderChange.MostSessions"/> does.
    /// </summary>
    /// <param name="place">The zone.</param>
    /// <param name="ratio">Rate after over rate before that is looked for; not 1.</param>
    /// <param name="present">Sessions on the side that has fewer.</param>
    public int? Sessions(TreadPlace place, double ratio, int present)
    {
        if (_before.Wear(place, _unit) is not { Value: > 0 } rate) return null;
        var design = WearDesign.Create(_after.AsSpan(0, _there));
        var afterVariance = _there > design.UnknownCount && design.Share(_unit) is { } share ? design.Variance(share) : _beforeVariance;
        var gaugeMm2 = _before.Scatter.StandardDeviationMm * _before.Scatter.StandardDeviationMm * (_beforeVariance + afterVariance);
        var error = Math.Sqrt((gaugeMm2 / (rate.Value * rate.Value)) + _sessions.Before + (ratio * ratio * _sessions.After));
        return ShoulderChange.Further(ratio - 1, error, _before.Scatter.Quantile, present);
    }

    /// <summary>The least further use, in units, that finds the change four times in five; null where no use does.</summary>
    public double? LeastUse(TreadPlace place, double ratio)
    {
        var high = 1.0;
        while (Power(place, ratio, high) < WantedPower)
        {
            high *= 2;
            if (high > MostUse) return null;
        }

        var low = 0.0;
        for (var i = 0; i < MostHalvings && high - low > 1e-9 * high; i++)
        {
            var middle = (low + high) / 2;
            if (Power(place, ratio, middle) < WantedPower) low = middle;
            else high = middle;
        }

        // What is there already shows it: the search ends at next to nothing.
        return high < Nothing ? 0 : high;
    }

    private double Power(TreadPlace place, double ratio, double afterVariance, int unknowns)
    {
        if (_before.Wear(place, _unit) is not { Value: > 0 } rate) return 0;
        var ofBefore = WearFit.ZoneCount * (_before.Design.Count - _before.Design.UnknownCount);
        var degrees = ofBefore + (WearFit.ZoneCount * Math.Max(0, _after.Length - unknowns));
        var gaugeMm2 = _before.Scatter.StandardDeviationMm * _before.Scatter.StandardDeviationMm * (_beforeVariance + afterVariance);
        var sessionsMm2 = rate.Value * rate.Value * (_sessions.Before + (ratio * ratio * _sessions.After));
        var shift = Math.Abs(ratio - 1) * rate.Value / Math.Sqrt(gaugeMm2 + sessionsMm2);
        if (_test.DegreesOfFreedom != degrees) _test = (degrees, StudentT.UpperQuantile(GaugeScatter.UpperShare, degrees));
        return StudentT.AboveShifted(_test.Quantile, shift, degrees);
    }
}
