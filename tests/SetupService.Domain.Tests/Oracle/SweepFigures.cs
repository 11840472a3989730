using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>The figures of a sweep's row by the names the second working gives them, and how near they are to come.</summary>
internal static class SweepFigures
{
    private const double AngleDeg = 1e-6;
    private const double LengthMm = 1e-6;
    private const double Ratio = 1e-8;

    /// <summary>
    /// What a figure may differ by: angles and lengths by an amount, ratios and slopes by an amount or a share, and what lies near
    /// an instant centre by a share, for it grows without bound as that goes to infinity.
    /// </summary>
    public static double Tolerance(string column, double value)
    {
        var share = Ratio * Math.Abs(value);
        if (column.Contains("nstantCentre", StringComparison.Ordinal) || column == "swingArmMm") return Math.Max(LengthMm, share);
        if (column.Contains("Per", StringComparison.Ordinal) || column.EndsWith("Ratio", StringComparison.Ordinal)) return Math.Max(Ratio, share);
        if (column.EndsWith("Pct", StringComparison.Ordinal)) return Math.Max(100 * Ratio, share);
        if (column.EndsWith("Deg", StringComparison.Ordinal)) return AngleDeg;
        return column.EndsWith("Mm", StringComparison.Ordinal) ? LengthMm : share;
    }

    public static double? Of(in SweepRow row, string column) => column switch
    {
        "travelMm" => row.Wheel.TravelMm,
        "rackMm" => row.Wheel.RackMm,
        "camberDeg" => row.Wheel.CamberDeg,
        "toeDeg" => row.Wheel.ToeDeg,
        "steerDeg" => row.Wheel.SteerDeg,
        "casterDeg" => row.Wheel.CasterDeg,
        "steeringAxisInclinationDeg" => row.Wheel.SteeringAxisInclinationDeg,
        "scrubRadiusMm" => row.Wheel.ScrubRadiusMm,
        "mechanicalTrailMm" => row.Wheel.MechanicalTrailMm,
        "halfTrackChangeMm" => row.Wheel.HalfTrackChangeMm,
        "contactForwardMm" => row.Wheel.ContactForwardMm,
        "instantCentreYMm" => row.Wheel.InstantCentreYMm,
        "instantCentreZMm" => row.Wheel.InstantCentreZMm,
        "swingArmMm" => row.Wheel.SwingArmMm,
        "rollCentreHeightMm" => row.Wheel.RollCentreHeightMm,
        "sideInstantCentreXMm" => row.Wheel.SideInstantCentreXMm,
        "sideInstantCentreZMm" => row.Wheel.SideInstantCentreZMm,
        "antiDivePct" => row.Anti.AntiDivePct,
        "antiLiftPct" => row.Anti.AntiLiftPct,
        "antiSquatPct" => row.Anti.AntiSquatPct,
        "springMotionRatio" => row.Wheel.SpringMotionRatio,
        "springLengthMm" => row.Wheel.SpringLengthMm,
        "damperMotionRatio" => row.Wheel.DamperMotionRatio,
        "damperLengthMm" => row.Wheel.DamperLengthMm,
        "camberGainDegPerMm" => row.Wheel.CamberGainDegPerMm,
        "camberGainPerRoll" => row.Wheel.CamberGainPerRoll,
        "bumpSteerDegPer10Mm" => 10 * row.Wheel.ToeGainDegPerMm,
        "bumpSteerMmPer10Mm" => 10 * row.BumpSteerMmPerMm,
        "otherSteerDeg" => row.Pair?.OtherSteerDeg,
        "ackermannPct" => row.Pair?.AckermannPct,
        "turningCircleM" => row.Pair?.TurningCircleM,
        _ => throw new InvalidOperationException($"The second working has a figure {column} that is compared with nothing."),
    };
}
