namespace SetupService.Domain.Suspension.Steering;

/// <summary>A left wheel and the axis it steers about, as they stand before steering. A right wheel is its mirror: steer changes sign.</summary>
public readonly record struct SteeredWheel
{
    /// <summary>Caster, degrees, under 90 in size; positive = top rearward.</summary>
    public required double CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees, under 90 in size; positive = top inboard.</summary>
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Camber, degrees, under 90 in size; negative = top inboard.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Toe, degrees, under 90 in size; positive = toe-in.</summary>
    public required double ToeDeg { get; init; }

    /// <summary>Height of the wheel centre above the ground along the wheel's plane, mm; null where it is not known.</summary>
    public double? LoadedRadiusMm { get; init; }

    /// <summary>How far the wheel centre stands outboard of the axis at its own height, mm; null where it is not known.</summary>
    public double? SpindleOffsetMm { get; init; }

    /// <summary>How far the axis, at the wheel centre's height, stands ahead of it, mm; null where it is not known.</summary>
    public double? WheelCentreTrailMm { get; init; }
}
