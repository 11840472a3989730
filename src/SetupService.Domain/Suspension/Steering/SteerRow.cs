namespace SetupService.Domain.Suspension.Steering;

/// <summary>How a left wheel stands at one steer angle. What needs the contact is null where the wheel's place on its axis is not known.</summary>
public readonly record struct SteerRow
{
    /// <summary>Heading of the wheel, degrees; positive = left, so negative = this wheel is the outer one.</summary>
    public required double SteerDeg { get; init; }

    /// <summary>Turn about the steering axis from where the wheel was stated, degrees; positive = left.</summary>
    public required double RotationDeg { get; init; }

    /// <summary>Camber, degrees; negative = top inboard.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Camber less the camber stated, degrees.</summary>
    public required double CamberChangeDeg { get; init; }

    /// <summary>What the handbooks' form for small angles says the camber is, degrees; it takes the stated toe for nothing.</summary>
    public required double CamberApproximationDeg { get; init; }

    /// <summary>Scrub radius, mm; positive = the axis meets the ground inboard of the contact centre.</summary>
    public double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, mm; positive = the axis meets the ground ahead of the contact centre.</summary>
    public double? MechanicalTrailMm { get; init; }

    /// <summary>
    /// Height of the contact centre against the body less that before steering, mm. Negative = the wheel pushes down: the body
    /// rises here, if the other wheels are left out of account.
    /// </summary>
    public double? ContactHeightChangeMm { get; init; }
}
