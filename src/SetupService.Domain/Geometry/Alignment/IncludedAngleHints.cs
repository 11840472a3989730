namespace SetupService.Domain.Geometry.Alignment;

/// <summary>Reads the hint. Derived from rigid bodies: what stands between ball joint and hub alone makes the included angle.</summary>
public static class IncludedAngleHints
{
    /// <summary>How far the sides may lie apart and still agree, degrees (common practice, no source).</summary>
    public const double SameDeg = 0.5;

    /// <summary>The hint of two differences, left less right, degrees; null where one is not known.</summary>
    public static IncludedAngleHint? From(double? crossInclinationDeg, double? crossIncludedAngleDeg)
    {
        if (crossInclinationDeg is not { } inclinationDeg || crossIncludedAngleDeg is not { } includedDeg) return null;
        return (Math.Abs(inclinationDeg) > SameDeg, Math.Abs(includedDeg) > SameDeg) switch
        {
            (false, false) => IncludedAngleHint.NoDifference,
            (false, true) => IncludedAngleHint.UprightOrStrut,
            (true, false) => IncludedAngleHint.TowerOrArm,
            (true, true) => IncludedAngleHint.Both,
        };
    }
}
