using SetupService.Api.Http.Shared;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What a forecast leaves null, and why.</summary>
internal static class ForecastGaps
{
    private const string NotShown = "the wear is not shown to be above zero, so no distance is too long; lower bounds it from below";
    private const string Grows = "by these readings the tread grows with this clock: more or better readings are needed";

    /// <summary>The list; pointers are into the answer.</summary>
    public static UnknownResponse[] Find(ForecastRequest request, CarForecast car)
    {
        var list = new List<UnknownResponse>();
        for (var i = 0; i < car.Tyres.Count; i++)
        {
            var (tyre, path) = (car.Tyres[i].Tread, FormattableString.Invariant($"/tyres/{i}"));
            var readings = path + "/readings";
            foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]) Zone(list, request.Tyres[i], tyre, place, path);
            if (tyre.Fit is null) Add(list, path + "/turning", FormattableString.Invariant($"needs {TreadForecast.FewestReadings} readings at different distances"), readings);
            else if (tyre.Turning is null) Add(list, path + "/turning", ForecastWords.NoChange, readings);
            if (tyre.Ending is null && tyre.OfTyre != ForecastStatus.Unknown) Add(list, path + "/endsFirst", "no zone is estimated to wear down to the limit");
            Cost(list, request, i, tyre, path);
        }

        return [.. list];
    }

    private static void Zone(List<UnknownResponse> list, TyreReadingsDocument given, TreadForecast forecast, TreadPlace place, string tyre)
    {
        var (path, readings) = ($"{tyre}/zones/{ForecastMapper.Word(place)}", tyre + "/readings");
        if (forecast.Zones.At(place) is not { } zone)
        {
            Add(list, path, ForecastWords.NoForecast(forecast, place), readings);
            return;
        }

        var (road, laps) = (Why(forecast, given.Readings[0].RoadKm is not null, "the distance on the road", r => r.RoadKm), Why(forecast, given.Readings[0].TrackLaps is not null, "the laps", r => r.TrackLaps));
        if (zone.RatePer1000KmMm is null) Add(list, path + "/ratePer1000KmMm", road, readings);
        if (zone.RatePerLapMm is null) Add(list, path + "/ratePerLapMm", laps, readings);
        Left(list, path + "/kmLeft", zone.KmLeft, road, readings);
        Left(list, path + "/lapsLeft", zone.LapsLeft, laps, readings);
        if (forecast.Mix is { RoadKm: > 0, TrackLaps: > 0 }) Left(list, path + "/sameMix/lapsLeft", zone.MixesLeft, "", readings);
    }

    private static void Left(List<UnknownResponse> list, string path, RatioRange? left, string whyNoRate, string readings)
    {
        if (left is not { } range) Add(list, path, whyNoRate, readings);
        else if (range.IsUnknown) Add(list, path, Grows, readings);
        else if (!range.IsBounded) Add(list, path + "/upper", NotShown, readings);
    }

    private static string Why(TreadForecast forecast, bool isGiven, string what, Func<TyreUse, double> moved) => forecast.Clock == WearClock.InProportion
        ? "road distance and laps always rose in the same proportion, so their wear cannot be separated; sameMix gives both together"
        : moved(forecast.Mix) > 0 ? Grows : $"{what} {(isGiven ? "stood still between the readings" : "is not given")}";

    private static void Cost(List<UnknownResponse> list, ForecastRequest request, int index, TreadForecast forecast, string path)
    {
        if (request.TyrePrice is null) return;
        if (request.Tyres[index].NewDepthMm is null) Add(list, path + "/cost", "needs newDepthMm", path + "/newDepthMm");
        else if (forecast.OfTyre == ForecastStatus.Unknown) Add(list, path + "/cost", ForecastWords.NoForecast(forecast, TreadPlace.Outer), path + "/readings");
        else if (forecast.Ending is null) Add(list, path + "/cost", "no zone is estimated to wear down to the limit");
    }

    private static void Add(List<UnknownResponse> list, string output, string reason, params string[] needs) =>
        list.Add(UnknownResponse.Create(output, reason, needs));
}
