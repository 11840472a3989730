using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Maps a forecast to the answer.</summary>
internal static class ForecastMapper
{
    /// <summary>The forecast of a request.</summary>
    public static CarForecast Compute(ForecastRequest request) => CarForecast.Compute([.. request.Tyres.Select(tyre => (tyre.Position, new ForecastQuestion
    {
        Readings = tyre.ToDomain(),
        LimitDepthMm = request.LimitDepthMm ?? TreadDepths.LegalLeastMm,
        GaugeErrorMm = tyre.GaugeErrorMm,
        NewDepthMm = tyre.NewDepthMm,
    }))]);

    /// <summary>The answer.</summary>
    public static ForecastAnswer ToAnswer(ForecastRequest request, CarForecast car, UnitSystem units) => new()
    {
        Summary = ForecastWords.Summary(car, units),
        Tyres = [.. car.Tyres.Select((tyre, index) => Tyre(request, tyre, index, units))],
        Swaps = [.. car.Swaps.Select(swap => Swapping(swap, units))],
        LimitDepthMm = request.LimitDepthMm ?? TreadDepths.LegalLeastMm,
        Treadwear = Treadwear(request, units),
        Unknown = ForecastGaps.Find(request, car),
        Method = "wear-forecast",
        Edition = Edition.Current,
        Next = NextCalls.AfterForecast,
        Assumptions = ForecastAssumptions.List(request, car),
        Cautions = CautionResponse.From(ForecastCautions.Build(car, units)),
    };

    /// <summary>The name of a zone as the contract's members have it.</summary>
    public static string Word(TreadPlace place) => place switch { TreadPlace.Outer => "outer", TreadPlace.Centre => "centre", _ => "inner" };

    private static TyreForecastResponse Tyre(ForecastRequest request, TyreForecast tyre, int index, UnitSystem units)
    {
        var forecast = tyre.Tread;
        return new TyreForecastResponse
        {
            Position = tyre.Position,
            Text = ForecastWords.Describe(forecast, units),
            Zones = new ForecastZonesResponse
            {
                Outer = Zone(forecast, TreadPlace.Outer, units),
                Centre = Zone(forecast, TreadPlace.Centre, units),
                Inner = Zone(forecast, TreadPlace.Inner, units),
            },
            EndsFirst = forecast.Ending is { } ending ? new() { Zone = ending.Place, Probability = ending.Probability, IsToldApart = ending.IsToldApart } : null,
            IsCurved = forecast.IsCurved,
            DistinctReadings = forecast.DistinctReadings,
            ScatterMm = forecast.Fit?.Scatter.StandardDeviationMm,
            DegreesOfFreedom = forecast.Fit?.Scatter.DegreesOfFreedom,
            Misfits = [.. forecast.Misfits.Select(one => new MisfitResponse { Input = Depth(request, index, one.Reading, one.Place), Zone = one.Place, AboveLineMm = one.AboveLineMm })],
            Turning = forecast.Turning is { } turning ? new() { Text = ForecastWords.Turning(forecast, units)!, Change = Change(forecast.Mix, turning.Change), IsShown = turning.IsShown } : null,
            Cost = Cost(request, index, forecast),
        };
    }

    private static string Depth(ForecastRequest request, int tyre, int reading, TreadPlace place)
    {
        var path = FormattableString.Invariant($"/tyres/{tyre}/readings/{reading}/");
        return request.Tyres[tyre].Readings[reading].Zones is null ? $"{path}depthMm/{Word(place)}" : path + "zones";
    }

    private static ForecastZoneResponse Zone(TreadForecast forecast, TreadPlace place, UnitSystem units)
    {
        var zone = forecast.Zones.At(place);
        return new ForecastZoneResponse
        {
            Status = forecast.Status(place),
            Reason = zone is null ? ForecastWords.NoForecast(forecast, place) : null,
            Text = ForecastWords.Rates(forecast, place, units),
            WornMm = forecast.WornMm.At(place),
            DepthNowMm = UncertaintyResponse.From(zone?.DepthNowMm),
            RatePer1000KmMm = UncertaintyResponse.From(zone?.RatePer1000KmMm),
            RatePerLapMm = UncertaintyResponse.From(zone?.RatePerLapMm),
            KmLeft = UncertaintyResponse.From(zone?.KmLeft),
            LapsLeft = UncertaintyResponse.From(zone?.LapsLeft),
            SameMix = zone is { } known && HasMix(forecast.Mix) ? SameMix(forecast.Mix, known) : null,
        };
    }

    private static SameMixResponse SameMix(TyreUse mix, in ZoneForecast zone) => new()
    {
        RoadPerLapKm = mix.RoadKm / mix.TrackLaps,
        WearPerLapMm = UncertaintyResponse.From(PerLapOfMix(mix, zone)),
        LapsLeft = UncertaintyResponse.From(zone.MixesLeft.Times(mix.TrackLaps)),
        KmLeft = UncertaintyResponse.From(zone.MixesLeft.Times(mix.RoadKm)),
    };

    private static Uncertainty PerLapOfMix(TyreUse mix, in ZoneForecast zone)
    {
        var wear = zone.WearPerMixMm;
        return new(wear.Value / mix.TrackLaps, wear.Lower / mix.TrackLaps, wear.Upper / mix.TrackLaps, wear.LevelPct);
    }

    private static WearCostResponse? Cost(ForecastRequest request, int index, TreadForecast forecast)
    {
        if (request.TyrePrice is not { } price || request.Tyres[index].NewDepthMm is not { } newMm || forecast.Ending is not { } ending) return null;
        var usableMm = newMm - forecast.LimitDepthMm;
        if (usableMm <= 0) return null;
        var zone = forecast.Zones.At(ending.Place)!.Value;
        return new WearCostResponse
        {
            Currency = price.Currency,
            Zone = ending.Place,
            UsableDepthMm = usableMm,
            PerLapAmount = Amount(zone.RatePerLapMm),
            Per1000KmAmount = Amount(zone.RatePer1000KmMm),
            PerLapOfMixAmount = HasMix(forecast.Mix) ? Amount(PerLapOfMix(forecast.Mix, zone)) : null,
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

    private static SwappingResponse Swapping(TyreSwap swap, UnitSystem units)
    {
        var (mix, swapping) = (swap.One.Tread.Mix, swap.Swapping);
        return new SwappingResponse
        {
            One = swap.One.Position,
            Other = swap.Other.Position,
            Text = ForecastWords.Swapping(swap, units),
            Change = Change(mix, swapping.Change),
            OneAsItIs = Life(mix, swapping.ThisAsItIs),
            OneSwapped = Life(mix, swapping.ThisAtOthersPlace),
            OtherAsItIs = Life(mix, swapping.OtherAsItIs),
            OtherSwapped = Life(mix, swapping.OtherAtThisPlace),
        };
    }

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
