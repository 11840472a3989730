using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>What a measured corner does not tell, and why.</summary>
public static class MeasuredGaps
{
    private static readonly string[] OfPoints =
    [
        "halfTrackChangeMm", "contactForwardMm", "rollCentreHeightMm", "instantCentreYMm", "instantCentreZMm", "swingArmMm",
        "sideInstantCentreXMm", "sideInstantCentreZMm", "scrubRadiusMm", "mechanicalTrailMm", "springMotionRatio", "damperMotionRatio",
        "springLengthMm", "damperLengthMm", "antiDivePct", "antiLiftPct", "antiSquatPct", "ackermannPct", "turningCircleM",
    ];

    private static readonly string[] OfToe = ["toeDeg", "steerDeg", "otherSteerDeg", "bumpSteerDegPer10Mm", "bumpSteerMmPer10Mm"];

    private static readonly string[] AdjustedFigures =
    [
        "scrubRadiusMm", "mechanicalTrailMm", "rollCentreHeightMm", "springMotionRatio", "trackChangeMm", "tieRodChangeMm",
        "tyreTopOutboardChangeMm", "inboardGapChangeMm",
    ];

    /// <summary>Of a sweep.</summary>
    public static IReadOnlyList<SweepGap> OfSweep(MeasuredCorner corner, double? trackMm)
    {
        List<SweepGap> gaps = [.. OfPoints.Select(output => new SweepGap(output, MeasuredWords.Reason(MeasuredGap.NeedsPoints)))];
        if (corner.ToeGap is { } toe) gaps.AddRange(OfToe.Select(output => new SweepGap(output, MeasuredWords.Reason(toe))));
        gaps.Add(new("casterDeg", corner.CasterGap is { } caster ? MeasuredWords.Reason(caster) : "known at ride height only; how it goes with travel needs the points"));
        gaps.Add(new("steeringAxisInclinationDeg", corner.InclinationGap is { } inclination ? MeasuredWords.Reason(inclination) : "known at ride height only; how it goes with travel needs the points"));
        if (trackMm is null) gaps.Add(new("camberGainPerRoll", "needs trackMm"));
        return gaps;
    }

    /// <summary>Of an adjusted corner, before and after.</summary>
    public static IReadOnlyList<SweepGap> OfAdjusted(MeasuredCorner corner, MeasuredStand after)
    {
        List<SweepGap> gaps = [.. AdjustedFigures.Select(output => new SweepGap(output, MeasuredWords.Reason(MeasuredGap.NeedsPoints)))];
        if (after.ToeDeg is null) gaps.Add(new("toeDeg", corner.ToeGap is { } toe ? MeasuredWords.Reason(toe) : "how a moved top mount changes toe is not told by readings; set it afterwards"));
        if (corner.ToeGap is { } notRead) gaps.Add(new("bumpSteerDegPer10Mm", MeasuredWords.Reason(notRead)));
        if (after.CasterDeg is null) gaps.Add(new("casterDeg", Axis(corner.CasterGap ?? (after.TravelMm == 0 ? corner.RearwardGap : null))));
        if (after.SteeringAxisInclinationDeg is null)
        {
            gaps.Add(new("steeringAxisInclinationDeg", Axis(corner.InclinationGap)));
            gaps.Add(new("includedAngleDeg", Axis(corner.InclinationGap)));
        }

        return gaps;
    }

    private static string Axis(MeasuredGap? gap) =>
        gap is { } known ? MeasuredWords.Reason(known) : "how the steering axis goes with travel is not told by readings; it needs the points";
}
