using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// The line a left wheel turns about. Caster and inclination are its projections in side and front view, as ISO 8855 has them:
/// caster positive with the top rearward, inclination positive with the top inboard.
/// </summary>
/// <param name="Point">Any point of it, mm.</param>
/// <param name="Direction">Its direction, upward; of any length.</param>
public readonly record struct SteeringAxis(Vector3 Point, Vector3 Direction)
{
    /// <summary>Caster, degrees, −90 to 90.</summary>
    public double CasterDeg => double.RadiansToDegrees(Math.Atan2(-Direction.X, Direction.Z));

    /// <summary>Steering-axis inclination, degrees, −90 to 90.</summary>
    public double SteeringAxisInclinationDeg => double.RadiansToDegrees(Math.Atan2(-Direction.Y, Direction.Z));

    /// <summary>The axis through two joints, mm; <paramref name="upper"/> must be above <paramref name="lower"/>.</summary>
    public static SteeringAxis Through(Vector3 lower, Vector3 upper) => new(lower, upper - lower);

    /// <summary>The direction of an axis of given caster and inclination, degrees, pointing up, of length 1.</summary>
    public static Vector3 DirectionOf(double casterDeg, double inclinationDeg) => new Vector3(
        -Math.Tan(double.DegreesToRadians(casterDeg)), -Math.Tan(double.DegreesToRadians(inclinationDeg)), 1).Unit();

    /// <summary>The point of the axis at a height, mm; not finite for a level axis.</summary>
    public Vector3 AtHeight(double heightMm) => Point + (((heightMm - Point.Z) / Direction.Z) * Direction);

    /// <summary>
    /// Scrub radius and mechanical trail, mm: from where the axis meets the ground, at the contact centre's height, to the contact
    /// centre, across and along the wheel's own heading. Positive: the axis meets the ground inboard of it; ahead of it.
    /// </summary>
    public (double ScrubRadiusMm, double MechanicalTrailMm) Offsets(in WheelPlane wheel, in Vector3 contact)
    {
        var toContact = contact - AtHeight(contact.Z);
        return (toContact.Dot(wheel.Outboard), -toContact.Dot(wheel.Heading));
    }
}
