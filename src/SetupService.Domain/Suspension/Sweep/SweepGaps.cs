using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>The figures a sweep leaves out in every row, and why.</summary>
public static class SweepGaps
{
    private static readonly string[] OfAxis = ["casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm"];
    private static readonly string[] OfRack = ["otherSteerDeg", "ackermannPct", "turningCircleM"];

    /// <summary>Of a corner with points.</summary>
    public static IReadOnlyList<FigureGap> Find(CornerMechanism corner, in AxleInputs axle)
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
            Add(gaps, new Lack("needs wheelbaseMm", "/wheelbaseMm"), "ackermannPct", "turningCircleM");
        }

        AddSprings(gaps, corner.Setting.Suspension);
        AddAnti(gaps, axle);
        if (corner.IsBeamInHeave) Add(gaps, "both wheels of a twist beam move alike here, which is no roll; ask for motion opposite", "rollCentreHeightMm", "camberGainPerRoll");
        Add(gaps, new Lack("the points are taken as exact; needs pointErrorMm", "/suspension/points/pointErrorMm"), "ranges");
        return gaps;
    }

    private static void AddSprings(List<FigureGap> gaps, Hardpoints suspension)
    {
        // A strut without points is its own spring and damper.
        if (suspension is MacPhersonStrut) return;
        if (suspension.Spring is null) Add(gaps, new Lack("needs springChassis and springMoving", "/suspension/points/springChassis", "/suspension/points/springMoving"), "springMotionRatio", "springLengthMm");
        if (suspension.Damper is null) Add(gaps, new Lack("needs damperChassis and damperMoving", "/suspension/points/damperChassis", "/suspension/points/damperMoving"), "damperMotionRatio", "damperLengthMm");
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
            Add(gaps, new Lack("needs axle, wheelbaseMm and centreOfGravityHeightMm, for braking brakeShareFrontPct, for driving drivenAxle", "/axle", "/wheelbaseMm", "/centreOfGravityHeightMm", "/brakeShareFrontPct", "/drivenAxle"), "antiDivePct", "antiLiftPct", "antiSquatPct");
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

    private static Lack? NeedsForBraking(in AxleInputs axle) =>
        Needs(axle.WheelbaseMm is null, axle.CentreOfGravityHeightMm is null, axle.BrakeShareFrontPct is null ? "brakeShareFrontPct" : null);

    private static Lack? NeedsForDriving(in AxleInputs axle) => axle.Drive switch
    {
        AxleDrive.None => new Lack("this axle does not drive the car"),
        AxleDrive.Shared => new Lack("both axles drive, in a share that is not known"),
        _ => Needs(axle.WheelbaseMm is null, axle.CentreOfGravityHeightMm is null, axle.Drive is null ? "drivenAxle" : null),
    };

    private static Lack? Needs(bool wheelbase, bool height, string? other)
    {
        string[] missing = [.. new[] { wheelbase ? "wheelbaseMm" : null, height ? "centreOfGravityHeightMm" : null, other }.OfType<string>()];
        return missing.Length == 0 ? null : new Lack("needs " + string.Join(" and ", missing), [.. missing.Select(static name => "/" + name)]);
    }

    private static void Add(List<FigureGap> gaps, string reason, params ReadOnlySpan<string> outputs) => Add(gaps, new Lack(reason), outputs);

    private static void Add(List<FigureGap> gaps, Lack? lack, params ReadOnlySpan<string> outputs)
    {
        if (lack is null) return;
        foreach (var output in outputs) gaps.Add(new FigureGap(output, lack.Reason, lack.Needs));
    }

    /// <summary>Why a figure is left out, and the inputs that would settle it.</summary>
    private sealed record Lack(string Reason, params IReadOnlyList<string> Needs);
}
