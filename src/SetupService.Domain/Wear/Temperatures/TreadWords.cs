using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What a tread's temperatures say, as sentences.</summary>
public static class TreadWords
{
    /// <summary>One figure with what it says.</summary>
    public static string Describe(in TreadReading tread, in TreadFinding finding, UnitSystem units)
    {
        var figure = Figure(tread, finding, units);
        if (tread.IsTooLate)
        {
            return Prose.Write(units, $"{figure} It was read {tread.SecondsAfterLap ?? 0:n} s after the lap; after more than {TreadReading.TooLateAfterS:n} s a tread has cooled too far to show what it was.");
        }

        if (finding.RangeC is null) return Prose.Write(units, $"{figure} No verdict: the tyre's own temperature range is not given.");
        return Prose.Write(units, $"{figure} {Meaning(tread, finding, units)}{Doubt(finding)}");
    }

    /// <summary>A figure outside its range and what it means, as a clause without capital or full stop.</summary>
    public static string Headline(in TreadFinding finding, UnitSystem units)
    {
        var valueC = finding.FigureC.Value;
        return (finding.Aspect, finding.Verdict) switch
        {
            (TreadAspect.OuterLessInner, RangeVerdict.Below) => Prose.Write(units, $"the inner shoulder is {-valueC:cDiff} hotter than the outer one, more than usual, as with too much negative camber or toe-out"),
            (TreadAspect.OuterLessInner, _) when valueC > 0 => Prose.Write(units, $"the outer shoulder is {valueC:cDiff} hotter than the inner one, as with too little negative camber for these corners or toe-in"),
            (TreadAspect.OuterLessInner, _) => Prose.Write(units, $"the inner shoulder is only {-valueC:cDiff} hotter than the outer one, as with too little negative camber for these corners or toe-in"),
            (TreadAspect.WidestSpread, _) => Prose.Write(units, $"the hottest place is {valueC:cDiff} above the coldest, so one part of the tread does the work"),
            (TreadAspect.CentreLessShoulders, RangeVerdict.Above) => Prose.Write(units, $"the middle is {valueC:cDiff} hotter than the shoulders, as with too high a hot pressure"),
            (TreadAspect.CentreLessShoulders, _) => Prose.Write(units, $"the middle is {-valueC:cDiff} colder than the shoulders, as with too low a hot pressure"),
            (_, RangeVerdict.Above) => Prose.Write(units, $"the tread averages {valueC:c} and is overheating"),
            _ => Prose.Write(units, $"the tread averages {valueC:c}, colder than its range"),
        };
    }

    /// <summary>A tread that reads colder than the air it was in.</summary>
    public static string BelowAir(in TreadReading tread, double airC, UnitSystem units) => Prose.Write(
        units, $"The tread averages {tread.MeanC:c} and the air is given as {airC:c}, but a driven tyre is not colder than the air. One of the two was read wrongly, or the tyre was wet.");

    private static string Figure(in TreadReading tread, in TreadFinding finding, UnitSystem units)
    {
        var valueC = finding.FigureC.Value;
        var openC = Uncertainty.StandardErrorsAtNinetyPct * finding.FigureC.StandardError;
        return finding.Aspect switch
        {
            TreadAspect.OuterLessInner when valueC == 0 => Prose.Write(units, $"Both shoulders are at {tread.ReadC.Inner:c}, with ±{openC:cDiff} for the thermometer."),
            TreadAspect.OuterLessInner when valueC < 0 => Prose.Write(units, $"The inner shoulder is {-valueC:cDiff} hotter than the outer one (±{openC:cDiff} for the thermometer)."),
            TreadAspect.OuterLessInner => Prose.Write(units, $"The outer shoulder is {valueC:cDiff} hotter than the inner one (±{openC:cDiff} for the thermometer)."),
            TreadAspect.WidestSpread => Prose.Write(units, $"The hottest place is {valueC:cDiff} above the coldest (±{openC:cDiff})."),
            TreadAspect.CentreLessShoulders when valueC < 0 => Prose.Write(units, $"The middle is {-valueC:cDiff} colder than the mean of the shoulders (±{openC:cDiff})."),
            TreadAspect.CentreLessShoulders => Prose.Write(units, $"The middle is {valueC:cDiff} hotter than the mean of the shoulders (±{openC:cDiff})."),
            _ => Prose.Write(units, $"The tread averages {valueC:c} (±{openC:cDiff})."),
        };
    }

