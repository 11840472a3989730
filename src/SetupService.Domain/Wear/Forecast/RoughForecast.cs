using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>
/// What wear rates are before a tyre is read, as log-normal distributions. Road: the mean abrasion of some 300 published measurements comes to
/// 0.106 mm per 1000 km, a government report on tyre pressure has 0.088. Their widths, and all of the track, are judgement without a source.
/// </summary>
public static class UsualRates
{
    /// <summary>Median on the road, mm per 1000 km.</summary>
    public const double RoadPer1000KmMm = 0.1;

    /// <summary>Nine zones in ten wear between a third and three times that.</summary>
    public const double RoadFactor = 3;

    /// <summary>Median on track, mm per lap.</summary>
    public const double TrackPerLapMm = 0.015;

    /// <summary>Nine zones in ten wear between a fifth and five times that.</summary>
    public const double TrackFactor = 5;
}

/// <summary>
/// A forecast from two or three readings, which leave no scatter to judge them by: the gauge's error gives the likelihood of the rates,
/// <see cref="UsualRates"/> their prior, and <see cref="RoughPosterior"/> sums their product.
/// </summary>
internal static class RoughForecast
{
    /// <summary>The three zones; null where no clock moves. A zone is null where by its readings tread grows by more than the gauge errs.</summary>
    public static AcrossTread<ZoneForecast?>? Compute(ReadOnlySpan<DepthReading> readings, double gaugeErrorMm, double limitMm)
    {
        var design = WearDesign.Create(readings);
        if (design.Clock == WearClock.None) return null;
        var posterior = new RoughPosterior(design, gaugeErrorMm);
        return new(
            Zone(posterior, design.Fit(readings, TreadPlace.Outer), limitMm),
            Zone(posterior, design.Fit(readings, TreadPlace.Centre), limitMm),
            Zone(posterior, design.Fit(readings, TreadPlace.Inner), limitMm));
    }

    private static ZoneForecast? Zone(RoughPosterior posterior, in ZoneWear fit, double limitMm)
    {
        if (!posterior.TryPlace(fit)) return null;
        var (clock, mix) = (posterior.Design.Clock, posterior.Design.Mix);
        var (wear, left) = (posterior.Lost(1, 1), posterior.Left(limitMm, 1, 1));
        var isBoth = clock == WearClock.Both;
        var isRoad = isBoth || clock == WearClock.Road;
        var isTrack = isBoth || clock == WearClock.Track;
        return new ZoneForecast(
            posterior.DepthNow(),
            isRoad ? Scaled(isBoth ? posterior.Lost(1, 0) : wear, 1000 / mix.RoadKm) : null,
            isTrack ? Scaled(isBoth ? posterior.Lost(0, 1) : wear, 1 / mix.TrackLaps) : null,
            isRoad ? (isBoth ? posterior.Left(limitMm, 1, 0) : left).Times(mix.RoadKm) : null,
            isTrack ? (isBoth ? posterior.Left(limitMm, 0, 1) : left).Times(mix.TrackLaps) : null,
            left)
        { WearPerMixMm = wear };
    }

    private static Uncertainty Scaled(in Uncertainty range, double factor) => new(range.Value * factor, range.Lower * factor, range.Upper * factor, range.LevelPct);
}

/// <summary>What the mix usually wears by one clock: a log-normal distribution.</summary>
/// <param name="MedianMm">Median, mm.</param>
/// <param name="LogDeviation">Standard deviation of the logarithm.</param>
internal readonly record struct UsualWear(double MedianMm, double LogDeviation)
{
    /// <summary>On the road.</summary>
    public static UsualWear Road(TyreUse mix) => new(UsualRates.RoadPer1000KmMm * mix.RoadKm / 1000, Deviation(UsualRates.RoadFactor));

    /// <summary>On track.</summary>
    public static UsualWear Track(TyreUse mix) => new(UsualRates.TrackPerLapMm * mix.TrackLaps, Deviation(UsualRates.TrackFactor));

    /// <summary>Both together, as wide as the wider.</summary>
    public static UsualWear Together(in UsualWear one, in UsualWear other) => new(one.MedianMm + other.MedianMm, Math.Max(one.LogDeviation, other.LogDeviation));

    /// <summary>Where prior and readings both leave wear possible, mm; null where the readings have no wear above zero.</summary>
    /// <param name="freeMm">Wear by the readings alone, mm; negative where depth grows.</param>
    /// <param name="errorMm">Its standard error, mm.</param>
    /// <param name="reach">How many standard deviations are possible.</param>
    public (double From, double To)? Range(double freeMm, double errorMm, double reach)
    {
        var (most, least) = (freeMm + (reach * errorMm), freeMm - (reach * errorMm));
        if (most <= 0) return null;
        var from = Math.Max(MedianMm * Math.Exp(-reach * LogDeviation), least);
        var to = Math.Min(MedianMm * Math.Exp(reach * LogDeviation), most);

        // Readings beyond all that is usual are believed, as far as they reach.
        return to > from ? (from, to) : (Math.Max(least, most / 100), most);
    }

    private static double Deviation(double factor) => Math.Log(factor) / Uncertainty.StandardErrorsAtNinetyPct;
}
