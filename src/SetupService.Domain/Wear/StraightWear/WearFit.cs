using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>
/// Wear fitted to the readings of one tyre: three zones on the same clocks, read with the same gauge. Rates are least squares with none below
/// zero; ranges are those of the free fit, cut at zero, which holds the truth as often because no true rate is below zero.
/// </summary>
/// <param name="Design">When it was read.</param>
/// <param name="Zones">The line of each zone.</param>
/// <param name="Scatter">How far readings scatter.</param>
public sealed record WearFit(WearDesign Design, AcrossTread<ZoneWear> Zones, GaugeScatter Scatter)
{
    /// <summary>Zones across a tread, whose scatter is one gauge's.</summary>
    public const int ZoneCount = 3;

    /// <summary>How wear bends along the use; null where it is taken as straight.</summary>
    public WearCurve? Curve { get; init; }

    /// <summary>The straight fit; null where there are no more readings than unknowns, so that their scatter cannot be estimated.</summary>
    /// <param name="readings">The readings of one tyre, in the order they were taken.</param>
    /// <param name="gaugeErrorMm">Stated error of one reading, mm; null where it is not stated.</param>
    public static WearFit? Fit(ReadOnlySpan<DepthReading> readings, double? gaugeErrorMm)
    {
        var design = WearDesign.Create(readings);
        if (design.Clock == WearClock.None || readings.Length <= design.UnknownCount) return null;
        var zones = new AcrossTread<ZoneWear>(
            design.Fit(readings, TreadPlace.Outer), design.Fit(readings, TreadPlace.Centre), design.Fit(readings, TreadPlace.Inner));
        var squaresMm2 = zones.Outer.SquaresMm2 + zones.Centre.SquaresMm2 + zones.Inner.SquaresMm2;
        return new(design, zones, GaugeScatter.Estimate(squaresMm2, ZoneCount * (readings.Length - design.UnknownCount), gaugeErrorMm));
    }

    /// <summary>The fit that lets wear bend: what is asked for is then its late rate.</summary>
    /// <param name="readings">The readings of one tyre, in the order they were taken.</param>
    /// <param name="gaugeErrorMm">Stated error of one reading, mm; null where it is not stated.</param>
    public static WearFit? FitLate(ReadOnlySpan<DepthReading> readings, double? gaugeErrorMm) =>
        Fit(readings, gaugeErrorMm) is { } straight ? WearCurve.Bend(straight, readings, gaugeErrorMm) : null;

    /// <summary>Best estimate of what a stretch of use takes off a zone, mm; not negative.</summary>
    public double LostMm(TreadPlace place, in MixShare share) =>
        Curve is { } curve ? Math.Max(0, Zones.At(place).LostOfMixMm.Dot(share) - curve.Late(place, share)) : Zones.At(place).LostOfMixMm.Dot(share);

    /// <summary>Best estimate of the depth at the last reading, mm.</summary>
    public double EndMm(TreadPlace place) => Zones.At(place).EndDepthMm + (Curve?.End(place) ?? 0);

    /// <summary>Variance of <see cref="LostMm"/>, mm².</summary>
    public double LostVarianceMm2(TreadPlace place, in MixShare share) => (GaugeVarianceMm2 * Design.Variance(share)) + (Curve?.LateVariance(place, share) ?? 0);

    /// <summary>Variance of <see cref="EndMm"/>, mm².</summary>
    public double EndVarianceMm2(TreadPlace place) => (GaugeVarianceMm2 * Design.EndVariance) + (Curve?.EndVariance(place) ?? 0);

    /// <summary>Covariance of both, mm².</summary>
    public double EndCovarianceMm2(TreadPlace place, in MixShare share) => (GaugeVarianceMm2 * Design.EndCovariance(share)) + (Curve?.EndCovariance(place, share) ?? 0);

    /// <summary>The fitted depth of a zone at the clocks of a reading, mm.</summary>
    public double DepthMm(TreadPlace place, in DepthReading reading) => Design.DepthMm(Zones.At(place), reading) + (Curve?.At(place, Design.Place(reading)) ?? 0);

    /// <summary>How much of its own error the fit takes over at a reading: 1 where it follows that reading alone.</summary>
    public double Leverage(in DepthReading reading) => Design.Leverage(reading) + (Curve?.Leverage(Design.Place(reading)) ?? 0);

