namespace SetupService.Domain.Numerics;

/// <summary>
/// A rotation in space as a unit quaternion: <see cref="W"/> the cosine of half the angle, the vector part along the axis. Kept at
/// length 1 by every operation, so that it never drifts away from a rotation. <see cref="None"/> turns nothing; the default
/// (all zero) is no rotation and must not be used.
/// </summary>
/// <param name="W">Cosine of half the angle.</param>
/// <param name="X">Part along X.</param>
/// <param name="Y">Part along Y.</param>
/// <param name="Z">Part along Z.</param>
public readonly record struct Rotation(double W, double X, double Y, double Z)
{
    /// <summary>No rotation.</summary>
    public static Rotation None => new(1, 0, 0, 0);

    /// <summary>A rotation about a direction of length 1, right-handed, radians.</summary>
    public static Rotation About(in Vector3 unitAxis, double angleRad)
    {
        var (sin, cos) = Math.SinCos(0.5 * angleRad);
        return new(cos, sin * unitAxis.X, sin * unitAxis.Y, sin * unitAxis.Z);
    }

    /// <summary>
    /// This rotation, turned further by a small one given as a rotation vector, radians. The Cayley map takes the vector: exactly
    /// a rotation, and the one meant to second order, which is all that an iteration needs.
    /// </summary>
    public Rotation TurnedBy(in Vector3 smallRad)
    {
        var (x, y, z) = (0.5 * smallRad.X, 0.5 * smallRad.Y, 0.5 * smallRad.Z);
        var w = W - (x * X) - (y * Y) - (z * Z);
        var i = X + (x * W) + (y * Z) - (z * Y);
        var j = Y + (y * W) + (z * X) - (x * Z);
        var k = Z + (z * W) + (x * Y) - (y * X);
        var scale = 1 / Math.Sqrt((w * w) + (i * i) + (j * j) + (k * k));
        return new(w * scale, i * scale, j * scale, k * scale);
    }

    /// <summary>The same as a matrix, to turn several vectors.</summary>
    public RotationMatrix ToMatrix()
    {
        var (x2, y2, z2) = (X + X, Y + Y, Z + Z);
        var (xx, yy, zz) = (X * x2, Y * y2, Z * z2);
        var (xy, xz, yz) = (X * y2, X * z2, Y * z2);
        var (wx, wy, wz) = (W * x2, W * y2, W * z2);
        return new(
            new(1 - (yy + zz), xy - wz, xz + wy),
            new(xy + wz, 1 - (xx + zz), yz - wx),
            new(xz - wy, yz + wx, 1 - (xx + yy)));
    }

    /// <summary>The vector, turned.</summary>
    public Vector3 Apply(in Vector3 vector) => ToMatrix().Apply(vector);
}

/// <summary>A rotation as its matrix, by rows: what a <see cref="Rotation"/> becomes when it has several vectors to turn.</summary>
/// <param name="RowX">First row.</param>
/// <param name="RowY">Second row.</param>
/// <param name="RowZ">Third row.</param>
public readonly record struct RotationMatrix(Vector3 RowX, Vector3 RowY, Vector3 RowZ)
{
    /// <summary>The vector, turned.</summary>
    public Vector3 Apply(in Vector3 vector) => new(RowX.Dot(vector), RowY.Dot(vector), RowZ.Dot(vector));
}

/// <summary>
/// A vector that turns about a fixed axis, split once so that every angle costs little (rotation formula of Rodrigues).
/// Right-handed: about an axis that points up, positive turns to the left.
/// </summary>
/// <param name="Along">The part along the axis, which stays.</param>
/// <param name="Across">The part across it, before turning.</param>
/// <param name="Ahead">Where the part across points after a quarter turn.</param>
public readonly record struct TurningVector(Vector3 Along, Vector3 Across, Vector3 Ahead)
{
    /// <summary>Splits a vector; <paramref name="axis"/> has length 1.</summary>
    public static TurningVector About(in Vector3 axis, in Vector3 vector)
    {
        var along = axis.Dot(vector) * axis;
        return new(along, vector - along, axis.Cross(vector));
    }

    /// <summary>The vector after turning, by sine and cosine of the angle.</summary>
    public Vector3 At(double sin, double cos) => Along + (cos * Across) + (sin * Ahead);
}
