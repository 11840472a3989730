using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Search;

/// <summary>The figures an adjusted corner leaves out, and why.</summary>
public static class CornerGaps
{
    private static readonly string[] OfAxis = ["casterDeg", "steeringAxisInclinationDeg", "includedAngleDeg", "scrubRadiusMm", "mechanicalTrailMm"];

    /// <summary>Of a corner with points.</summary>
    public static IReadOnlyList<FigureGap> Find(AdjustedCorner corner)
    {
        var suspension = corner.Mechanism.Setting.Suspension;
        var gaps = new List<FigureGap>();
        if (!suspension.HasTieRod)
        {
            gaps.AddRange(OfAxis.Select(output => new FigureGap(output, "this kind of suspension does not steer, so it has no steering axis")));
            gaps.Add(new("tieRodChangeMm", "this kind of suspension has no tie rod"));
        }

        if (corner.Mechanism.IsBeamInHeave) gaps.Add(new("rollCentreHeightMm", "both wheels of a twist beam move alike here, which is no roll; ask for motion opposite"));
        if (suspension is not MacPhersonStrut)
        {
            gaps.Add(new("inboardGapChangeMm", "only a strut stands beside the wheel in these points"));
            if (suspension.Spring is null) gaps.Add(new("springMotionRatio", "needs springChassis and springMoving", "/suspension/points/springChassis", "/suspension/points/springMoving"));
        }

        gaps.Add(new("ranges", "the points are taken as exact; needs pointErrorMm", "/suspension/points/pointErrorMm"));
        return gaps;
    }
}
