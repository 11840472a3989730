using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>One tyre as it came in: its tread, its pressures, each null where it was not read.</summary>
/// <param name="Position">Which wheel it is on.</param>
/// <param name="Tread">Its tread.</param>
/// <param name="Pressure">Its pressures.</param>
public readonly record struct TyreHeat(WheelPosition Position, TreadReading? Tread, TyrePressure? Pressure)
{
    /// <summary>How the heat of its shoulders contradicts their wear, as sentences; null where it does not.</summary>
    public string? ShoulderDoubt { get; init; }

    /// <summary>True where its tread's temperatures contradict the air, or the wear of its shoulders.</summary>
    /// <param name="airC">Air around the treads, °C; null where it is not known.</param>
    public bool IsTreadDoubted(double? airC) => ShoulderDoubt is not null || (Tread is { } tread && airC is { } air && TemperatureFigures.IsBelowAir(tread, air));
}

/// <summary>Says in at most five sentences what temperatures and pressures ask for: what is unsafe, what was read wrongly, the one tread that stands out most, what to set.</summary>
public static class HeatSummary
{
    private const string NothingStandsOut = "All readings are as usual.";
    private const int MostSentences = 5;

    // Texts of actions the summary has in its own words, or leaves to the list.
    private static readonly HeatActionKind[] Led = [HeatActionKind.MakeSafe, HeatActionKind.RaisePressure, HeatActionKind.SetPressure];

    /// <summary>The sentences, as one text.</summary>
    /// <param name="tyres">The tyres, in the order of the readings.</param>
    /// <param name="pairs">Axles and sides against each other.</param>
    /// <param name="actions">What to do.</param>
    /// <param name="airC">Air around the treads, °C; null where it is not known.</param>
    /// <param name="units">Units of the text.</param>
    public static string Write(IReadOnlyList<TyreHeat> tyres, IReadOnlyList<PairComparison> pairs, IReadOnlyList<HeatAction> actions, double? airC, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        ArgumentNullException.ThrowIfNull(pairs);
        ArgumentNullException.ThrowIfNull(actions);
        var list = new List<string>();
        AddUnsafe(list, tyres);
        AddContradictions(list, tyres, airC);
        AddStandingOut(list, tyres, pairs, units);
        list.AddRange(actions.Where(action => Led.Contains(action.Kind)).Select(action => FirstSentence(action.Text)));
        return list.Count == 0 ? NothingStandsOut : string.Join(' ', list.Take(MostSentences));
    }

    private static string FirstSentence(string text) => text.IndexOf(". ", StringComparison.Ordinal) is var end and >= 0 ? text[..(end + 1)] : text;

    private static void AddUnsafe(List<string> list, IReadOnlyList<TyreHeat> tyres)
    {
        var names = Names(tyres, tyre => tyre.Pressure is { IsColdBelowLoad: true });
        if (names.Length > 0) list.Add($"Do not drive before this is put right: the {names} cannot carry the load at its cold pressure.");
    }

    private static void AddContradictions(List<string> list, IReadOnlyList<TyreHeat> tyres, double? airC)
    {
        var names = Names(tyres, tyre => tyre.Pressure is { Contradiction: not PressureContradiction.None } || tyre.IsTreadDoubted(airC));
        if (names.Length > 0) list.Add($"The readings of the {names} contradict each other: read them again first.");
    }

    /// <summary>The tread finding furthest outside its range for its aspect's width, by the order of what it costs; else the pair that is.</summary>
    private static void AddStandingOut(List<string> list, IReadOnlyList<TyreHeat> tyres, IReadOnlyList<PairComparison> pairs, UnitSystem units)
    {
        var outside = new List<(TyreHeat Tyre, TreadFinding Finding)>();
        foreach (var tyre in tyres)
        {
            if (tyre.Tread is not { } tread) continue;
            outside.AddRange(TemperatureFigures.Judge(tread).Where(one => one.Verdict is RangeVerdict.Above or RangeVerdict.Below).Select(one => (tyre, one)));
        }

        if (outside.Count > 0)
        {
            var (tyre, finding) = outside.OrderByDescending(one => Gravity(one.Finding)).First();
            var more = outside.Count - 1;
            var others = more == 0 ? "" : FormattableString.Invariant($"; {more} more {(more == 1 ? "figure is" : "figures are")} outside the usual range");
            list.Add($"{Capital(CorneringWords.Name(tyre.Position))}: {TreadWords.Headline(finding, units)}{others}.");
            return;
        }

        foreach (var pair in pairs)
        {
            if (pair.Verdict is not (RangeVerdict.Above or RangeVerdict.Below)) continue;
            list.Add(PairWords.Headline(pair, units));
            return;
        }
    }

    /// <summary>How far outside its range a figure lies in widths of the range; an overheated tread counts before everything else.</summary>
    private static double Gravity(in TreadFinding finding)
    {
        var range = finding.RangeC!.Value;
        var beyondC = Math.Max(range.FromC - finding.FigureC.Value, finding.FigureC.Value - range.ToC);
        var first = finding is { Aspect: TreadAspect.MeanInWindow, Verdict: RangeVerdict.Above } ? 1000 : finding.Aspect == TreadAspect.WidestSpread ? -1000 : 0;
        return first + (beyondC / Math.Max(1, range.ToC - range.FromC));
    }

    private static string Names(IReadOnlyList<TyreHeat> tyres, Func<TyreHeat, bool> isMeant) =>
        string.Join(" and the ", tyres.Where(isMeant).Select(tyre => CorneringWords.Name(tyre.Position)));

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
