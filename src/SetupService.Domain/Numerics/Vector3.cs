using System.Globalization;

namespace SetupService.Domain.Numerics;

/// <summary>
/// Three numbers along the axes of ISO 8855: X forward, Y left, Z up. A point or a distance where the unit is mm, a
/// direction where it has none. The default is the origin.
/// </summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the left.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>Straight forward.</summary>
    public static Vector3 Forward => new(1, 0, 0);

    /// <summary>Straight to the left.</summary>
    public static Vector3 Left => new(0, 1, 0);

    /// <summary>Straight up.</summary>
    public static Vector3 Up => new(0, 0, 1);

    /// <summary>Size, in the unit of the parts.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The same in the mirror of the car's centre plane: what a left corner is to its right one.</summary>
    public Vector3 Mirrored => new(X, -Y, Z);

    /// <summary>Sum.</summary>
    public static Vector3 operator +(in Vector3 a, in Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector3 operator -(in Vector3 a, in Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite.</summary>
    public static Vector3 operator -(in Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Times a number.</summary>
    public static Vector3 operator *(double factor, in Vector3 a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    /// <summary>Divided by a number.</summary>
    public static Vector3 operator /(in Vector3 a, double divisor) => new(a.X / divisor, a.Y / divisor, a.Z / divisor);

    /// <summary>Scalar product.</summary>
    public double Dot(in Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product, right-handed.</summary>
    public Vector3 Cross(in Vector3 other) => new(
        (Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The direction, of length 1; not finite for the zero vector.</summary>
    public Vector3 Unit() => this / Length;

    /// <summary>The three numbers. The text a record has by itself would hold its mirror's text, and that the mirror's, without end.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X}, {Y}, {Z})");
}
