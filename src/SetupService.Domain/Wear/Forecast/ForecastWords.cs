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

    /// <summary>What it means in at most five sentences: what ends the tyre and when, how fast, what stands against it, what gains most.</summary>
    public static string Summary(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast is not { Fit: { } fit, Zones: { } zones }) return $"{SoFar(forecast, units)} {NoForecast(forecast)}";
        var list = new List<string>();
        list.Add(Headline(forecast, units));
        if (fit.Design.Clock == WearClock.InProportion) list.Add("Road distance and laps always rose in the same proportion, so their wear cannot be separated; the life left is given for both together.");
        else if (forecast.Ending is { } first) list.Add(Rates(forecast, first.Place, units));
        if (Stray(forecast, units) is { } stray) list.Add(stray);
        else if (BestMove(forecast, units) is { } move) list.Add(move);
        return string.Join(' ', list);
    }

    /// <summary>Which zone ends the tyre and what is left; without a forecast what has worn so far.</summary>
    public static string Headline(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast switch
        {
            { Fit: null } or { Zones: null } => SoFar(forecast, units),
            { Ending: { } ending, Zones: { } zones } => Ends(forecast, ending, zones.At(ending.Place), units),
            _ => "No zone is measurably wearing: the readings differ by no more than the gauge error. " + SoFar(forecast, units),
        };
    }

    /// <summary>Turning or swapping, whichever gains more; null where neither gains.</summary>
    private static string? BestMove(TreadForecast forecast, UnitSystem units)
    {
        var turned = forecast.Turning is { Change: var turn } && turn.Gain > LeastGain * turn.LifeAsItIs ? turn.Gain : 0;
        var swapped = forecast.Swapping is { Change: var swap } && swap.Gain > LeastGain * swap.LifeAsItIs ? swap.Gain : 0;
        if (turned == 0 && swapped == 0) return null;
        if (turned >= swapped) return Turning(forecast, units);
        var change = forecast.Swapping!.Value.Change;
        return Prose.Write(units, $"Swap it with the other tyre {When(forecast, change, units)}: the first replacement comes {ForecastUnits.Use(units, forecast.Mix, change.Gain)} later.");
    }

    private static string When(TreadForecast forecast, in PlaceChange change, UnitSystem units) =>
        change.BestAfter <= LeastGain * change.LifeAsItIs ? "now" : ForecastUnits.After(units, forecast.Mix, change.BestAfter);

    /// <summary>Why there is no forecast.</summary>
    public static string NoForecast(TreadForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast.DistinctReadings < TreadForecast.FewestReadings
            ? FormattableString.Invariant($"A forecast needs {TreadForecast.FewestReadings} readings at different distances; there are {forecast.DistinctReadings}. With fewer, the error of one reading moves the line as much as wear does.")
            : "Road distance and laps change by less than 0.1 between the readings, so no wear rate can be found.";
    }

    /// <summary>What turning the tyre on its rim brings; null where there is no forecast.</summary>
    public static string? Turning(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.Fit is null) return null;
        if (forecast.Turning is not { } turning) return "The gain from turning the tyre on its rim is unknown: " + NoChange;
        var change = turning.Change;
        if (change.Gain <= LeastGain * change.LifeAsItIs) return "Turning the tyre on its rim gains nothing.";
        var doubt = turning.IsShown ? "" : " The readings show no difference between the shoulders' rates, so the gain may be chance.";
        return Prose.Write(units, $"Turn the tyre on its rim {When(forecast, change, units)}: it then lasts an estimated {ForecastUnits.Use(units, forecast.Mix, change.LifeWhenChanged)} from now instead of {ForecastUnits.Use(units, forecast.Mix, change.LifeAsItIs)}, a gain of {ForecastUnits.Use(units, forecast.Mix, change.Gain)}.{doubt}");
    }

    /// <summary>What swapping with the other tyre brings; null where no other is given or there is no forecast.</summary>
    public static string? Swapping(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast is not { Swapping: { } swapping }) return null;
        var change = swapping.Change;
        var each = Prose.Write(units, $"In the other position this tyre lasts an estimated {ForecastUnits.Use(units, forecast.Mix, swapping.ThisAtOthersPlace)} ({ForecastUnits.Use(units, forecast.Mix, swapping.ThisAsItIs)} here); the other tyre lasts {ForecastUnits.Use(units, forecast.Mix, swapping.OtherAtThisPlace)} in this position ({ForecastUnits.Use(units, forecast.Mix, swapping.OtherAsItIs)} in its own).");
        if (change.Gain <= LeastGain * change.LifeAsItIs) return each + " Swapping does not delay the first replacement.";
        return Prose.Write(units, $"{each} Swap them {When(forecast, change, units)}: the first replacement comes {ForecastUnits.Use(units, forecast.Mix, change.Gain)} later.");
    }

    /// <summary>Why a change of places is not known.</summary>
    public const string NoChange = "a zone is at the limit, or its wear is not measurably above zero.";

    private static string SoFar(TreadForecast forecast, UnitSystem units) => Prose.Write(
        units,
        $"From the first reading to the last, over {(forecast.Clock == WearClock.None ? "no distance" : ForecastUnits.Use(units, forecast.Mix, 1))}, the outer shoulder lost {forecast.WornMm.Outer:tread}, the centre {forecast.WornMm.Centre:tread}, the inner shoulder {forecast.WornMm.Inner:tread}.");

    private static string Ends(TreadForecast forecast, EndingZone ending, ZoneForecast zone, UnitSystem units)
    {
        var name = ForecastUnits.Name(ending.Place);
        var sure = ending.IsToldApart
            ? Prose.Write(units, $"The {name} ends the tyre first (probability {100 * ending.Probability:pct0})")
            : Prose.Write(units, $"The readings do not show which zone ends the tyre; most likely the {name} (probability {100 * ending.Probability:pct0})");
        if (ending.MixesLeft <= 0) return Prose.Write(units, $"{sure}: at {zone.DepthNowMm.Value:tread} it is at or past the limit of {forecast.LimitDepthMm:tread} now.");
        var depth = Prose.Write(units, $"{sure}: it has {zone.DepthNowMm.Value:tread}, and the limit is {forecast.LimitDepthMm:tread}.");
        var left = zone.MixesLeft;
        return left.IsBounded
            ? Prose.Write(units, $"{depth} Used as before it has {ForecastUnits.Use(units, forecast.Mix, left.Value!.Value)} left (90 % range {ForecastUnits.MainUse(units, forecast.Mix, left.Lower!.Value)} to {ForecastUnits.MainUse(units, forecast.Mix, left.Upper!.Value)}).")
            : left.Lower is { } least
                ? Prose.Write(units, $"{depth} Its wear is not measurably above zero; it has at least {ForecastUnits.Use(units, forecast.Mix, least)} left (95 %).")
                : depth;
    }

    /// <summary>How fast a zone wears on road and track; why that is unknown without a forecast.</summary>
    public static string Rates(TreadForecast forecast, TreadPlace place, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.Zones is not { } zones) return NoForecast(forecast);
        var zone = zones.At(place);
        var road = zone.RatePer1000KmMm is { } km
            ? Prose.Write(units, $"{ForecastUnits.Per1000(units, km.Value)} on the road ({ForecastUnits.On1000(units, km.Lower)} to {ForecastUnits.On1000(units, km.Upper)})")
            : null;
        var track = zone.RatePerLapMm is { } lap
            ? Prose.Write(units, $"{ForecastUnits.Per100Laps(units, lap.Value)} on track ({100 * lap.Lower:treadFine} to {100 * lap.Upper:treadFine})")
            : null;
        var both = road is null ? track : track is null ? road : $"{road} and {track}";
        return both is null
            ? Prose.Write(units, $"The wear of the {ForecastUnits.Name(place)} by road distance and by lap is unknown.")
            : Prose.Write(units, $"The {ForecastUnits.Name(place)} loses {both}.");
    }

    private static string? Stray(TreadForecast forecast, UnitSystem units)
    {
        if (forecast.Misfits.Count == 0) return null;
        var named = forecast.Misfits.Take(MostNamed).Select(one => Prose.Write(
            units, $"reading {one.Reading + 1} at the {ForecastUnits.Name(one.Place)} ({Math.Abs(one.AboveLineMm):treadFine} {(one.AboveLineMm > 0 ? "deeper" : "shallower")})"));
        var more = forecast.Misfits.Count > MostNamed ? FormattableString.Invariant($" and {forecast.Misfits.Count - MostNamed} more") : "";
        return $"Off the straight line by more than the gauge error: {string.Join(", ", named)}{more}. Suspect another spot, another gauge, a typing error or a tyre that was new then; the ranges hold for straight wear only.";
    }
}
