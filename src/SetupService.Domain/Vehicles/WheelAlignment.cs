namespace SetupService.Domain.Vehicles;

/// <summary>Wheel and steering-axis angles of one wheel at ride height; what is not known is null.</summary>
public sealed record WheelAlignment
{
    /// <summary>Camber, degrees, negative = top inboard.</summary>
    public double? CamberDeg { get; init; }

    /// <summary>Caster, degrees, positive = top rearward.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Toe of the wheel, degrees, positive = toe-in.</summary>
    public double? ToeDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees, positive = top inboard.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }
}
