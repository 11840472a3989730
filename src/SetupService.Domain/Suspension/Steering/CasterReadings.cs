using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// Caster and steering-axis inclination from camber readings on turn plates: least squares over the exact model, without any
/// factor. Either <see cref="Fit"/> or <see cref="Gap"/> is there.
/// </summary>
public readonly record struct CasterReadings
{
    /// <summary>Standard error of one camber reading where none is given, degrees (common practice, no source).</summary>
    public const double DefaultGaugeErrorDeg = 0.1;

    /// <summary>Steer angles closer than this are one, degrees: what a turn plate lets one read (common practice, no source).</summary>
    public const double SameSteerDeg = 0.25;

    /// <summary>Spread of steer angles under which nothing is told, degrees (our choice).</summary>
    public const double LeastSpreadDeg = 1;

    /// <summary>Different steer angles needed: caster, inclination and the camber straight ahead are three unknowns.</summary>
    public const int LeastSteerAngles = 3;

    /// <summary>The axis; null where the readings do not tell it.</summary>
    public CasterFit? Fit { get; private init; }

    /// <summary>Why there is no axis; null where there is one.</summary>
    public CasterReadingsGap? Gap { get; private init; }

    /// <summary>Caster by the workshop's rule, degrees, for comparison; see <see cref="CasterRules.WorkshopDeg"/>.</summary>
    public double? WorkshopRuleCasterDeg { get; private init; }

    /// <summary>Caster by the widest symmetric pair, degrees, for comparison; see <see cref="CasterRules.PairDeg"/>.</summary>
    public double? PairRuleCasterDeg { get; private init; }

    /// <summary>Steer angle of that pair, degrees.</summary>
    public double? PairRuleSteerDeg { get; private init; }

    /// <summary>
    /// Reads the axis from readings in any order, steer under 90° in size; <paramref name="gaugeErrorDeg"/> is above zero.
    /// </summary>
    public static CasterReadings From(ReadOnlySpan<SteerReading> readings, WheelSide side, double gaugeErrorDeg = DefaultGaugeErrorDeg)
    {
        var gap = GapIn(readings);
        var fit = gap is null ? FitTo(readings, side, gaugeErrorDeg) : null;
        var pair = CasterRules.PairDeg(readings, side);
        return new()
        {
            Fit = fit,
            Gap = fit is null ? gap ?? CasterReadingsGap.NoAxisFits : null,
            WorkshopRuleCasterDeg = CasterRules.WorkshopDeg(readings, side),
            PairRuleCasterDeg = pair?.CasterDeg,
            PairRuleSteerDeg = pair?.SteerDeg,
        };
    }

    private static CasterFit? FitTo(ReadOnlySpan<SteerReading> readings, WheelSide side, double gaugeErrorDeg)
    {
        // From an upright axis the first step is the handbooks' form for small angles, solved as linear equations.
        Span<double> unknowns = [0, 0, 0];
        Span<double> factors = stackalloc double[3];
        if (!GaussNewton.TryFit(new CasterModel(readings, side), unknowns, factors, out var sumOfSquares)) return null;
        return new()
        {
            CasterDeg = double.RadiansToDegrees(unknowns[0]),
            CasterStandardErrorDeg = factors[0] * gaugeErrorDeg,
            SteeringAxisInclinationDeg = double.RadiansToDegrees(unknowns[1]),
            InclinationStandardErrorDeg = factors[1] * gaugeErrorDeg,
            CamberAheadDeg = double.RadiansToDegrees(unknowns[2]),
            CamberAheadStandardErrorDeg = factors[2] * gaugeErrorDeg,
            GaugeErrorDeg = gaugeErrorDeg,
            ResidualStandardDeviationDeg = readings.Length > 3
                ? double.RadiansToDegrees(Math.Sqrt(sumOfSquares / (readings.Length - 3)))
                : null,
        };
    }

    private static CasterReadingsGap? GapIn(ReadOnlySpan<SteerReading> readings)
    {
        var spread = SteerSpread.Compute(readings);
        if (spread.DifferentCount < LeastSteerAngles) return CasterReadingsGap.TooFewSteerAngles;
        return spread.SpreadDeg < LeastSpreadDeg ? CasterReadingsGap.SteerAnglesTooClose : null;
    }
}
