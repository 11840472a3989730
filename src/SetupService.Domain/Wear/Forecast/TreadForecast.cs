using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>How a tyre wears and how long it lasts, from depths read as the clocks ran on.</summary>
public sealed record TreadForecast
{
    /// <summary>
    /// Fewest readings at different distances that carry a forecast: with fewer, chance in one of them turns the line by as much as wear does.
    /// The reasoning is in docs/methods/wear-forecast.md.
    /// </summary>
    public const int FewestReadings = 4;

    /// <summary>Whether the readings carry a forecast.</summary>
    public ForecastStatus Status => Zones is null ? ForecastStatus.Unknown : ForecastStatus.Estimated;

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

    /// <summary>The straight lines; null where the readings do not carry a forecast.</summary>
    public WearFit? Fit { get; init; }

    /// <summary>Each zone; null in the same case.</summary>
    public AcrossTread<ZoneForecast>? Zones { get; init; }

    /// <summary>The zone that ends the tyre; null where none is estimated to.</summary>
    public EndingZone? Ending { get; init; }

    /// <summary>What turning on the rim brings; null where it is not known.</summary>
    public TurningOnRim? Turning { get; init; }

    /// <summary>The other tyre's lines; null where it is not given or its readings do not carry a forecast.</summary>
    public WearFit? OtherFit { get; init; }

    /// <summary>What swapping with the other brings; null where it is not known.</summary>
    public SwappingTyres? Swapping { get; init; }

    /// <summary>Readings further from the line than a gauge errs.</summary>
    public IReadOnlyList<Misfit> Misfits { get; init; } = [];

    /// <summary>Least depth of a zone, by the last reading or the fit, whichever is less, mm.</summary>
    public double LeastDepthMm(TreadPlace place) =>
        Fit is { } fit ? Math.Min(LastMm.At(place), fit.Zones.At(place).EndDepthMm) : LastMm.At(place);

    /// <summary>The forecast.</summary>
    public static TreadForecast Compute(ForecastQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var readings = question.Readings.Span;
        var (first, last) = (readings[0].DepthMm, readings[^1].DepthMm);
        var design = WearDesign.Create(readings);
        var soFar = new TreadForecast
        {
            DistinctReadings = WearDesign.DistinctCount(readings),
            LimitDepthMm = question.LimitDepthMm,
            WornMm = new(first.Outer - last.Outer, first.Centre - last.Centre, first.Inner - last.Inner),
            LastMm = last,
            Mix = design.Mix,
            Clock = design.Clock,
        };
        if (Fitted(readings, question.GaugeErrorMm) is not { } fit) return soFar;
        var other = Fitted(question.OtherReadings.Span, question.GaugeErrorMm);
        var limitMm = question.LimitDepthMm;
        return soFar with
        {
            Fit = fit,
            Zones = new(Zone(fit, TreadPlace.Outer, limitMm), Zone(fit, TreadPlace.Centre, limitMm), Zone(fit, TreadPlace.Inner, limitMm)),
            Ending = EndingZone.Find(fit, limitMm),
            Turning = TurningOnRim.Compute(fit, limitMm),
            OtherFit = other,
            Swapping = other is null ? null : SwappingTyres.Compute(fit, other, limitMm),
            Misfits = Misfit.Find(fit, readings, question.GaugeErrorMm ?? TreadDepths.UsualGaugeErrorMm),
        };
    }

    /// <summary>The lines of one tyre; null where its readings do not carry a forecast.</summary>
    private static WearFit? Fitted(ReadOnlySpan<DepthReading> readings, double? gaugeErrorMm) =>
        WearDesign.DistinctCount(readings) >= FewestReadings ? WearFit.Fit(readings, gaugeErrorMm) : null;

    private static ZoneForecast Zone(WearFit fit, TreadPlace place, double limitMm) => new(
        fit.EndDepthMm(place),
        fit.Wear(place, TyreUse.Road1000Km),
        fit.Wear(place, TyreUse.OneLap),
        fit.Left(place, limitMm, TyreUse.Road1000Km)?.Times(TyreUse.Road1000Km.RoadKm),
        fit.Left(place, limitMm, TyreUse.OneLap),
        fit.Left(place, limitMm, fit.Design.Mix)!.Value);
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

    /// <summary>The readings of a tyre this one may change places with; empty where there is none.</summary>
    public ReadOnlyMemory<DepthReading> OtherReadings { get; init; }
}

/// <summary>Whether readings carry a forecast.</summary>
public enum ForecastStatus
{
    /// <summary>They do.</summary>
    Estimated,

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
    Uncertainty DepthNowMm, Uncertainty? RatePer1000KmMm, Uncertainty? RatePerLapMm, RatioRange? KmLeft, RatioRange? LapsLeft, RatioRange MixesLeft);
