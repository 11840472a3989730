namespace SetupService.Domain.Geometry.Alignment;

/// <summary>What was measured at both wheels of an axle, and what follows from it, degrees; null where a reading is missing.</summary>
/// <param name="Left">Left wheel.</param>
/// <param name="Right">Right wheel.</param>
/// <param name="IsRightMeasured">False where camber or inclination of the right wheel stands in for one that was not measured.</param>
public readonly record struct AxleAngles(WheelAngles Left, WheelAngles Right, bool IsRightMeasured = true)
{
    /// <summary>Total toe: the sum of both wheels'.</summary>
    public double? TotalToeDeg => Left.ToeDeg + Right.ToeDeg;

    /// <summary>Where the axle heads: the mean of both wheels' headings against the car's centre plane; positive = to the left.</summary>
    public double? HeadingDeg => (Right.ToeDeg - Left.ToeDeg) / 2;

    /// <summary>Camber, left less right.</summary>
    public double? CrossCamberDeg => Left.CamberDeg - Right.CamberDeg;

    /// <summary>Caster, left less right.</summary>
    public double? CrossCasterDeg => Left.CasterDeg - Right.CasterDeg;

    /// <summary>Steering-axis inclination, left less right.</summary>
    public double? CrossInclinationDeg => Left.SteeringAxisInclinationDeg - Right.SteeringAxisInclinationDeg;

    /// <summary>Included angle, left less right.</summary>
    public double? CrossIncludedAngleDeg => Left.IncludedAngleDeg - Right.IncludedAngleDeg;

    /// <summary>What the sides' difference in inclination and included angle hints at; null where they were not measured.</summary>
    public IncludedAngleHint? Hint => !IsRightMeasured ? null : IncludedAngleHints.From(CrossInclinationDeg, CrossIncludedAngleDeg);
}
