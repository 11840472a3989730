using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Suspension.Search;

/// <summary>What an adjustment uses although nobody gave it.</summary>
public static class AdjustmentAssumptions
{
    private const string CommonPractice = "common practice, no source";

    private static readonly Assumption BothSides = new(
        "/vehicle", null, "the right side adjusted alike", "the contract's convention", "Track counts both wheels; each other figure is the left corner's.");

    private static readonly Assumption NotReset = new(
        "/resetToe", null, "false", "the contract's default", "Toe is left to change with the adjustment; on the car it is reset afterwards, which moves the other angles a little too.");

    private static readonly Assumption Parallel = new(
        "/motion", null, "parallel", "the contract's default", "A twist beam moves otherwise in roll than in heave; the gain here is that of heave.");

    private static readonly Assumption ArchAtTop = new(
        "/archGapMm", null, "the arch is met by the tyre's top", CommonPractice, "How far up the arch's edge stands is not given; the tyre's top moves furthest when the wheel is leant.");

    /// <summary>The list, beside what the suspension takes by itself.</summary>
    /// <param name="suspension">The suspension.</param>
    /// <param name="axle">JSON pointer of the axle.</param>
    /// <param name="used">What is adjusted, or may be.</param>
    /// <param name="member">JSON pointer of the list those stand in.</param>
    /// <param name="resetToe">Whether toe is reset; null where nobody said.</param>
    /// <param name="motion">How both wheels move; null where nobody said.</param>
    /// <param name="keepsArchGap">True where a gap to the arch is kept.</param>
    public static IReadOnlyList<Assumption> Find(SuspensionModel suspension, string axle, ReadOnlySpan<Adjustment> used, string member, bool? resetToe, AxleMotion? motion, bool keepsArchGap)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        var list = new List<Assumption>();
        if (!suspension.Tells.HasFlag(SuspensionFigures.SteeringLinkage))
        {
            if (IsUsed(used, Adjuster.StrutTopInboard) || IsUsed(used, Adjuster.StrutTopRearward))
                list.Add(new(axle + "/suspension/topMountReadings", null, "a strut rigid about its ball joint", "derivation in docs/methods/measured-corner", "Moved inboard the mount changes camber and inclination, moved rearward caster alone; of the little each does to the other nothing is known."));
            if (IsUsed(used, Adjuster.KnuckleEccentric))
                list.Add(new(axle + "/suspension/points", null, "the strut keeps its place", "derivation in docs/methods/suspension-adjustment", "The wheel turns by the angle whose sine is the throw by the distance of the bolts; the strut itself leans back by a little, which needs the points."));
            return list;
        }

        list.Add(BothSides);
        if (suspension.PointErrorMm > 0)
            list.Add(new(axle + "/suspension/points/pointErrorMm", null, "used for camber and caster after the adjustment", "derivation in docs/methods/suspension-adjustment", "The other figures are told as if the points were exact; what the error leaves open in them a travel sweep tells."));
        if (resetToe is null && suspension.HasTieRod) list.Add(NotReset);
        SweepAssumptions.AddMotion(list, suspension, motion, Parallel);
        if (keepsArchGap) list.Add(ArchAtTop);
        for (var i = 0; i < used.Length; i++)
        {
            if (used[i] is { By: Adjuster.KnuckleEccentric, Pivot: null })
                list.Add(new(FormattableString.Invariant($"{member}/{i}/pivot"), null, "strutLower", CommonPractice, "The bolt the knuckle turns about is not given; its place changes camber by little."));
        }

        return list;
    }

    private static bool IsUsed(ReadOnlySpan<Adjustment> used, Adjuster adjuster)
    {
        foreach (var one in used)
        {
            if (one.By == adjuster) return true;
        }

        return false;
    }
}
