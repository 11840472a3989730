using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>Straight wear fitted to the readings of one tyre: three zones on the same clocks, read with the same gauge.</summary>
/// <param name="Design">When it was read.</param>
/// <param name="Zones">The line of each zone.</param>
/// <param name="Scatter">How far readings scatter.</param>
public sealed record WearFit(WearDesign Design, AcrossTread<ZoneWear> Zones, GaugeScatter Scatter)
{
    /// <summary>Zones across a tread, whose scatter is one gauge's.</summary>
    public const int ZoneCount = 3;

    /// <summary>The fit; null where there are no more readings than unknowns, so that their scatter cannot be estimated.</summary>
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

    /// <summary>What a use takes off a zone, mm, with its 90 % range; null where the readings do not determine it.</summary>
    public Uncertainty? Wear(TreadPlace place, TyreUse use) =>
        Design.Share(use) is { } share ? Scatter.Range(Zones.At(place).LostOfMixMm.Dot(share), Design.Variance(share)) : null;

    /// <summary>Depth at the last reading by the fit, mm, with its 90 % range.</summary>
    public Uncertainty EndDepthMm(TreadPlace place) => Scatter.Range(Zones.At(place).EndDepthMm, Design.EndVariance);

    /// <summary>How many times a use a zone lasts until it is down to a limit; null where the readings do not determine the wear of such use.</summary>
    public RatioRange? Left(TreadPlace place, double limitMm, TyreUse use)
    {
        if (Design.Share(use) is not { } share) return null;
        var zone = Zones.At(place);
        var variance = Scatter.StandardDeviationMm * Scatter.StandardDeviationMm;
        return RatioRange.Compute(
            zone.EndDepthMm - limitMm,
            zone.LostOfMixMm.Dot(share),
            variance * Design.EndVariance,
            variance * Design.EndCovariance(share),
            variance * Design.Variance(share),
            Scatter.Quantile);
    }
}

/// <summary>The straight line (or plane, over two clocks) of a zone's depth.</summary>
/// <param name="MeanDepthMm">Depth where both clocks have their mean, mm.</param>
/// <param name="LostOfMixMm">What the whole mix takes off by each clock, mm; negative where depth grows.</param>
/// <param name="EndDepthMm">Fitted depth at the last reading, mm.</param>
/// <param name="SquaresMm2">Sum of the squared distances of the readings from it, mm².</param>
public readonly record struct ZoneWear(double MeanDepthMm, MixShare LostOfMixMm, double EndDepthMm, double SquaresMm2);
