namespace SetupService.Domain.Suspension;

/// <summary>What a suspension tells of its wheel at the stated position; null for what it does not tell.</summary>
public readonly record struct StatedFigures
{
    /// <summary>Caster, degrees.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    public double? SpringMotionRatio { get; init; }

    /// <summary>Damper travel by wheel travel.</summary>
    public double? DamperMotionRatio { get; init; }

    /// <summary>Roll-centre height above the ground, mm.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Distance of the contact from the car's centre plane, mm.</summary>
    public double? HalfTrackMm { get; init; }
}
