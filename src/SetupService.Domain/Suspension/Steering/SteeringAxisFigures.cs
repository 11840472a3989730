using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>How a left wheel stands to the axis it steers about; derivation in docs/methods/steering-axis.md.</summary>
public readonly record struct SteeringAxisFigures
{
    /// <summary>Caster, degrees; positive = top rearward.</summary>
    public required double CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees; positive = top inboard.</summary>
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Inclination and camber together, degrees.</summary>
    public required double IncludedAngleDeg { get; init; }

    /// <summary>Scrub radius, mm, across the wheel's heading; positive = the axis meets the ground inboard of the contact centre.</summary>
    public required double ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, mm, along the wheel's heading; positive = the axis meets the ground ahead of the contact centre.</summary>
    public required double MechanicalTrailMm { get; init; }

    /// <summary>How far the wheel centre stands outboard of the axis at its own height, mm, across the car.</summary>
    public required double SpindleOffsetMm { get; init; }

    /// <summary>How far the axis, at the wheel centre's height, stands ahead of it, mm, along the car.</summary>
    public required double WheelCentreTrailMm { get; init; }

    /// <summary>Where the axis meets the ground, mm: the level plane through the contact centre.</summary>
    public required Vector3 AxisAtGround { get; init; }

    /// <summary>The contact centre, mm.</summary>
    public required Vector3 Contact { get; init; }

    /// <summary>
    /// The figures of an axis through two joints and a wheel with its angles, degrees, and its loaded radius, mm; of what
    /// <see cref="SteeringAxisContradictions"/> has nothing against.
    /// </summary>
    public static SteeringAxisFigures Compute(in SteeringAxis axis, in WheelPlane wheel, double loadedRadiusMm)
    {
        var contact = wheel.Contact(loadedRadiusMm);
        var (scrubRadiusMm, mechanicalTrailMm) = axis.Offsets(wheel, contact);
        var atCentre = axis.AtHeight(wheel.Centre.Z);
        return new()
        {
            CasterDeg = axis.CasterDeg,
            SteeringAxisInclinationDeg = axis.SteeringAxisInclinationDeg,
            IncludedAngleDeg = axis.SteeringAxisInclinationDeg + wheel.CamberDeg,
            ScrubRadiusMm = scrubRadiusMm,
            MechanicalTrailMm = mechanicalTrailMm,
            SpindleOffsetMm = wheel.Centre.Y - atCentre.Y,
            WheelCentreTrailMm = atCentre.X - wheel.Centre.X,
            AxisAtGround = axis.AtHeight(contact.Z),
            Contact = contact,
        };
    }
}
