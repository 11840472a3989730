using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>What became of the wear after a change.</summary>
public enum ChangeOutcome
{
    /// <summary>It is shown to be more even, or, where that cannot be told, slower.</summary>
    Better,

    /// <summary>It is shown to be less even, or, where that cannot be told, faster.</summary>
    Worse,

    /// <summary>Better on one tyre, worse on another.</summary>
    Mixed,

    /// <summary>No change beyond what sessions vary is shown.</summary>
    NotShown,

    /// <summary>The readings do not tell.</summary>
    Unknown,
}

/// <summary>One tyre with its comparison.</summary>
/// <param name="Position">Where it is.</param>
/// <param name="Question">What was read of it.</param>
/// <param name="Wear">Its comparison.</param>
public sealed record TyreComparison(WheelPosition Position, ComparisonQuestion Question, WearComparison Wear)
{
    /// <summary>The comparison of a tyre.</summary>
    public static TyreComparison Compute(WheelPosition position, ComparisonQuestion question) => new(position, question, WearComparison.Compute(question));
}

/// <summary>Tells what became of the wear.</summary>
public static class ChangeOutcomes
{
    /// <summary>The shoulder whose rate differed most from the centre's before; null where neither is known.</summary>
    public static TreadPlace? Worst(WearComparison wear)
    {
        ArgumentNullException.ThrowIfNull(wear);
        var (outer, inner) = (Unevenness(wear.Outer?.Before), Unevenness(wear.Inner?.Before));
        return outer is null && inner is null ? null : (outer ?? -1) >= (inner ?? -1) ? TreadPlace.Outer : TreadPlace.Inner;
    }

    /// <summary>The shoulder that tells what became of the wear: the worse one, or the other where only that is shown to have changed; null where neither is known.</summary>
    public static TreadPlace? Telling(WearComparison wear)
    {
        if (Worst(wear) is not { } worst) return null;
        var other = worst == TreadPlace.Outer ? TreadPlace.Inner : TreadPlace.Outer;
        return Shoulder(wear, worst) is not { IsShown: true } && Shoulder(wear, other) is { IsShown: true } ? other : worst;
    }

    /// <summary>A shoulder against the centre.</summary>
    public static ShoulderChange? Shoulder(WearComparison wear, TreadPlace place)
    {
        ArgumentNullException.ThrowIfNull(wear);
        return place == TreadPlace.Outer ? wear.Outer : wear.Inner;
    }

    /// <summary>What became of one tyre's wear.</summary>
    public static ChangeOutcome Judge(WearComparison wear)
    {
        ArgumentNullException.ThrowIfNull(wear);
        var (outer, inner) = (OfShoulder(wear.Outer), OfShoulder(wear.Inner));
        if ((outer, inner) is (ChangeOutcome.Better, ChangeOutcome.Worse) or (ChangeOutcome.Worse, ChangeOutcome.Better)) return ChangeOutcome.Mixed;
        foreach (var shown in (ReadOnlySpan<ChangeOutcome>)[ChangeOutcome.Better, ChangeOutcome.Worse])
        {
            if (outer == shown || inner == shown) return shown;
        }

        var known = outer == ChangeOutcome.NotShown || inner == ChangeOutcome.NotShown;
        if (known) return ChangeOutcome.NotShown;
        if (wear.Zones is not { } zones) return ChangeOutcome.Unknown;
        var told = ChangeOutcome.Unknown;
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            if (zones.At(place).Main is not { IsShown: { } isShown } rate) continue;
            var here = !isShown ? ChangeOutcome.NotShown : rate.AfterMm!.Value.Value < rate.BeforeMm.Value ? ChangeOutcome.Better : ChangeOutcome.Worse;
            told = told is ChangeOutcome.Unknown or ChangeOutcome.NotShown ? here : here == ChangeOutcome.NotShown || here == told ? told : ChangeOutcome.Mixed;
        }

        return told;
    }

    /// <summary>What became of a car's wear.</summary>
    public static ChangeOutcome Judge(IReadOnlyList<TyreComparison> tyres)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var isBetter = tyres.Any(tyre => tyre.Wear.Outcome is ChangeOutcome.Better or ChangeOutcome.Mixed);
        var isWorse = tyres.Any(tyre => tyre.Wear.Outcome is ChangeOutcome.Worse or ChangeOutcome.Mixed);
        return isBetter && isWorse ? ChangeOutcome.Mixed
            : isBetter ? ChangeOutcome.Better
            : isWorse ? ChangeOutcome.Worse
            : tyres.Any(tyre => tyre.Wear.Outcome == ChangeOutcome.NotShown) ? ChangeOutcome.NotShown : ChangeOutcome.Unknown;
    }

    private static ChangeOutcome OfShoulder(ShoulderChange? change) => change is not { IsShown: { } isShown } shoulder ? ChangeOutcome.Unknown
        : !isShown ? ChangeOutcome.NotShown
        : Unevenness(shoulder.After) < Unevenness(shoulder.Before) ? ChangeOutcome.Better : ChangeOutcome.Worse;

    /// <summary>How far a ratio is from 1, either way.</summary>
    private static double? Unevenness(RatioRange? ratio) => ratio?.Value is { } value and > 0 ? Math.Abs(Math.Log(value)) : null;
}
