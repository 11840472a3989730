namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// How much of the load that braking and driving shift is carried by the links instead of the springs, %. Braking torque is held by
/// the upright (brake at the wheel), drive torque by the body; by virtual work, with the slopes of contact and wheel centre
/// (derivation in docs/methods/travel-sweep). None where both wheels of a twist beam move oppositely: braking and driving move both alike.
/// </summary>
/// <param name="AntiDivePct">Front axle, braking; null at the rear, or where an input is missing.</param>
/// <param name="AntiLiftPct">Rear axle braking; front axle driving alone; else null.</param>
/// <param name="AntiSquatPct">Rear axle driving alone; else null.</param>
public readonly record struct AntiFigures(double? AntiDivePct, double? AntiLiftPct, double? AntiSquatPct)
{
    /// <summary>The figures of one position, by its slopes; null where those are not known.</summary>
    /// <param name="contactForwardSlope">Forward by upward movement of the upright's point at the contact.</param>
    /// <param name="centreForwardSlope">Forward by upward movement of the wheel centre.</param>
    /// <param name="axle">What is known of the whole axle.</param>
    public static AntiFigures Compute(double? contactForwardSlope, double? centreForwardSlope, in AxleInputs axle)
    {
        if (axle.MovesOppositely || axle.IsFront is not { } isFront || axle.WheelbaseMm / axle.CentreOfGravityHeightMm is not { } lever) return default;
        var brakingFront = axle.BrakeShareFrontPct * contactForwardSlope * lever;
        var drivesAlone = axle.Drive == AxleDrive.Alone;
        var driving = 100 * centreForwardSlope * lever;
        if (isFront) return new(brakingFront, drivesAlone ? driving : null, null);
        var brakingRear = (100 - axle.BrakeShareFrontPct) * -contactForwardSlope * lever;
        return new(null, brakingRear, drivesAlone ? -driving : null);
    }
}
