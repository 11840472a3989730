using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>The figures a sweep leaves out in every row, and why.</summary>
public static class SweepGaps
{
    private static readonly string[] OfAxis = ["casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm"];
    private static readonly string[] OfRack = ["otherSteerDeg", "ackermannPct", "turningCircleM"];

    /// <summary>Of a corner with points.</summary>
    public static IReadOnlyList<FigureGap> Of(CornerMechanism corner, in AxleInputs axle)
    {
        ArgumentNullException.ThrowIfNull(corner);
        var gaps = new List<FigureGap>();
        if (!corner.HasRack)
        {
            Add(gaps, "this kind of suspension does not steer, so it has no steering axis", OfAxis);
            Add(gaps, "this kind of suspension has no rack", OfRack);
        }
        else if (axle.WheelbaseMm is null)
        {
            Add(gaps, "needs wheelbaseMm", "ackermannPct", "turningCircleM");
        }

        AddSprings(gaps, corner.Setting.Suspension);
        AddAnti(gaps, axle);
        Add(gaps, "points are taken as exact; only a measured suspension has a range", "ranges");
        return gaps;
    }

    private static void AddSprings(List<FigureGap> gaps, Hardpoints suspension)
    {
        // A strut without points is its own spring and damper.
        if (suspension is MacPhersonStrut) return;
        if (suspension.Spring is null) Add(gaps, "needs springChassis and springMoving", "springMotionRatio", "springLengthMm");
        if (suspension.Damper is null) Add(gaps, "needs damperChassis and damperMoving", "damperMotionRatio", "damperLengthMm");
    }

    private static void AddAnti(List<FigureGap> gaps, in AxleInputs axle)
    {
        if (axle.MovesOppositely)
        {
            Add(gaps, "braking and driving move both wheels of a twist beam alike; ask for motion parallel", "antiDivePct", "antiLiftPct", "antiSquatPct");
            return;
        }

        if (axle.IsFront is not { } isFront)
        {
            Add(gaps, "needs axle, wheelbaseMm and centreOfGravityHeightMm, for braking brakeShareFrontPct, for driving drivenAxle", "antiDivePct", "antiLiftPct", "antiSquatPct");
            return;
        }

        var braking = NeedsForBraking(axle);
        var driving = NeedsForDriving(axle);
        if (isFront)
        {
            Add(gaps, braking, "antiDivePct");
            Add(gaps, driving, "antiLiftPct");
            Add(gaps, "of a rear axle only", "antiSquatPct");
        }
        else
        {
            Add(gaps, "of a front axle only", "antiDivePct");
            Add(gaps, braking, "antiLiftPct");
            Add(gaps, driving, "antiSquatPct");
        }
    }

    private static string? NeedsForBraking(in AxleInputs axle) =>
        Needs(axle.WheelbaseMm is null, axle.CentreOfGravityHeightMm is null, axle.BrakeShareFrontPct is null ? "brakeShareFrontPct" : null);

    private static string? NeedsForDriving(in AxleInputs axle) => axle.Drive switch
    {
        AxleDrive.None => "this axle does not drive the car",
        AxleDrive.Shared => "both axles drive, in a share that is not known",
        _ => Needs(axle.WheelbaseMm is null, axle.CentreOfGravityHeightMm is null, axle.Drive is null ? "drivenAxle" : null),
    };

    private static string? Needs(bool wheelbase, bool height, string? other)
    {
        string[] missing = [.. new[] { wheelbase ? "wheelbaseMm" : null, height ? "centreOfGravityHeightMm" : null, other }.OfType<string>()];
        return missing.Length == 0 ? null : "needs " + string.Join(" and ", missing);
    }

    private static void Add(List<FigureGap> gaps, string? reason, params ReadOnlySpan<string> outputs)
    {
        if (reason is null) return;
        foreach (var output in outputs) gaps.Add(new FigureGap(output, reason));
    }
}
