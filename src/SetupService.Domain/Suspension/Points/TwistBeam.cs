using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>
/// Two trailing arms joined by a beam that twists. Both wheels moving alike turn about the line through the two pivots, across the
/// car; moving oppositely each turns about the line from its pivot to the beam's shear centre, which then stands still (textbook
/// construction, from memory).
/// </summary>
public sealed record TwistBeam : Hardpoints
{
    /// <summary>The left pivot on the body, mm.</summary>
    public required Vector3 PivotLeft { get; init; }

    /// <summary>Shear centre of the cross beam in the car's centre plane, mm.</summary>
    public required Vector3 BeamShearCentre { get; init; }

    /// <summary>The arm this corner is in one of the two motions.</summary>
    public TrailingArm ArmIn(AxleMotion motion) =>
        TrailingArm.About(motion == AxleMotion.Opposite ? BeamShearCentre : PivotLeft.Mirrored, PivotLeft, WheelCentre)
            with
        { Spring = Spring, Damper = Damper };
}
