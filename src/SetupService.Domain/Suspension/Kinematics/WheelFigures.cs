using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// What a left corner gives at one position: angles of the wheel and of its steering axis, where its contact went, and how it moves
/// from there. Signs as in <see cref="WheelPlane"/> and <see cref="SteeringAxis"/>; null where this kind of suspension has no such
/// figure or the figure lies at infinity.
/// </summary>
public readonly record struct WheelFigures
{
    /// <summary>Wheel travel from the stated position, mm; positive = bump.</summary>
    public required double TravelMm { get; init; }

    /// <summary>Rack travel, mm; positive = to the left.</summary>
    public required double RackMm { get; init; }

    /// <summary>Camber against the body, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Toe, degrees.</summary>
    public required double ToeDeg { get; init; }

    /// <summary>Caster, degrees.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Scrub radius, mm.</summary>
    public double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, mm.</summary>
    public double? MechanicalTrailMm { get; init; }

    /// <summary>The contact centre's movement outboard from the stated position, mm.</summary>
    public required double HalfTrackChangeMm { get; init; }

    /// <summary>The contact centre's movement forward from the stated position, mm.</summary>
    public required double ContactForwardMm { get; init; }

    /// <summary>The contact centre's height against the body, mm, in the axes of the points.</summary>
    public required double ContactHeightMm { get; init; }

    /// <summary>Distance of the contact centre from the car's centre plane, mm.</summary>
    public required double HalfTrackMm { get; init; }

    /// <summary>Front-view instant centre, mm to the left of the car's centre plane.</summary>
    public double? InstantCentreYMm { get; init; }

    /// <summary>Front-view instant centre's height, mm, in the axes of the points.</summary>
    public double? InstantCentreZMm { get; init; }

    /// <summary>Front-view swing arm, mm: contact centre to instant centre across the car; positive = the instant centre is inboard.</summary>
    public double? SwingArmMm { get; init; }

    /// <summary>True of a twist beam both of whose wheels move alike.</summary>
    internal bool IsBeamInHeave { get; init; }

    /// <summary>Kinematic roll centre of a mirrored pair at equal travel, mm above the contact centre; null of a twist beam whose wheels move alike, which is no roll.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Side-view instant centre, mm forward in the axes of the points.</summary>
    public double? SideInstantCentreXMm { get; init; }

    /// <summary>Side-view instant centre's height, mm, in the axes of the points.</summary>
    public double? SideInstantCentreZMm { get; init; }

    /// <summary>Forward by upward movement of the upright's point at the contact: what braking with the torque held by the upright works against.</summary>
    public double? ContactForwardSlope { get; init; }

    /// <summary>Forward by upward movement of the wheel centre: what drive with the torque held by the body works against.</summary>
    public required double CentreForwardSlope { get; init; }

    /// <summary>Change of camber per mm of bump, degrees.</summary>
    public required double CamberGainDegPerMm { get; init; }

    /// <summary>Change of toe per mm of bump, degrees.</summary>
    public required double ToeGainDegPerMm { get; init; }

    /// <summary>Length between the spring's points, mm.</summary>
    public double? SpringLengthMm { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    public double? SpringMotionRatio { get; init; }

    /// <summary>Length between the damper's points, mm.</summary>
    public double? DamperLengthMm { get; init; }

    /// <summary>Damper travel per wheel travel.</summary>
    public double? DamperMotionRatio { get; init; }
}