    private static string Meaning(in TreadReading tread, in TreadFinding finding, UnitSystem units)
    {
        var range = finding.RangeC!.Value;
        return (finding.Aspect, finding.Verdict) switch
        {
            (TreadAspect.OuterLessInner, RangeVerdict.Unknown) => Prose.Write(units, $"With negative camber an inner shoulder {-range.ToC:cDiff} to {-range.FromC:cDiff} hotter is usual; by the thermometer's error it may be that."),
            (TreadAspect.MeanInWindow, RangeVerdict.Unknown) => Prose.Write(units, $"Its range is {range.FromC:c} to {range.ToC:c}; by the thermometer's error it may be within."),
            (_, RangeVerdict.Unknown) => Prose.Write(units, $"Up to {range.ToC:cDiff} is usual; by the thermometer's error it may be no more."),
            (TreadAspect.OuterLessInner, RangeVerdict.Within) => Prose.Write(
                units, $"With negative camber {-range.ToC:cDiff} to {-range.FromC:cDiff} is usual."),
            (TreadAspect.OuterLessInner, RangeVerdict.Below) => Prose.Write(
                units, $"More than the usual {-range.ToC:cDiff} to {-range.FromC:cDiff}: the inner shoulder works too hard, as with too much negative camber or toe-out."),
            (TreadAspect.OuterLessInner, _) => Prose.Write(
                units, $"There is too little negative camber for these corners, or toe-in scrubs the outer shoulder: the inner one is usually {-range.ToC:cDiff} to {-range.FromC:cDiff} hotter. On a lap with few hard corners this may be right."),
            (TreadAspect.WidestSpread, RangeVerdict.Above) => Prose.Write(
                units, $"More than the usual {range.ToC:cDiff}: one part of the tread does the work, so grip is left unused and that part wears first."),
            (TreadAspect.WidestSpread, _) => Prose.Write(units, $"Up to about {range.ToC:cDiff} is usual."),
            (TreadAspect.CentreLessShoulders, RangeVerdict.Above) => Prose.Write(
                units, $"More than the usual {range.ToC:cDiff}: the middle carries too much, as with too high a hot pressure."),
            (TreadAspect.CentreLessShoulders, RangeVerdict.Below) => Prose.Write(
                units, $"More than the usual {-range.FromC:cDiff}: the shoulders carry too much, as with too low a hot pressure."),
            (TreadAspect.CentreLessShoulders, _) => Prose.Write(units, $"Within {range.ToC:cDiff} is usual; the pressure looks right."),
            (_, RangeVerdict.Below) => Prose.Write(
                units, $"Colder than its range of {range.FromC:c} to {range.ToC:c}: it was not brought up to temperature, or is the wrong tyre for this use. Lower pressure warms a tyre more, but never go below what its load needs.{Cooled(tread, units)}"),
            (_, RangeVerdict.Above) => Prose.Write(
                units, $"Hotter than its range of {range.FromC:c} to {range.ToC:c}: it loses grip and wears fast. Let it cool, and look for what overworks it."),
            _ => Hottest(tread, range, units),
        };
    }

    private static string Cooled(in TreadReading tread, UnitSystem units) => tread.SecondsAfterLap switch
    {
        null => " How long it had cooled is not given; on the lap it was hotter.",
        0 => "",
        { } seconds => Prose.Write(units, $" It had cooled for {seconds:n} s; on the lap it was hotter."),
    };

    private static string Hottest(in TreadReading tread, in TemperatureRange range, UnitSystem units)
    {
        var hottestC = Math.Max(tread.ReadC.Outer, Math.Max(tread.ReadC.Centre, tread.ReadC.Inner));
        return hottestC > range.ToC
            ? Prose.Write(units, $"That is in its range of {range.FromC:c} to {range.ToC:c}, but its hottest place, at {hottestC:c}, is beyond.")
            : Prose.Write(units, $"That is in its range of {range.FromC:c} to {range.ToC:c}.");
    }

    private static string Doubt(in TreadFinding finding) =>
        finding.IsClear || finding.Verdict == RangeVerdict.Unknown ? "" : " By the thermometer's error it may also lie beyond.";
}
