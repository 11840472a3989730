using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The wheel at one steer angle; null where an input is missing (<c>unknown</c> says which).</summary>
public sealed record SteerSweepRow
{
    /// <summary>Heading of this wheel; positive = left. A left wheel at negative steer is the outer one.</summary>
    [Sample(-20.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Camber by exact rotation; negative = top leaning to the car's centre.</summary>
    [Sample(-2.1)]
    public required double CamberDeg { get; init; }

    /// <summary>Camber less that before steering.</summary>
    [Sample(-1.4)]
    public required double CamberChangeDeg { get; init; }

    /// <summary>An approximation for comparison: camber by the handbooks' form for small angles, camber ± caster · sin(steer) + inclination · (1 − cos(steer)), plus for a left wheel.</summary>
    [Sample(-2.1)]
    public required double CamberApproximationDeg { get; init; }

    /// <summary>Turn about the steering axis from where the wheel was stated; positive = left.</summary>
    [Sample(-20.4)]
    public required double RotationDeg { get; init; }

    /// <summary>Scrub radius, across the wheel's own heading; positive = the axis meets the ground inboard of the contact centre.</summary>
    [Sample(-1.0)]
    public required double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, along the wheel's own heading; positive = the axis meets the ground ahead of the contact centre.</summary>
    [Sample(29.4)]
    public required double? MechanicalTrailMm { get; init; }

    /// <summary>Height of the contact centre against the body, less that before steering; negative = the wheel pushes down, so the body rises here if the other wheels are left out of account.</summary>
    [Sample(0.4)]
    public required double? ContactHeightChangeMm { get; init; }
}
