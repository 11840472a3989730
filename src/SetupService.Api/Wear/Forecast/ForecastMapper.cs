using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Maps a forecast to the answer.</summary>
internal static class ForecastMapper
{
    /// <summary>The answer.</summary>
    public static ForecastAnswer ToAnswer(ForecastRequest request, TreadForecast forecast, UnitSystem units)
    {
        var treadwear = Treadwear(request, units);
        return new ForecastAnswer
        {
            Summary = ForecastWords.Summary(forecast, units),
            Zones = new ForecastZonesResponse
            {
                Outer = Zone(forecast, TreadPlace.Outer, units),
                Centre = Zone(forecast, TreadPlace.Centre, units),
                Inner = Zone(forecast, TreadPlace.Inner, units),
            },
            EndsFirst = forecast.Ending is { } ending ? new() { Zone = ending.Place, Probability = ending.Probability, IsToldApart = ending.IsToldApart } : null,
            LimitDepthMm = forecast.LimitDepthMm,
            DistinctReadings = forecast.DistinctReadings,
            ScatterMm = forecast.Fit?.Scatter.StandardDeviationMm,
            DegreesOfFreedom = forecast.Fit?.Scatter.DegreesOfFreedom,
            Misfits = [.. forecast.Misfits.Select(one => new MisfitResponse { Input = $"/readings/{one.Reading}/depthMm/{Word(one.Place)}", Zone = one.Place, AboveLineMm = one.AboveLineMm })],
            Turning = forecast.Turning is { } turning ? new() { Text = ForecastWords.Turning(forecast, units)!, Change = Change(forecast.Mix, turning.Change), IsShown = turning.IsShown } : null,
            Swapping = forecast.Swapping is { } swapping ? Swapping(forecast, swapping, units) : null,
            Cost = Cost(request, forecast),
            Treadwear = treadwear,
            Unknown = ForecastGaps.Find(request, forecast),
            Method = "wear-forecast",
            Edition = Edition.Current,
            Assumptions = ForecastAssumptions.List(request, forecast),
            Cautions = CautionResponse.From(ForecastCautions.Build(forecast, units)),
        };
    }

    /// <summary>The name of a zone as the contract's members have it.</summary>
    public static string Word(TreadPlace place) => place switch { TreadPlace.Outer => "outer", TreadPlace.Centre => "centre", _ => "inner" };

    private static ForecastZoneResponse Zone(TreadForecast forecast, TreadPlace place, UnitSystem units)
    {
        var zone = forecast.Zones?.At(place);
        return new ForecastZoneResponse
        {
            Status = forecast.Status,
            Reason = forecast.Status == ForecastStatus.Unknown ? ForecastWords.NoForecast(forecast) : null,
            Text = ForecastWords.Rates(forecast, place, units),
            WornMm = forecast.WornMm.At(place),
            DepthNowMm = UncertaintyResponse.From(zone?.DepthNowMm),
            RatePer1000KmMm = UncertaintyResponse.From(zone?.RatePer1000KmMm),
            RatePerLapMm = UncertaintyResponse.From(zone?.RatePerLapMm),
            KmLeft = UncertaintyResponse.From(zone?.KmLeft),
            LapsLeft = UncertaintyResponse.From(zone?.LapsLeft),
            SameMix = zone is { } known && HasMix(forecast.Mix) ? SameMix(forecast, known, place) : null,
        };
    }

    private static SameMixResponse SameMix(TreadForecast forecast, in ZoneForecast zone, TreadPlace place)
    {
        var mix = forecast.Mix;
        return new SameMixResponse
        {
            RoadPerLapKm = mix.RoadKm / mix.TrackLaps,
            WearPerLapMm = UncertaintyResponse.From(PerLapOfMix(forecast, place)),
            LapsLeft = UncertaintyResponse.From(zone.MixesLeft.Times(mix.TrackLaps)),
            KmLeft = UncertaintyResponse.From(zone.MixesLeft.Times(mix.RoadKm)),
        };
    }

    private static Uncertainty PerLapOfMix(TreadForecast forecast, TreadPlace place) =>
        forecast.Fit!.Wear(place, new TyreUse(forecast.Mix.RoadKm / forecast.Mix.TrackLaps, 1))!.Value;

    private static WearCostResponse? Cost(ForecastRequest request, TreadForecast forecast)
    {
        if (request is not { TyrePrice: { } price, NewDepthMm: { } newMm } || forecast is not { Ending: { } ending, Zones: { } zones }) return null;
        var usableMm = newMm - forecast.LimitDepthMm;
        if (usableMm <= 0) return null;
        var zone = zones.At(ending.Place);
        return new WearCostResponse
        {
            Currency = price.Currency,
            Zone = ending.Place,
            UsableDepthMm = usableMm,
            PerLapAmount = Amount(zone.RatePerLapMm),
            Per1000KmAmount = Amount(zone.RatePer1000KmMm),
            PerLapOfMixAmount = HasMix(forecast.Mix) ? Amount(PerLapOfMix(forecast, ending.Place)) : null,
        };

        UncertaintyResponse? Amount(Uncertainty? wearMm) => wearMm is { } wear ? UncertaintyResponse.From(RunningCost.Compute(wear, usableMm, price.Amount)) : null;
    }

    private static TreadwearResponse? Treadwear(ForecastRequest request, UnitSystem units)
    {
        if (request.TreadwearGrade is not { } grade) return null;
        return new TreadwearResponse
        {
            Grade = grade,
            CourseKm = TreadwearGrade.CourseKm(grade),
            OtherGrade = request.OtherTreadwearGrade,
            LifeRatio = request.OtherTreadwearGrade is { } other ? UncertaintyResponse.From(TreadwearGrade.LifeRatio(grade, other)) : null,
            Text = TreadwearWords.Describe(grade, request.OtherTreadwearGrade, units),
        };
    }

    private static SwappingResponse Swapping(TreadForecast forecast, in SwappingTyres swapping, UnitSystem units) => new()
    {
        Text = ForecastWords.Swapping(forecast, units)!,
        Change = Change(forecast.Mix, swapping.Change),
        ThisHere = Life(forecast.Mix, swapping.ThisAsItIs),
        ThisThere = Life(forecast.Mix, swapping.ThisAtOthersPlace),
        OtherThere = Life(forecast.Mix, swapping.OtherAsItIs),
        OtherHere = Life(forecast.Mix, swapping.OtherAtThisPlace),
    };

    private static ChangeOfPlaceResponse Change(TyreUse mix, in PlaceChange change) => new()
    {
        BestAfterLaps = Laps(mix, change.BestAfter),
        BestAfterKm = Km(mix, change.BestAfter),
        LapsLeft = Laps(mix, change.LifeWhenChanged),
        KmLeft = Km(mix, change.LifeWhenChanged),
        GainedLaps = Laps(mix, change.Gain),
        GainedKm = Km(mix, change.Gain),
    };

    private static TyreLifeResponse Life(TyreUse mix, double mixes) => new() { LapsLeft = Laps(mix, mixes), KmLeft = Km(mix, mixes) };

    private static double? Laps(TyreUse mix, double mixes) => mix.TrackLaps > 0 ? mix.TrackLaps * mixes : null;

    private static double? Km(TyreUse mix, double mixes) => mix.RoadKm > 0 ? mix.RoadKm * mixes : null;

    private static bool HasMix(TyreUse mix) => mix is { RoadKm: > 0, TrackLaps: > 0 };
}
