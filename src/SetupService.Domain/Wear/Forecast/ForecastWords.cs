using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
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

    /// <summary>What it means for the car in at most five sentences: the tyre that is done first and when, how fast it wears, what stands against it, what gains most.</summary>
    public static string Summary(CarForecast car, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        var first = car.First();
        if (first is not { Tread: { Ending: { } ending } tread }) return NothingEnds(car, units);
        var list = new List<string>
        {
            Lead(car, units),
            tread.Clock == WearClock.InProportion
                ? "Road distance and laps always rose in the same proportion, so their wear cannot be separated; the life left is given for both together."
                : Rates(tread, ending.Place, units),
        };
        if (Stray(tread, units) is { } stray) list.Add(stray);
        else if (BestMove(car, units) is { } move) list.Add(move);
        var unread = car.Tyres.Where(tyre => tyre.Tread.OfTyre == ForecastStatus.Unknown).Select(tyre => CorneringWords.Name(tyre.Position)).ToList();
        if (unread.Count > 0) list.Add($"No forecast for the {string.Join(" and the ", unread)}.");
        return string.Join(' ', list);
    }

    /// <summary>The tyre that is done first, and when.</summary>
    public static string Lead(CarForecast car, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        return car.First() is { Tread.Ending: not null } first ? Prose.Write(units, $"{Capital(first.Position)}: {Headline(first.Tread, units)}") : NothingEnds(car, units);
    }

    /// <summary>Which zone ends the tyre and what is left; without a forecast what has worn so far and why there is none.</summary>
    public static string Describe(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        var bend = forecast.IsCurved ? " " + Bend(forecast) : "";
        return forecast.OfTyre == ForecastStatus.Unknown
            ? $"{SoFar(forecast, units)} {NoForecast(forecast, TreadPlace.Outer)}"
            : Headline(forecast, units) + bend + (Stray(forecast, units) is { } stray ? " " + stray : "");
    }

    /// <summary>Which zone ends the tyre and what is left; what has worn so far where none is estimated to.</summary>
    public static string Headline(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast switch
        {
            { Ending: { } ending } => Ends(forecast, ending, forecast.Zones.At(ending.Place)!.Value, units),
            { OfTyre: ForecastStatus.Unknown } => SoFar(forecast, units),
            _ => "No zone is measurably wearing: the readings differ by no more than the gauge error. " + SoFar(forecast, units),
        };
    }

    /// <summary>Why a zone has no forecast.</summary>
    public static string NoForecast(TreadForecast forecast, TreadPlace place)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return forecast.DistinctReadings < TreadForecast.FewestForRough
            ? "One reading tells no wear rate: read again after more use."
            : forecast.Clock == WearClock.None
                ? "Road distance and laps change by less than 0.1 between the readings, so no wear rate can be found."
                : $"By these readings the {ForecastUnits.Name(place)} grows by more than the gauge errs, and no use does that: measure again, in the same groove.";
    }

    /// <summary>What turning the tyre on its rim brings; null where that is not known.</summary>
    public static string? Turning(TreadForecast forecast, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.Turning is not { } turning) return null;
        var change = turning.Change;
        if (change.Gain <= LeastGain * change.LifeAsItIs) return "Turning the tyre on its rim gains nothing.";
        var doubt = turning.IsShown ? "" : " The readings show no difference between the shoulders' rates, so the gain may be chance.";
        return Prose.Write(units, $"Turn the tyre on its rim {When(forecast, change, units)}: it then lasts an estimated {ForecastUnits.Use(units, forecast.Mix, change.LifeWhenChanged)} from now instead of {ForecastUnits.Use(units, forecast.Mix, change.LifeAsItIs)}, a gain of {ForecastUnits.Use(units, forecast.Mix, change.Gain)}.{doubt}");
    }

    /// <summary>What swapping two tyres brings.</summary>
    public static string Swapping(TyreSwap swap, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(swap);
        var (forecast, swapping) = (swap.One.Tread, swap.Swapping);
        var change = swapping.Change;
        var (one, other) = (CorneringWords.Name(swap.One.Position), CorneringWords.Name(swap.Other.Position));
        var each = Prose.Write(units, $"The {one} tyre lasts an estimated {ForecastUnits.Use(units, forecast.Mix, swapping.ThisAsItIs)} where it is and {ForecastUnits.Use(units, forecast.Mix, swapping.ThisAtOthersPlace)} at the {other}; the {other} tyre {ForecastUnits.Use(units, forecast.Mix, swapping.OtherAsItIs)} and {ForecastUnits.Use(units, forecast.Mix, swapping.OtherAtThisPlace)}.");
        return change.Gain <= LeastGain * change.LifeAsItIs ? each + " Swapping them does not delay the first replacement." : $"{each} {Move(swap, units)}";
    }

    /// <summary>Why a change of places is not known.</summary>
    public const string NoChange = "a zone is at the limit, or its wear is not measurably above zero.";

    /// <summary>How fast a zone wears on road and track; why that is unknown without a forecast.</summary>
    public static string Rates(TreadForecast forecast, TreadPlace place, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        if (forecast.Zones.At(place) is not { } zone) return NoForecast(forecast, place);
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

    private static string NothingEnds(CarForecast car, UnitSystem units)
    {
        var known = car.Tyres.FirstOrDefault(tyre => tyre.Tread.OfTyre != ForecastStatus.Unknown);
        var tyre = known ?? car.Tyres[0];
        return known is null
            ? Prose.Write(units, $"{Capital(tyre.Position)}: {SoFar(tyre.Tread, units)} {NoForecast(tyre.Tread, TreadPlace.Outer)}")
            : Prose.Write(units, $"{Capital(tyre.Position)}: {Headline(tyre.Tread, units)}");
    }

    /// <summary>Turning or swapping, whichever gains more of the life of the tyre that is done first; null where neither gains.</summary>
    private static string? BestMove(CarForecast car, UnitSystem units)
    {
        var first = car.First()!;
        var turned = first.Tread.Turning is { Change: var turn } && turn.Gain > LeastGain * turn.LifeAsItIs ? turn.Gain : 0;
        TyreSwap? best = null;
        foreach (var swap in car.Swaps)
        {
            var change = swap.Swapping.Change;
            if (swap.One != first && swap.Other != first) continue;
            if (change.Gain > LeastGain * change.LifeAsItIs && change.Gain > Math.Max(turned, best?.Swapping.Change.Gain ?? 0)) best = swap;
        }

        return best is not null ? Move(best, units) : turned > 0 ? Turning(first.Tread, units) : null;
    }

    private static string Move(TyreSwap swap, UnitSystem units) => Prose.Write(
        units,
        $"Swap the {CorneringWords.Name(swap.One.Position)} with the {CorneringWords.Name(swap.Other.Position)} {When(swap.One.Tread, swap.Swapping.Change, units)}, where both are of one size: the first replacement comes {ForecastUnits.Use(units, swap.One.Tread.Mix, swap.Swapping.Change.Gain)} later.");

    private static string When(TreadForecast forecast, in PlaceChange change, UnitSystem units) =>
        change.BestAfter <= LeastGain * change.LifeAsItIs ? "now" : ForecastUnits.After(units, forecast.Mix, change.BestAfter);

    private static string SoFar(TreadForecast forecast, UnitSystem units) => forecast.DistinctReadings == 1 && forecast.WornMm == default
        ? Prose.Write(units, $"The outer shoulder has {forecast.LastMm.Outer:tread}, the centre {forecast.LastMm.Centre:tread}, the inner shoulder {forecast.LastMm.Inner:tread}.")
        : Prose.Write(
            units,
            $"{Since(forecast, units)}, the outer shoulder lost {forecast.WornMm.Outer:tread}, the centre {forecast.WornMm.Centre:tread}, the inner shoulder {forecast.WornMm.Inner:tread}.");

    private static string Since(TreadForecast forecast, UnitSystem units) => forecast.DistinctReadings == 1
        ? "So far"
        : $"From the first reading to the last, over {(forecast.Clock == WearClock.None ? "no distance" : ForecastUnits.Use(units, forecast.Mix, 1))}";

    private static string Ends(TreadForecast forecast, EndingZone ending, ZoneForecast zone, UnitSystem units)
    {
        var name = ForecastUnits.Name(ending.Place);
        var rough = forecast.Fit is null ? FormattableString.Invariant($"Roughly, from {forecast.DistinctReadings} readings and a usual wear rate, the ") : "The ";
        var sure = ending.IsToldApart
            ? Prose.Write(units, $"{rough}{name} ends the tyre first (probability {100 * ending.Probability:pct0})")
            : forecast.Fit is null
                ? Prose.Write(units, $"{rough}{name} most likely ends the tyre first (probability {100 * ending.Probability:pct0})")
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

    private static string Bend(TreadForecast forecast)
    {
        var mix = forecast.Fit!.Design.Share(forecast.Fit.Design.Mix)!.Value;
        var (late, mean) = (0.0, 0.0);
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            late += forecast.Fit.LostMm(place, mix);
            mean += forecast.Fit.Zones.At(place).LostOfMixMm.Dot(mix);
        }

        return mean <= 0 ? "" : FormattableString.Invariant($"Wear {(late < mean ? "slowed" : "quickened")} as it went on: the later half's rate, {late / mean:0.00} times the mean, is used.");
    }

    private static string? Stray(TreadForecast forecast, UnitSystem units)
    {
        if (forecast.Misfits.Count == 0) return null;
        var named = forecast.Misfits.Take(MostNamed).Select(one => Prose.Write(
            units, $"reading {one.Reading + 1} at the {ForecastUnits.Name(one.Place)} ({Math.Abs(one.AboveLineMm):treadFine} {(one.AboveLineMm > 0 ? "deeper" : "shallower")})"));
        var more = forecast.Misfits.Count > MostNamed ? FormattableString.Invariant($" and {forecast.Misfits.Count - MostNamed} more") : "";
        return $"Off the line by more than the gauge error: {string.Join(", ", named)}{more}. Suspect another spot, another gauge or a typing error.";
    }

    private static string Capital(WheelPosition position) => CorneringWords.Name(position) is var name ? char.ToUpperInvariant(name[0]) + name[1..] : "";
}
