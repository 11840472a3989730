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
    public static UnknownResponse[] Find(ForecastRequest request, TreadForecast forecast)
    {
        var list = new List<UnknownResponse>();
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]) Zone(list, forecast, place);
        if (forecast.Fit is null) Add(list, "/turning", ForecastWords.NoForecast(forecast), "/readings");
        else if (forecast.Turning is null) Add(list, "/turning", ForecastWords.NoChange, "/readings");
        if (request.OtherTyre is not null && forecast.Swapping is null) Add(list, "/swapping", Swapping(forecast), forecast.Fit is null ? "/readings" : "/otherTyre/readings");
        if (forecast.Ending is null && forecast.Fit is not null) Add(list, "/endsFirst", "no zone is estimated to wear down to the limit");
        Cost(list, request, forecast);
        return [.. list];
    }

    private static void Zone(List<UnknownResponse> list, TreadForecast forecast, TreadPlace place)
    {
        var path = "/zones/" + ForecastMapper.Word(place);
        if (forecast.Zones?.At(place) is not { } zone)
        {
            Add(list, path, ForecastWords.NoForecast(forecast), "/readings");
            return;
        }

        if (zone.RatePer1000KmMm is null) Add(list, path + "/ratePer1000KmMm", Why(forecast.Clock, "the distance on the road"), "/readings");
        if (zone.RatePerLapMm is null) Add(list, path + "/ratePerLapMm", Why(forecast.Clock, "the laps"), "/readings");
        Left(list, path + "/kmLeft", zone.KmLeft, Why(forecast.Clock, "the distance on the road"));
        Left(list, path + "/lapsLeft", zone.LapsLeft, Why(forecast.Clock, "the laps"));
        if (forecast.Mix is { RoadKm: > 0, TrackLaps: > 0 }) Left(list, path + "/sameMix/lapsLeft", zone.MixesLeft, "");
    }

    private static void Left(List<UnknownResponse> list, string path, RatioRange? left, string whyNoRate)
    {
        if (left is not { } range) Add(list, path, whyNoRate, "/readings");
        else if (range.IsUnknown) Add(list, path, Grows, "/readings");
        else if (!range.IsBounded) Add(list, path + "/upper", NotShown, "/readings");
    }

    private static string Why(WearClock clock, string what) => clock == WearClock.InProportion
        ? "road distance and laps always rose in the same proportion, so their wear cannot be separated; sameMix gives both together"
        : $"{what} stood still between the readings";

    private static string Swapping(TreadForecast forecast) => forecast.Fit is null
        ? ForecastWords.NoForecast(forecast)
        : forecast.OtherFit is null
            ? FormattableString.Invariant($"the other tyre needs {TreadForecast.FewestReadings} readings at different distances, too")
            : $"of one of the tyres {ForecastWords.NoChange[..^1]}, or the other's clocks do not show the wear of this one's use";

    private static void Cost(List<UnknownResponse> list, ForecastRequest request, TreadForecast forecast)
    {
        if (request.TyrePrice is null) return;
        if (request.NewDepthMm is not { } newMm) Add(list, "/cost", "needs newDepthMm", "/newDepthMm");
        else if (newMm <= forecast.LimitDepthMm) Add(list, "/cost", "newDepthMm is not above the limit", "/newDepthMm");
        else if (forecast.Fit is null) Add(list, "/cost", ForecastWords.NoForecast(forecast), "/readings");
        else if (forecast.Ending is null) Add(list, "/cost", "no zone is estimated to wear down to the limit");
    }

    private static void Add(List<UnknownResponse> list, string output, string reason, params string[] needs) =>
        list.Add(UnknownResponse.Create(output, reason, needs));
}
