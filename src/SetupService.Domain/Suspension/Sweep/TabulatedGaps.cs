using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>The figures that readings leave out at every position, and why.</summary>
internal static class TabulatedGaps
{
    private const string AtStatedHeightOnly = "known at ride height only; how it goes with travel needs the points";

    private static readonly string[] OfPoints =
    [
        "halfTrackChangeMm", "contactForwardMm", "rollCentreHeightMm", "instantCentreYMm", "instantCentreZMm", "swingArmMm",
        "sideInstantCentreXMm", "sideInstantCentreZMm", "scrubRadiusMm", "mechanicalTrailMm", "springMotionRatio", "damperMotionRatio",
        "springLengthMm", "damperLengthMm", "antiDivePct", "antiLiftPct", "antiSquatPct", "ackermannPct", "turningCircleM",
    ];

    private static readonly string[] OfToe = ["toeDeg", "steerDeg", "otherSteerDeg", "bumpSteerDegPer10Mm", "bumpSteerMmPer10Mm"];

    /// <summary>Of a corner known by readings.</summary>
    public static IReadOnlyList<FigureGap> Find(MeasuredCorner corner, bool isTrackKnown)
    {
        List<FigureGap> gaps = [.. OfPoints.Select(output => new FigureGap(output, MeasuredWords.Reason(MeasuredGap.NeedsPoints), MeasuredWords.Needs(MeasuredGap.NeedsPoints)))];
        if (corner.ToeGap is { } toe) gaps.AddRange(OfToe.Select(output => new FigureGap(output, MeasuredWords.Reason(toe), MeasuredWords.Needs(toe))));
        gaps.Add(new("casterDeg", corner.CasterGap is { } caster ? MeasuredWords.Reason(caster) : AtStatedHeightOnly, MeasuredWords.Needs(corner.CasterGap ?? MeasuredGap.NeedsPoints)));
        gaps.Add(new("steeringAxisInclinationDeg", corner.InclinationGap is { } inclination ? MeasuredWords.Reason(inclination) : AtStatedHeightOnly, MeasuredWords.Needs(corner.InclinationGap ?? MeasuredGap.NeedsPoints)));
        if (!isTrackKnown) gaps.Add(new("camberGainPerRoll", "needs trackMm", "/trackMm"));
        return gaps;
    }
}
