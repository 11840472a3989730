namespace SetupService.Domain.Numerics;

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
