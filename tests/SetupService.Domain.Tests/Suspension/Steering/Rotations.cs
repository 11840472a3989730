using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Suspension.Steering;

/// <summary>Turning by a unit quaternion, written out in double precision: another way than the one the domain goes.</summary>
public static class Rotations
{
    /// <summary>The vector turned about an axis of length 1, right-handed, degrees.</summary>
    public static Vector3 About(in Vector3 axis, double angleDeg, in Vector3 vector)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(angleDeg) / 2);
        var part = sin * axis;
        var twice = 2 * part.Cross(vector);
        return vector + (cos * twice) + part.Cross(twice);
    }
}
