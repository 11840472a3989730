namespace SetupService.Domain.Geometry.Alignment;

/// <summary>What was measured at one wheel, degrees; null where it was not. The signs are the same on both sides.</summary>
public readonly record struct WheelAngles
{
    /// <summary>Camber; negative = top towards the car's centre.</summary>
    public double? CamberDeg { get; init; }

    /// <summary>Caster; positive = top of the steering axis rearward.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Toe of this wheel against the car's centre plane; positive = toe-in.</summary>
    public double? ToeDeg { get; init; }

    /// <summary>Steering-axis inclination; positive = top towards the car's centre.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>
    /// Inclination and camber together: the angle between steering axis and wheel plane in front view, which only the parts
    /// between ball joint and hub decide.
    /// </summary>
    public double? IncludedAngleDeg => SteeringAxisInclinationDeg + CamberDeg;
}
