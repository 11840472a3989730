using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>Says what a comparison of wear before and after means.</summary>
public static class ComparisonWords
{
    private const double KmPerMile = 1.609344;

    /// <summary>What it means in at most five sentences: did it work, by the shoulders against the centre; the other tyres; what would settle it.</summary>
    public static string Summary(IReadOnlyList<TyreComparison> tyres, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var outcome = ChangeOutcomes.Judge(tyres);
        var lead = tyres.FirstOrDefault(tyre => outcome == ChangeOutcome.Worse ? tyre.Wear.Outcome == outcome : tyre.Wear.Outcome is ChangeOutcome.Better or ChangeOutcome.Mixed)
            ?? tyres.Where(tyre => tyre.Wear.Outcome == outcome && tyre.Wear.Zones is not null).MaxBy(tyre => Largest(tyre.Wear)) ?? tyres.FirstOrDefault(tyre => tyre.Wear.Zones is not null) ?? tyres[0];
        var list = new List<string>
        {
            outcome switch
            {
                ChangeOutcome.Better => "It worked.",
                ChangeOutcome.Worse => "It made the wear worse.",
                ChangeOutcome.Mixed => "It helped in one place and hurt in another.",
                ChangeOutcome.NotShown => tyres.Any(tyre => OnRoad(tyre) is not null)
                    ? "Not shown of the wear on track: what changed there is within what sessions vary with nothing changed, and what the gauge errs."
                    : "Not shown: what changed is within what sessions vary with nothing changed, and what the gauge errs.",
                _ => "It cannot be told yet.",
            },
            $"{Capital(CorneringWords.Name(lead.Position))}: {Describe(lead, units)}",
        };
        var others = tyres.Where(tyre => tyre != lead && tyre.Wear.Outcome is not ChangeOutcome.Unknown).Select(tyre => $"{CorneringWords.Name(tyre.Position)} {Word(tyre.Wear.Outcome)}").ToList();
        if (others.Count > 0) list.Add($"The others: {string.Join(", ", others)}.");
        if (outcome is ChangeOutcome.NotShown or ChangeOutcome.Unknown && OnRoad(lead) is { } onRoad) list.Add(onRoad);
        if (outcome == ChangeOutcome.NotShown && Settles(lead.Wear) is { } settles) list.Add(settles);
        return string.Join(' ', list);
    }

    /// <summary>One tyre in one sentence: the worse shoulder against the centre, else the zone that wore fastest before.</summary>
    public static string Describe(TyreComparison tyre, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        var wear = tyre.Wear;
        if (wear.Zones is not { } zones) return NoComparison(wear);
        if (ChangeOutcomes.Telling(wear) is { } telling && Shoulder(telling == TreadPlace.Outer ? "outer" : "inner", ChangeOutcomes.Shoulder(wear, telling)) is { } told) return told;
        var fastest = ((TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]).MaxBy(place => zones.At(place).Main?.BeforeMm.Value ?? double.NegativeInfinity);
        return wear.After is null ? $"{NoAfter(wear)} {Zone(tyre, fastest, units)}" : Zone(tyre, fastest, units);
    }

    /// <summary>What happened to one zone's wear, and what more would show.</summary>
    public static string Zone(TyreComparison tyre, TreadPlace place, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        return tyre.Wear.Zones is { } zones ? Zone(tyre.Wear, tyre.Question, place, zones.At(place), units) : NoComparison(tyre.Wear);
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
            ? "more use in the sessions there are would not show it: sessions vary too much, or the rate before is too uncertain"
            : "no wear was measured before the change, so there is no ratio";
    }

    /// <summary>Why it is not known how many sessions would show a change; null where it is known.</summary>
    public static string? NoSessions(WearComparison comparison, in ZoneComparison zone)
    {
        if (zone.FurtherSessions is not null) return null;
        return zone is { SoughtRatio: { } and not 1, Main.BeforeMm.Value: > 0 }
            ? FormattableString.Invariant($"no number of sessions up to {ShoulderChange.MostSessions} would show so small a change")
            : NoPlan(comparison, zone with { LeastUse = null });
    }

    private static string Few(string when, int count) => FormattableString.Invariant(
        $"A rate with its range needs {WearComparison.FewestReadings} readings at different distances, and one more where both clocks move; {when} the change there are {count}.");

    private static double Largest(WearComparison wear) => Math.Max(Effect(wear.Outer), Effect(wear.Inner));

    private static double Effect(ShoulderChange? change) => change is { Before.Value: { } before and > 0, After.Value: { } after and > 0 } ? Math.Abs(Math.Log(after / before)) : 0;

    private static string Word(ChangeOutcome outcome) => outcome switch
    {
        ChangeOutcome.Better => "better",
        ChangeOutcome.Worse => "worse",
        ChangeOutcome.Mixed => "better in one place, worse in another",
        _ => "not shown",
    };

