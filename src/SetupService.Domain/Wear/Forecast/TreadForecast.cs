using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>How a tyre wears and how long it lasts, from depths read as the clocks ran on.</summary>
public sealed record TreadForecast
{
    /// <summary>
    /// Fewest readings at different distances whose own scatter carries a forecast; the reasoning is in docs/methods/wear-forecast.md. Two or
    /// three give a rough one.
    /// </summary>
    public const int FewestReadings = 4;

    /// <summary>Fewest readings at different distances for a rough forecast.</summary>
    public const int FewestForRough = 2;

    /// <summary>Number of readings at different distances.</summary>
    public required int DistinctReadings { get; init; }

    /// <summary>Depth at which the tyre is done, mm.</summary>
    public required double LimitDepthMm { get; init; }

    /// <summary>First reading minus the last, mm; as read.</summary>
    public required AcrossTread<double> WornMm { get; init; }

    /// <summary>The last reading, mm.</summary>
    public required AcrossTread<double> LastMm { get; init; }

    /// <summary>How far the clocks moved between first and last reading.</summary>
    public required TyreUse Mix { get; init; }

    /// <summary>What wear is counted against.</summary>
    public required WearClock Clock { get; init; }

    /// <summary>The lines; null where there are too few readings for their own scatter.</summary>
    public WearFit? Fit { get; init; }

    /// <summary>Each zone; null where it carries no forecast, rough or not.</summary>
    public AcrossTread<ZoneForecast?> Zones { get; init; }

    /// <summary>The zone that ends the tyre; null where none is estimated to.</summary>
    public EndingZone? Ending { get; init; }

    /// <summary>What turning on the rim brings; null where it is not known.</summary>
    public TurningOnRim? Turning { get; init; }

    /// <summary>Readings further from the line than a gauge errs.</summary>
    public IReadOnlyList<Misfit> Misfits { get; init; } = [];

    /// <summary>What carries the forecast of a zone.</summary>
    public ForecastStatus Status(TreadPlace place) => Zones.At(place) is null ? ForecastStatus.Unknown : Fit is null ? ForecastStatus.Rough : ForecastStatus.Estimated;

    /// <summary>What carries the forecast of the tyre: the best of its zones.</summary>
    public ForecastStatus OfTyre => (ForecastStatus)Math.Min((int)Status(TreadPlace.Outer), Math.Min((int)Status(TreadPlace.Centre), (int)Status(TreadPlace.Inner)));

    /// <summary>True when the readings show that wear slows or quickens, so that the rates are those of the later half.</summary>
    public bool IsCurved => Fit?.Curve is { IsShown: true };

    /// <summary>Least depth of a zone, by the last reading or the fit, whichever is less, mm.</summary>
    public double LeastDepthMm(TreadPlace place) => Fit is { } fit ? Math.Min(LastMm.At(place), fit.EndMm(place)) : LastMm.At(place);

    /// <summary>The forecast.</summary>
    public static TreadForecast Compute(ForecastQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var readings = question.Readings.Span;
        var last = readings[^1].DepthMm;
        var first = question.NewDepthMm is { } newMm && readings.Length == 1 ? new AcrossTread<double>(newMm, newMm, newMm) : readings[0].DepthMm;
        var design = WearDesign.Create(readings);
        var limitMm = question.LimitDepthMm;
        var soFar = new TreadForecast
        {
            DistinctReadings = WearDesign.DistinctCount(readings),
            LimitDepthMm = limitMm,
            WornMm = new(first.Outer - last.Outer, first.Centre - last.Centre, first.Inner - last.Inner),
            LastMm = last,
            Mix = design.Mix,
            Clock = design.Clock,
        };
        if (soFar.DistinctReadings >= FewestReadings && WearFit.FitLate(readings, question.GaugeErrorMm) is { } fit)
        {
            return soFar with
            {
                Fit = fit,
                Zones = new(Zone(fit, TreadPlace.Outer, limitMm), Zone(fit, TreadPlace.Centre, limitMm), Zone(fit, TreadPlace.Inner, limitMm)),
                Ending = EndingZone.Find(fit, limitMm),
                Turning = TurningOnRim.Compute(fit, limitMm),
                Misfits = Misfit.Find(fit, readings, question.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm),
            };
        }

        if (soFar.DistinctReadings < FewestForRough || RoughForecast.Compute(readings, question.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm, limitMm) is not { } rough) return soFar;
        return soFar with { Zones = rough, Ending = EndingZone.Find(rough) };
    }

    private static ZoneForecast? Zone(WearFit fit, TreadPlace place, double limitMm) => fit.Wear(place, fit.Design.Mix) is not { } wear ? null : new ZoneForecast(
        fit.EndDepthMm(place),
        fit.Wear(place, TyreUse.Road1000Km),
        fit.Wear(place, TyreUse.OneLap),
        fit.Left(place, limitMm, TyreUse.Road1000Km)?.Times(TyreUse.Road1000Km.RoadKm),
        fit.Left(place, limitMm, TyreUse.OneLap),
        fit.Left(place, limitMm, fit.Design.Mix)!.Value)
    {
        WearPerMixMm = wear,
    };
}

/// <summary>What a forecast starts from.</summary>
public sealed record ForecastQuestion
{
    /// <summary>The readings of the tyre, in the order they were taken; both clocks run on.</summary>
    public required ReadOnlyMemory<DepthReading> Readings { get; init; }

    /// <summary>Depth at which the tyre is done, mm.</summary>
    public double LimitDepthMm { get; init; } = TreadDepths.LegalLeastMm;

    /// <summary>Stated standard deviation of one reading, mm; null where it is not stated.</summary>
    public double? GaugeErrorMm { get; init; }

    /// <summary>Depth when new, mm; null where it is not known. Only the wear so far of a single reading uses it.</summary>
    public double? NewDepthMm { get; init; }
}

/// <summary>Whether readings carry a forecast.</summary>
public enum ForecastStatus
{
    /// <summary>They do, by their own scatter.</summary>
    Estimated,

    /// <summary>There are two or three: the gauge's error and a usual wear rate stand in for their scatter.</summary>
    Rough,

    /// <summary>They do not: only the wear so far is known.</summary>
    Unknown,
}

/// <summary>How a zone wears and how long it lasts.</summary>
/// <param name="DepthNowMm">Depth at the last reading by the fit, mm.</param>
/// <param name="RatePer1000KmMm">Wear on the road, mm per 1000 km; null where the readings do not separate it.</param>
/// <param name="RatePerLapMm">Wear on track, mm per lap; null in the same case.</param>
/// <param name="KmLeft">Kilometres left if the tyre sees the road only, km.</param>
/// <param name="LapsLeft">Laps left if it sees the track only.</param>
/// <param name="MixesLeft">How many times the use between first and last reading is left.</param>
public readonly record struct ZoneForecast(
    Uncertainty DepthNowMm, Uncertainty? RatePer1000KmMm, Uncertainty? RatePerLapMm, RatioRange? KmLeft, RatioRange? LapsLeft, RatioRange MixesLeft)
{
    /// <summary>Wear of the use between first and last reading, mm, at the rates to come.</summary>
    public required Uncertainty WearPerMixMm { get; init; }
}
