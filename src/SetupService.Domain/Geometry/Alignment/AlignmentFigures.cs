namespace SetupService.Domain.Geometry.Alignment;

/// <summary>
/// What follows from the angles of all four wheels, degrees; null where a reading is missing. Headings are against the car's
/// centre plane, positive = to the left. Definitions in docs/methods/alignment.md.
/// </summary>
/// <param name="Front">Front axle.</param>
/// <param name="Rear">Rear axle.</param>
public readonly record struct AlignmentFigures(AxleAngles Front, AxleAngles Rear)
{
    /// <summary>Thrust angle: where the rear wheels push the car to; positive = points left.</summary>
    public double? ThrustAngleDeg => Rear.HeadingDeg;

    /// <summary>
    /// Heading of the front wheels against the thrust line: how far they stand from where the car runs straight; positive = to
    /// the left.
    /// </summary>
    public double? SteerAheadDeg => Front.HeadingDeg - ThrustAngleDeg;

    /// <summary>Toe of the front left wheel against the thrust line; positive = toe-in.</summary>
    public double? FrontLeftToeToThrustLineDeg => Front.Left.ToeDeg + ThrustAngleDeg;

    /// <summary>Toe of the front right wheel against the thrust line; positive = toe-in.</summary>
    public double? FrontRightToeToThrustLineDeg => Front.Right.ToeDeg - ThrustAngleDeg;

    /// <summary>
    /// Angle of the line through both front wheel centres against square to the car; positive = right wheel further back, which is
    /// our own convention since no standard has one. Both in mm, the track above zero.
    /// </summary>
    public static double SetbackAngleDeg(double setbackMm, double trackMm) => double.RadiansToDegrees(Math.Atan(setbackMm / trackMm));
}
