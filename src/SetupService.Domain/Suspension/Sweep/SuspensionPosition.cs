using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// What a suspension tells of its left wheel at one position, whatever it is known by. Signs as in <see cref="WheelFigures"/>; null where it
/// is not known, this kind of suspension has no such figure, or the figure lies at infinity.
/// </summary>
public readonly record struct SuspensionPosition
{
    /// <summary>Wheel travel from the present ride height, mm; positive = bump.</summary>
    public required double TravelMm { get; init; }

    /// <summary>Rack travel, mm; positive = to the left.</summary>
    public required double RackMm { get; init; }

    /// <summary>Camber against the body, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Its standard error, degrees; null where points are taken as exact.</summary>
    public double? CamberErrorDeg { get; init; }

    /// <summary>Toe, degrees; positive = toe-in.</summary>
    public double? ToeDeg { get; init; }

    /// <summary>Its standard error, degrees; null where points are taken as exact, or toe is not known.</summary>
    public double? ToeErrorDeg { get; init; }

    /// <summary>Steer of this left wheel, degrees; positive = left.</summary>
    public double? SteerDeg => -ToeDeg;

    /// <summary>Caster, degrees.</summary>
    public double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Scrub radius, mm.</summary>
    public double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, mm.</summary>
    public double? MechanicalTrailMm { get; init; }

    /// <summary>The contact centre's movement outboard from the stated position, mm.</summary>
    public double? HalfTrackChangeMm { get; init; }

    /// <summary>The contact centre's movement forward from the stated position, mm.</summary>
    public double? ContactForwardMm { get; init; }

    /// <summary>Distance of the contact centre from the car's centre plane, mm.</summary>
    public double? HalfTrackMm { get; init; }

    /// <summary>Front-view instant centre, mm to the left of the car's centre plane.</summary>
    public double? InstantCentreYMm { get; init; }

    /// <summary>Front-view instant centre's height, mm, in the axes of the points.</summary>
    public double? InstantCentreZMm { get; init; }

    /// <summary>Front-view swing arm, mm; positive = the instant centre is inboard.</summary>
    public double? SwingArmMm { get; init; }

    /// <summary>True of a twist beam both of whose wheels move alike.</summary>
    internal bool IsBeamInHeave { get; init; }

    /// <summary>Kinematic roll centre of a mirrored pair at equal travel, mm above the contact centre; null of a twist beam whose wheels move alike, which is no roll.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Side-view instant centre, mm forward in the axes of the points.</summary>
    public double? SideInstantCentreXMm { get; init; }

    /// <summary>Side-view instant centre's height, mm, in the axes of the points.</summary>
    public double? SideInstantCentreZMm { get; init; }

    /// <summary>Forward by upward movement of the upright's point at the contact.</summary>
    public double? ContactForwardSlope { get; init; }

    /// <summary>Forward by upward movement of the wheel centre.</summary>
    public double? CentreForwardSlope { get; init; }

    /// <summary>Change of camber per mm of bump, degrees.</summary>
    public double? CamberGainDegPerMm { get; init; }

    /// <summary>Degrees of camber against the body that the outer wheel gains per degree of roll; null of a twist beam whose wheels move alike.</summary>
    public double? CamberGainPerRoll => IsBeamInHeave ? null : CamberGainDegPerMm * HalfTrackMm * double.DegreesToRadians(1);

    /// <summary>Change of toe per mm of bump, degrees.</summary>
    public double? ToeGainDegPerMm { get; init; }

    /// <summary>Length between the spring's points, mm.</summary>
    public double? SpringLengthMm { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    public double? SpringMotionRatio { get; init; }

    /// <summary>Length between the damper's points, mm.</summary>
    public double? DamperLengthMm { get; init; }

    /// <summary>Damper travel per wheel travel.</summary>
    public double? DamperMotionRatio { get; init; }

    /// <summary>Of a corner closed from its points, travel counted from a ride height that lies so far from the stated one, mm.</summary>
    public static SuspensionPosition From(in WheelFigures wheel, double rideTravelMm) => new()
    {
        TravelMm = wheel.TravelMm - rideTravelMm,
        RackMm = wheel.RackMm,
        CamberDeg = wheel.CamberDeg,
        ToeDeg = wheel.ToeDeg,
        CasterDeg = wheel.CasterDeg,
        SteeringAxisInclinationDeg = wheel.SteeringAxisInclinationDeg,
        ScrubRadiusMm = wheel.ScrubRadiusMm,
        MechanicalTrailMm = wheel.MechanicalTrailMm,
        HalfTrackChangeMm = wheel.HalfTrackChangeMm,
        ContactForwardMm = wheel.ContactForwardMm,
        HalfTrackMm = wheel.HalfTrackMm,
        InstantCentreYMm = wheel.InstantCentreYMm,
        InstantCentreZMm = wheel.InstantCentreZMm,
        SwingArmMm = wheel.SwingArmMm,
        RollCentreHeightMm = wheel.RollCentreHeightMm,
        SideInstantCentreXMm = wheel.SideInstantCentreXMm,
        SideInstantCentreZMm = wheel.SideInstantCentreZMm,
        ContactForwardSlope = wheel.ContactForwardSlope,
        CentreForwardSlope = wheel.CentreForwardSlope,
        CamberGainDegPerMm = wheel.CamberGainDegPerMm,
        IsBeamInHeave = wheel.IsBeamInHeave,
        ToeGainDegPerMm = wheel.ToeGainDegPerMm,
        SpringLengthMm = wheel.SpringLengthMm,
        SpringMotionRatio = wheel.SpringMotionRatio,
        DamperLengthMm = wheel.DamperLengthMm,
        DamperMotionRatio = wheel.DamperMotionRatio,
    };
}
