using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>Says what a forecast means.</summary>
public static class ForecastWords
{
    // Readings named one by one; the rest are counted.
    private const int MostNamed = 3;

    // Shares of the use left below which a gain is no gain.
    private const double LeastGain = 0.005;

    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Describe(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast is not { Fit: { } fit, Zones: { } zones }) return [SoFar(forecast, units), NoForecast(forecast)];
        var list = new List<string>();
        if (forecast.Ending is { } ending)
        {
            list.Add(Ends(forecast, ending, zones.At(ending.Place), units));
            list.Add(Rates(ending.Place, zones.At(ending.Place), units));
        }
        else
        {
            list.Add("No zone is estimated to wear down: the readings show no wear beyond what the gauge may err. " + SoFar(forecast, units));
        }

        if (fit.Design.Clock == WearClock.InProportion) list.Add("Kilometres and laps always moved in the same proportion, so what each of them wears cannot be told apart; what is left is told for the two together.");
        list.Add(Scatter(fit, units));
        if (Stray(forecast, units) is { } stray) list.Add(stray);
        if (Turning(forecast, units) is { } turning) list.Add(turning);
        if (Swapping(forecast, units) is { } swapping) list.Add(swapping);
        return list;
    }

    /// <summary>Why there is no forecast.</summary>
    public static string NoForecast(TreadForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast.DistinctReadings < TreadForecast.FewestReadings
            ? FormattableString.Invariant($"A forecast takes {TreadForecast.FewestReadings} readings at different distances, and there are {forecast.DistinctReadings}: with fewer, chance in one reading moves the line as much as wear does.")
            : "Neither kilometres nor laps move by as much as a tenth between the readings, so nothing tells how fast the tread wears.";
    }

    /// <summary>What turning the tyre on its rim brings; null where there is no forecast.</summary>
    public static string? Turning(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.Fit is null) return null;
        if (forecast.Turning is not { } turning) return "What turning the tyre on its rim would gain is not told: " + NoChange;
        var change = turning.Change;
        if (change.Gain <= LeastGain * change.LifeAsItIs) return "Turning the tyre on its rim, so that outer and inner shoulder change places, would gain nothing.";
        var after = change.BestAfter <= LeastGain * change.LifeAsItIs ? "now" : Prose.Write(units, $"after a further {ForecastUnits.Use(units, forecast.Mix, change.BestAfter)}");
        var doubt = turning.IsShown ? "" : " The readings do not show that the shoulders wear at different rates, so the gain may be chance.";
        return Prose.Write(units, $"Turned on its rim {after}, the tyre is estimated to last {ForecastUnits.Use(units, forecast.Mix, change.LifeWhenChanged)} from now in place of {ForecastUnits.Use(units, forecast.Mix, change.LifeAsItIs)}: {ForecastUnits.Use(units, forecast.Mix, change.Gain)} gained.{doubt}");
    }

    /// <summary>What swapping with the other tyre brings; null where no other is given or there is no forecast.</summary>
    public static string? Swapping(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast is not { Swapping: { } swapping }) return null;
        var change = swapping.Change;
        var each = Prose.Write(units, $"In the other's place this tyre is estimated to last {ForecastUnits.Use(units, forecast.Mix, swapping.ThisAtOthersPlace)} (here {ForecastUnits.Use(units, forecast.Mix, swapping.ThisAsItIs)}), the other in this place {ForecastUnits.Use(units, forecast.Mix, swapping.OtherAtThisPlace)} (there {ForecastUnits.Use(units, forecast.Mix, swapping.OtherAsItIs)}).");
        if (change.Gain <= LeastGain * change.LifeAsItIs) return each + " Swapping does not put off when the first of both is done.";
        var after = change.BestAfter <= LeastGain * change.LifeAsItIs ? "now" : Prose.Write(units, $"after a further {ForecastUnits.Use(units, forecast.Mix, change.BestAfter)}");
        return Prose.Write(units, $"{each} Swapped {after}, the first of both is done {ForecastUnits.Use(units, forecast.Mix, change.Gain)} later.");
    }

    /// <summary>Why a change of places is not told.</summary>
    public const string NoChange = "a zone is at the limit, or its wear is not shown to be above zero.";

    private static string SoFar(TreadForecast forecast, UnitSystem units) => Prose.Write(
        units,
        $"From the first reading to the last, over {(forecast.Clock == WearClock.None ? "no distance" : ForecastUnits.Use(units, forecast.Mix, 1))}, the outer shoulder has lost {forecast.WornMm.Outer:mm}, the centre {forecast.WornMm.Centre:mm}, the inner shoulder {forecast.WornMm.Inner:mm}.");

    private static string Ends(TreadForecast forecast, EndingZone ending, ZoneForecast zone, UnitSystem units)
    {
        var name = ForecastUnits.Name(ending.Place);
        var sure = ending.IsToldApart
            ? Prose.Write(units, $"The {name} ends the tyre first (probability {100 * ending.Probability:pct0})")
            : Prose.Write(units, $"The readings do not tell which zone ends the tyre; the {name} is estimated to (probability {100 * ending.Probability:pct0})");
        if (ending.MixesLeft <= 0) return Prose.Write(units, $"{sure}: at {zone.DepthNowMm.Value:mm} it is at or past the limit of {forecast.LimitDepthMm:mm} now.");
        var depth = Prose.Write(units, $"{sure}: it stands at {zone.DepthNowMm.Value:mm} and the limit is {forecast.LimitDepthMm:mm}.");
        var left = zone.MixesLeft;
        return left.IsBounded
            ? Prose.Write(units, $"{depth} Used as so far it has {ForecastUnits.Use(units, forecast.Mix, left.Value!.Value)} left; with 90 % between {ForecastUnits.Use(units, forecast.Mix, left.AtLeast!.Value)} and {ForecastUnits.Use(units, forecast.Mix, left.AtMost!.Value)}.")
            : left.AtLeast is { } least
                ? Prose.Write(units, $"{depth} Its wear is not shown to be above zero; it has at least {ForecastUnits.Use(units, forecast.Mix, least)} left with 95 %.")
                : depth;
    }

    private static string Rates(TreadPlace place, ZoneForecast zone, UnitSystem units)
    {
        var road = zone.RatePer1000KmMm is { } km
            ? Prose.Write(units, $"{ForecastUnits.Per1000(units, km.Value)} on the road ({ForecastUnits.Per1000(units, km.Lower)} to {ForecastUnits.Per1000(units, km.Upper)})")
            : null;
        var track = zone.RatePerLapMm is { } lap
            ? Prose.Write(units, $"{ForecastUnits.Per100Laps(units, lap.Value)} on track ({ForecastUnits.Per100Laps(units, lap.Lower)} to {ForecastUnits.Per100Laps(units, lap.Upper)})")
            : null;
        var both = road is null ? track : track is null ? road : $"{road} and {track}";
        return both is null
            ? Prose.Write(units, $"What a kilometre or a lap alone wears the {ForecastUnits.Name(place)} is not told.")
            : Prose.Write(units, $"The {ForecastUnits.Name(place)} loses {both}.");
    }

    private static string Scatter(WearFit fit, UnitSystem units) => fit.Scatter.IsFloor
        ? Prose.Write(units, $"The readings lie closer to straight wear than a gauge reads; a scatter of {fit.Scatter.StandardDeviationMm:fit} is taken in its place.")
        : Prose.Write(units, $"Single readings scatter by {fit.Scatter.StandardDeviationMm:fit} about straight wear (one standard deviation).");

    private static string? Stray(TreadForecast forecast, UnitSystem units)
    {
        if (forecast.Misfits.Count == 0) return null;
        var named = forecast.Misfits.Take(MostNamed).Select(one => Prose.Write(
            units, $"reading {one.Reading + 1} at the {ForecastUnits.Name(one.Place)} ({Math.Abs(one.AboveLineMm):fit} {(one.AboveLineMm > 0 ? "deeper" : "shallower")})"));
        var more = forecast.Misfits.Count > MostNamed ? FormattableString.Invariant($" and {forecast.Misfits.Count - MostNamed} more") : "";
        return $"Further from straight wear than the gauge errs: {string.Join(", ", named)}{more}. Look for another spot, another gauge, a mistyped reading or a tyre that was new then: the ranges hold for straight wear only.";
    }
}
