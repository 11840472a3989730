using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>Says what a comparison of wear before and after means.</summary>
public static class ComparisonWords
{
    private const double KmPerMile = 1.609344;

    /// <summary>What it means in at most five sentences: the shoulders against the centre first, then the zone that wore fastest before.</summary>
    public static string Summary(WearComparison comparison, ComparisonQuestion question, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(question);
        if (comparison.Zones is not { } zones) return NoComparison(comparison);
        var list = new List<string>();
        if (comparison.After is null) list.Add(NoAfter(comparison));
        if (Shoulder("outer", comparison.Outer) is { } outer) list.Add(outer);
        if (Shoulder("inner", comparison.Inner) is { } inner) list.Add(inner);
        var fastest = ((TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]).MaxBy(place => zones.At(place).Main?.BeforeMm.Value ?? double.NegativeInfinity);
        list.Add(Zone(comparison, question, fastest, units));
        return string.Join(' ', list);
    }

    /// <summary>What happened to one zone's wear, and what more use would show.</summary>
    public static string Zone(WearComparison comparison, ComparisonQuestion question, TreadPlace place, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(question);
        return comparison.Zones is { } zones ? Zone(comparison, question, place, zones.At(place), units) : NoComparison(comparison);
    }

    /// <summary>Why nothing can be compared.</summary>
    public static string NoComparison(WearComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return comparison.Before is null
            ? Few("before", comparison.BeforeDistinct)
            : "The two lists share no clock: compare laps with laps, road with road, or the same proportion of both.";
    }

    /// <summary>Why there are no rates after the change.</summary>
    public static string NoAfter(WearComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return comparison.AfterDistinct == 0 ? "Nothing has been read since the change." : Few("after", comparison.AfterDistinct);
    }

    /// <summary>Why it is not known how much further use would show a change; null where it is known.</summary>
    public static string? NoPlan(WearComparison comparison, in ZoneComparison zone)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        if (zone.LeastUse is not null) return null;
        if (zone.SoughtRatio is not { } ratio) return "needs expectedRatio, the change hoped for, or enough readings after the change";
        if (ratio == 1) return "no change to find: more laps will not help";
        return zone.Main?.BeforeMm.Value > 0
            ? "the rate before the change is too uncertain for any further use to show this"
            : "no wear was measured before the change, so there is no ratio";
    }

    private static string Few(string when, int count) => FormattableString.Invariant(
        $"A rate with its range needs {WearComparison.FewestReadings} readings at different distances, and one more where both clocks move; {when} the change there are {count}.");

    private static string Zone(WearComparison comparison, ComparisonQuestion question, TreadPlace place, in ZoneComparison zone, UnitSystem units)
    {
        var name = Name(place);
        if (zone.Main is not { } main) return $"The rate of the {name} before the change is unknown.";
        if (main is not { AfterMm: { } after, Ratio: { } ratio, IsShown: { } isShown })
            return Prose.Write(units, $"Before the change the {name} lost {Rate(comparison.Clock, main.BeforeMm.Value, units)}. {Plan(comparison, question, zone, units)}");
        var range = ratio switch
        {
            { Value: { } value, Lower: { } least, Upper: { } most } => FormattableString.Invariant($"{value:0.00} times (90 % range {least:0.00} to {most:0.00})"),
            { Lower: { } least } => FormattableString.Invariant($"at least {least:0.00} times, without an upper bound because wear before is not measurably above zero"),
            _ => "an unknown ratio, because wear before is not measurably above zero",
        };
        var shown = isShown ? "The readings show a change." : Prose.Write(units, $"The readings do not show a change. {Plan(comparison, question, zone, units)}");
        return Prose.Write(units, $"At the {name} wear went from {Rate(comparison.Clock, main.BeforeMm.Value, units)} to {Rate(comparison.Clock, after.Value, units)}: {range}. {shown}");
    }

    private static string Plan(WearComparison comparison, ComparisonQuestion question, in ZoneComparison zone, UnitSystem units)
    {
        if (zone is not { SoughtRatio: { } ratio, LeastUse: { } use }) return "How much more use would show a change is unknown: " + NoPlan(comparison, zone) + ".";
        var planned = zone.PlannedPower is { } power && question.PlannedLaps is { } plan
            ? Prose.Write(units, $" The {Use(comparison.Clock, plan, units)} planned would show it with a probability of {100 * power:pct0}.")
            : "";
        return use <= 0
            ? Prose.Write(units, $"{question.PlannedReadings} more readings now would show a ratio of {ratio:n} four times in five.{planned}")
            : Prose.Write(units, $"About {Use(comparison.Clock, use, units, " more")}, read {question.PlannedReadings} times, would show a ratio of {ratio:n} four times in five.{planned}");
    }

    private static string? Shoulder(string name, ShoulderChange? change)
    {
        if (change is not { Before: { Value: { } before }, After: { Value: { } after }, IsShown: { } isShown }) return null;
        return FormattableString.Invariant($"The {name} shoulder wears {after:0.00} times as fast as the centre, {before:0.00} times before; the readings {(isShown ? "show" : "do not show")} a change of this pattern.");
    }

    private static string Use(ComparedClock clock, double use, UnitSystem units, string more = "")
    {
        if (clock == ComparedClock.Road) return Prose.Write(units, $"{use * TyreUse.Road1000Km.RoadKm:km}{more}");
        var laps = Math.Ceiling(use - 1e-9);
        return FormattableString.Invariant($"{laps:0}{more} {(laps == 1 ? "lap" : "laps")}");
    }

    private static string Rate(ComparedClock clock, double mm, UnitSystem units) => clock switch
    {
        ComparedClock.Road when units == UnitSystem.Us => Prose.Write(units, $"{mm * KmPerMile:treadFine} per 1000 miles"),
        ComparedClock.Road => Prose.Write(units, $"{mm:treadFine} per 1000 km"),
        ComparedClock.SameMix => Prose.Write(units, $"{100 * mm:treadFine} per 100 laps with their road"),
        _ => Prose.Write(units, $"{100 * mm:treadFine} per 100 laps"),
    };

    private static string Name(TreadPlace place) => place switch
    {
        TreadPlace.Outer => "outer shoulder",
        TreadPlace.Centre => "centre",
        _ => "inner shoulder",
    };
}
