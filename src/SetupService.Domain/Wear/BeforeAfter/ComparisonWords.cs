using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>Says what a comparison of wear before and after means.</summary>
public static class ComparisonWords
{
    private const double KmPerMile = 1.609344;

    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Describe(WearComparison comparison, ComparisonQuestion question, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(question);
        if (comparison.Zones is not { } zones) return [NoComparison(comparison)];
        var list = new List<string>();
        if (comparison.After is null) list.Add(NoAfter(comparison));
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
            list.Add(Zone(comparison, question, place, zones.At(place), units));
        if (Shoulder("outer", comparison.Outer) is { } outer) list.Add(outer);
        if (Shoulder("inner", comparison.Inner) is { } inner) list.Add(inner);
        return list;
    }

    /// <summary>Why nothing can be compared.</summary>
    public static string NoComparison(WearComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return comparison.Before is null
            ? Few("before", comparison.BeforeDistinct)
            : "No clock is known of both lists: compare laps with laps, kilometres with kilometres, or the same proportion of both.";
    }

    /// <summary>Why there are no rates after the change.</summary>
    public static string NoAfter(WearComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return comparison.AfterDistinct == 0 ? "Nothing was read after the change yet." : Few("after", comparison.AfterDistinct);
    }

    /// <summary>Why it is not told how much further use would show a change; null where it is told.</summary>
    public static string? NoPlan(WearComparison comparison, in ZoneComparison zone)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        if (zone.LeastUse is not null) return null;
        if (zone.SoughtRatio is not { } ratio) return "needs expectedRatio, the change that is hoped for, or enough readings after the change";
        if (ratio == 1) return "a ratio of 1 is no change, and no use would show it";
        return zone.Main?.BeforeMm.Value > 0
            ? "the readings before leave the rate so open that no further use after the change would show this; more readings before it would have to"
            : "no wear is estimated before the change, so there is nothing a ratio could be taken of";
    }

    private static string Few(string when, int count) => FormattableString.Invariant(
        $"A rate with its range takes {WearComparison.FewestReadings} readings at different distances, and one more where both clocks move; {when} the change there are {count}.");

    private static string Zone(WearComparison comparison, ComparisonQuestion question, TreadPlace place, in ZoneComparison zone, UnitSystem units)
    {
        var name = Name(place);
        if (zone.Main is not { } main) return $"The {name}'s rate before the change is not told.";
        if (main is not { AfterMm: { } after, Ratio: { } ratio, IsShown: { } isShown })
            return Prose.Write(units, $"Before the change the {name} lost {Rate(comparison.Clock, main.BeforeMm.Value, units)}. {Plan(comparison, question, zone, units)}");
        var range = ratio switch
        {
            { Value: { } value, AtLeast: { } least, AtMost: { } most } => Prose.Write(units, $"{value:n} times ({least:n} to {most:n} with 90 %)"),
            { AtLeast: { } least } => Prose.Write(units, $"a ratio that is not bounded from above, for wear before is not shown to be above zero (at least {least:n} times)"),
            _ => "a ratio that is not told, for wear before is not shown to be above zero",
        };
        var shown = isShown ? "The readings show a change." : Prose.Write(units, $"The readings do not show a change. {Plan(comparison, question, zone, units)}");
        return Prose.Write(units, $"At the {name} wear went from {Rate(comparison.Clock, main.BeforeMm.Value, units)} to {Rate(comparison.Clock, after.Value, units)}: {range}. {shown}");
    }

    private static string Plan(WearComparison comparison, ComparisonQuestion question, in ZoneComparison zone, UnitSystem units)
    {
        if (zone is not { SoughtRatio: { } ratio, LeastUse: { } use }) return "How much further use would show one is not told: " + NoPlan(comparison, zone) + ".";
        var planned = zone.PlannedPower is { } power && question.PlannedLaps is { } plan
            ? Prose.Write(units, $" The {Use(comparison.Clock, plan, units)} planned would show it with {100 * power:pct0}.")
            : "";
        return Prose.Write(units, $"About {Use(comparison.Clock, use, units)} more, read {question.PlannedReadings} times, would show a ratio of {ratio:n} four times in five.{planned}");
    }

    private static string? Shoulder(string name, ShoulderChange? change)
    {
        if (change is not { Before: { Value: { } before }, After: { Value: { } after }, IsShown: { } isShown }) return null;
        return FormattableString.Invariant($"The {name} shoulder wears {after:0.00} times as fast as the centre, before {before:0.00} times; this change of the pattern is {(isShown ? "shown" : "not shown")}.");
    }

    private static string Use(ComparedClock clock, double use, UnitSystem units) => clock == ComparedClock.Road
        ? Prose.Write(units, $"{use * TyreUse.Road1000Km.RoadKm:km}")
        : FormattableString.Invariant($"{Math.Ceiling(use - 1e-9):0} laps");

    private static string Rate(ComparedClock clock, double mm, UnitSystem units) => clock switch
    {
        ComparedClock.Road when units == UnitSystem.Us => Prose.Write(units, $"{mm * KmPerMile:fit} per 1000 miles"),
        ComparedClock.Road => Prose.Write(units, $"{mm:fit} per 1000 km"),
        ComparedClock.SameMix => Prose.Write(units, $"{100 * mm:fit} per 100 laps with their road"),
        _ => Prose.Write(units, $"{100 * mm:fit} per 100 laps"),
    };

    private static string Name(TreadPlace place) => place switch
    {
        TreadPlace.Outer => "outer shoulder",
        TreadPlace.Centre => "centre",
        _ => "inner shoulder",
    };
}