    /// <summary>The depth of a zone some mixes after the last reading, mm: along the late rate from there on, along the fit before it.</summary>
    /// <param name="place">The zone.</param>
    /// <param name="mixes">How many times the use between first and last reading later; negative = earlier.</param>
    public Uncertainty DepthAfterMm(TreadPlace place, double mixes)
    {
        var mix = Design.Share(Design.Mix)!.Value;
        var at = (Road: Design.End.Road + (mixes * mix.Road), Track: Design.End.Track + (mixes * mix.Track));
        var (value, variance) = mixes >= 0
            ? (EndMm(place) - (mixes * LostMm(place, mix)), EndVarianceMm2(place) - (2 * mixes * EndCovarianceMm2(place, mix)) + (mixes * mixes * LostVarianceMm2(place, mix)))
            : (Zones.At(place).MeanDepthMm - Zones.At(place).LostOfMixMm.Dot(at.Road, at.Track) + (Curve?.At(place, at) ?? 0), (GaugeVarianceMm2 * Design.DepthVariance(at.Road, at.Track)) + (Curve?.AtVariance(place, at) ?? 0));
        var half = Scatter.Quantile * Math.Sqrt(Math.Max(0, variance));
        return new(value, value - half, value + half, Uncertainty.NinetyPct);
    }

    /// <summary>
    /// What a use takes off a zone, mm, with its 90 % range; null where the readings do not determine it, or where by them the tread grows by
    /// more than they err.
    /// </summary>
    public Uncertainty? Wear(TreadPlace place, TyreUse use)
    {
        if (Design.Share(use) is not { } share) return null;
        var free = Zones.At(place).FreeLostOfMixMm.Dot(share) - (Curve?.Late(place, share) ?? 0);
        var half = Scatter.Quantile * Math.Sqrt(LostVarianceMm2(place, share));
        if (free + half < 0) return null;
        var value = LostMm(place, share);
        return new(value, Math.Max(0, Math.Min(value, free - half)), Math.Max(value, free + half), Uncertainty.NinetyPct);
    }

    /// <summary>Depth at the last reading by the fit, mm, with its 90 % range.</summary>
    public Uncertainty EndDepthMm(TreadPlace place)
    {
        var (value, free) = (EndMm(place), Zones.At(place).FreeEndDepthMm + (Curve?.End(place) ?? 0));
        var half = Scatter.Quantile * Math.Sqrt(EndVarianceMm2(place));
        return new(value, Math.Min(value, free - half), Math.Max(value, free + half), Uncertainty.NinetyPct);
    }

    /// <summary>
    /// How many times a use a zone lasts until it is down to a limit; null where the readings do not determine the wear of such use. Its value
    /// is that of rates not below zero.
    /// </summary>
    public RatioRange? Left(TreadPlace place, double limitMm, TyreUse use)
    {
        if (Design.Share(use) is not { } share) return null;
        var zone = Zones.At(place);
        var (endMm, lostMm) = (EndMm(place), LostMm(place, share));
        var range = RatioRange.Compute(
            zone.FreeEndDepthMm + (Curve?.End(place) ?? 0) - limitMm,
            zone.FreeLostOfMixMm.Dot(share) - (Curve?.Late(place, share) ?? 0),
            EndVarianceMm2(place),
            EndCovarianceMm2(place, share),
            LostVarianceMm2(place, share),
            Scatter.Quantile);
        if (range.IsUnknown) return range;
        double? value = endMm <= limitMm ? 0 : lostMm > 0 ? (endMm - limitMm) / lostMm : null;

        // Both clocks' rates may be held at zero where the readings contradict that by more than they err.
        return range with { Value = value is { } left ? Math.Max(Math.Min(left, range.Upper ?? left), range.Lower ?? left) : null };
    }

    private double GaugeVarianceMm2 => Scatter.StandardDeviationMm * Scatter.StandardDeviationMm;
}

/// <summary>The straight line (or plane, over two clocks) of a zone's depth, with no rate below zero.</summary>
/// <param name="MeanDepthMm">Depth where both clocks have their mean, mm.</param>
/// <param name="LostOfMixMm">What the whole mix takes off by each clock, mm; not negative.</param>
/// <param name="EndDepthMm">Fitted depth at the last reading, mm.</param>
/// <param name="SquaresMm2">Sum of the squared distances of the readings from the free line, mm².</param>
public readonly record struct ZoneWear(double MeanDepthMm, MixShare LostOfMixMm, double EndDepthMm, double SquaresMm2)
{
    /// <summary>What least squares alone makes of the mix, mm; negative where depth grows.</summary>
    public MixShare FreeLostOfMixMm { get; init; }

    /// <summary>The depth at the last reading by that, mm.</summary>
    public double FreeEndDepthMm { get; init; }
}