    private static string? Settles(WearComparison wear)
    {
        var place = ChangeOutcomes.Telling(wear);
        if (place is { } telling && ChangeOutcomes.Shoulder(wear, telling)?.FurtherSessions is { } more) return $"{Further(more)}, not more laps in one, would show a change of this size four times in five.";

        // Against the centre no number would do; what the shoulder itself tells is known sooner.
        return place is { } shoulder && wear.Zones?.At(shoulder).FurtherSessions is { } alone and > 0
            ? $"Against the centre so small a change is not worth chasing; {Further(alone)} would show the one of the {Name(shoulder)} itself four times in five."
            : "So small a change is not worth chasing: no sensible number of sessions would show it.";
    }

    private static string Further(int sessions) => FormattableString.Invariant($"{sessions} more {(sessions == 1 ? "session" : "sessions")} before and after");

    /// <summary>The zones whose wear by road distance is shown to have changed, as a sentence; null where none is.</summary>
    private static string? OnRoad(TyreComparison tyre)
    {
        if (tyre.Wear.Zones is not { } zones) return null;
        List<string> shown = [.. from place in (TreadPlace[])[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner]
            where zones.At(place).Road is { IsShown: true, Ratio.Value: not null }
            select FormattableString.Invariant($"{Name(place)} {zones.At(place).Road!.Value.Ratio!.Value.Value:0.00} times")];
        return shown.Count == 0 ? null : $"Shown is a change of the {CorneringWords.Name(tyre.Position)}'s wear by road distance: {string.Join(", ", shown)}.";
    }

    private static string Zone(WearComparison comparison, ComparisonQuestion question, TreadPlace place, in ZoneComparison zone, UnitSystem units)
    {
        var name = Name(place);
        if (zone.Main is not { } main) return $"The rate of the {name} before the change is unknown.";
        if (main is not { AfterMm: { } after, Ratio: { } ratio, IsShown: { } isShown })
            return Prose.Write(units, $"Before the change the {name} lost {Rate(comparison.Clock, main.BeforeMm.Value, units)}. {Plan(comparison, question, zone, units)}");
        var range = ratio switch
        {
            { Value: { } value, Lower: { } least, Upper: { } most } => FormattableString.Invariant($"{value:0.00} times (90 % range {least:0.00} to {most:0.00}, with what sessions vary)"),
            { Lower: { } least } => FormattableString.Invariant($"at least {least:0.00} times, without an upper bound because wear before is not measurably above zero"),
            _ => "an unknown ratio, because wear before is not measurably above zero",
        };
        var shown = isShown ? "That is a change." : Prose.Write(units, $"No change is shown. {Plan(comparison, question, zone, units)}");
        if (zone.Road is { IsShown: { } isRoadShown, Ratio.Value: { } road }) shown += FormattableString.Invariant($" By road distance it went to {road:0.00} times{(isRoadShown ? ": that is a change" : ", which is none shown")}.");
        return Prose.Write(units, $"At the {name} wear went from {Rate(comparison.Clock, main.BeforeMm.Value, units)} to {Rate(comparison.Clock, after.Value, units)}: {range}. {shown}");
    }

    private static string Plan(WearComparison comparison, ComparisonQuestion question, in ZoneComparison zone, UnitSystem units)
    {
        if (zone.SoughtRatio is not { } ratio) return "How much more use would show a change is unknown: " + NoPlan(comparison, zone) + ".";
        var planned = zone.PlannedPower is { } power && question.PlannedLaps is { } plan
            ? Prose.Write(units, $" The {Use(comparison.Clock, plan, units)} planned would show it with a probability of {100 * power:pct0}.")
            : "";
        if (zone.LeastUse is { } use)
        {
            return use <= 0
                ? Prose.Write(units, $"{question.PlannedReadings} more readings now would show {Sought(ratio)} four times in five.{planned}")
                : Prose.Write(units, $"About {Use(comparison.Clock, use, units, " more")}, read {question.PlannedReadings} times, would show {Sought(ratio)} four times in five.{planned}");
        }

        return zone.FurtherSessions is { } sessions
            ? Prose.Write(units, $"More use in the same sessions would not show {Sought(ratio)}; {sessions} more {(sessions == 1 ? "session" : "sessions")} on each side would, four times in five.{planned}")
            : Prose.Write(units, $"No sensible number of sessions would show {Sought(ratio)}.{planned}");
    }

    private static string Sought(double ratio) => ratio < 1 ? FormattableString.Invariant($"wear {100 * (1 - ratio):0} % slower") : FormattableString.Invariant($"wear {100 * (ratio - 1):0} % faster");

    private static string? Shoulder(string name, ShoulderChange? change)
    {
        if (change is not { Before: { Value: { } before }, After: { Value: { } after }, IsShown: { } isShown }) return null;
        return FormattableString.Invariant($"the {name} shoulder wears {after:0.00} times as fast as the centre, {before:0.00} times before the change, {(isShown ? "more than sessions vary" : "within what sessions vary")}.");
    }

    private static string Use(ComparedClock clock, double use, UnitSystem units, string more = "")
    {
        if (clock == ComparedClock.Road) return $"{RoadWords.About(units, use * TyreUse.Road1000Km.RoadKm)}{more}";
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

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
