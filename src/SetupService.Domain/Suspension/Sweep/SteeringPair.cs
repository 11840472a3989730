namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Both wheels of a steered axle at one rack travel. Steer positive = to the left; the inner wheel is the left one of a left turn.
/// </summary>
/// <param name="OtherSteerDeg">Steer of the right wheel, degrees.</param>
/// <param name="AckermannPct">
/// 100 (inner − outer)/(inner − ideal outer): 0 for parallel wheels, 100 where their axes meet on the rear axle's line (ISO 8855).
/// The ideal outer angle is the one that goes with the inner: cot outer = cot inner + (distance of the steering axes at the
/// ground)/wheelbase. Null below 5° at the inner wheel, where toe outweighs it, and where both axes meet the ground in one place: the
/// wheels are then ideally parallel.
/// </param>
/// <param name="TurningCircleM">Diameter between the tracks of the outer front wheel's contact, m, the turn's centre on the rear axle's line; null below 5°.</param>
public readonly record struct SteeringPair(double OtherSteerDeg, double? AckermannPct, double? TurningCircleM)
{
    /// <summary>The angle below which the percentage says nothing, degrees.</summary>
    public const double LeastAngleDeg = 5;

    // Steering axes that meet the ground nearer to each other than this, mm, stand in one place.
    private const double LeastAxisTrackMm = 1;

    /// <summary>The pair, from the left corner at the rack's travel and at the opposite one, which mirrors the right.</summary>
    /// <param name="left">Toe, degrees, and the contact's way forward, mm, of the left corner.</param>
    /// <param name="mirroredRight">The same at the opposite rack travel.</param>
    /// <param name="axisTrackMm">Distance between the steering axes at the ground at the stated position, mm; null where not known.</param>
    /// <param name="wheelbaseMm">Distance between the axles, mm; null where not known.</param>
    public static SteeringPair Compute(
        (double ToeDeg, double? ContactForwardMm) left, (double ToeDeg, double? ContactForwardMm) mirroredRight, double? axisTrackMm, double? wheelbaseMm)
    {
        var leftDeg = -left.ToeDeg;
        var rightDeg = mirroredRight.ToeDeg;
        var turnsLeft = leftDeg + rightDeg > 0;
        var innerDeg = turnsLeft ? leftDeg : -rightDeg;
        var outerDeg = turnsLeft ? rightDeg : -leftDeg;
        if (innerDeg < LeastAngleDeg || innerDeg >= 90 || wheelbaseMm is not { } wheelbase) return new(rightDeg, null, null);

        double? ackermann = null;
        if (axisTrackMm is { } axisTrack && Math.Abs(axisTrack) >= LeastAxisTrackMm)
        {
            var idealDeg = double.RadiansToDegrees(Math.Atan(1 / ((1 / Math.Tan(double.DegreesToRadians(innerDeg))) + (axisTrack / wheelbase))));
            ackermann = 100 * (innerDeg - outerDeg) / (innerDeg - idealDeg);
        }

        var outerForwardMm = turnsLeft ? mirroredRight.ContactForwardMm : left.ContactForwardMm;
        var circle = outerDeg > 0 ? 2 * (wheelbase + outerForwardMm) / Math.Sin(double.DegreesToRadians(outerDeg)) / 1000 : (double?)null;
        return new(rightDeg, ackermann, circle);
    }
}
