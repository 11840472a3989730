using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// How the upright moves as a rigid body per unit of something (mm of wheel travel, or mm of rack): the field v(p) = v + ω × (p −
/// wheel centre).
/// </summary>
/// <param name="Velocity">Movement of the wheel centre, mm per unit.</param>
/// <param name="Spin">Rotation, radians per unit.</param>
public readonly record struct UprightMotion(Vector3 Velocity, Vector3 Spin)
{
    /// <summary>Movement of the point of the upright that lies <paramref name="fromCentre"/> from the wheel centre, mm per unit.</summary>
    public Vector3 At(in Vector3 fromCentre) => Velocity + Spin.Cross(fromCentre);

    /// <summary>Change of a direction fixed to the upright, per unit.</summary>
    public Vector3 RateOf(in Vector3 direction) => Spin.Cross(direction);
}
