using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// How a left wheel stands: its centre and its spin axis. Camber is negative with the top towards the car's centre, toe
/// positive with the front towards it, steer positive to the left; all against the frame the vectors are given in.
/// Definitions: ISO 8855:2011 for axes and signs; camber is what a gauge on the wheel reads, −asin of the outboard spin axis'
/// height (not the angle seen along the car, which differs at lock).
/// </summary>
/// <param name="Centre">Where the spin axis meets the wheel's centre plane, mm.</param>
/// <param name="Spin">Spin axis, pointing outboard, of length 1.</param>
public readonly record struct WheelPlane(Vector3 Centre, Vector3 Spin)
{
    /// <summary>Camber, degrees, −90 to 90.</summary>
    public double CamberDeg => -double.RadiansToDegrees(Math.Asin(Math.Clamp(Spin.Z, -1, 1)));

    /// <summary>Toe, degrees, −180 to 180.</summary>
    public double ToeDeg => double.RadiansToDegrees(Math.Atan2(Spin.X, Spin.Y));

    /// <summary>Steer, degrees, −180 to 180: the opposite of a left wheel's toe.</summary>
    public double SteerDeg => -ToeDeg;

    /// <summary>Change of camber, degrees, with a change of the spin axis, to first order. Not finite for a wheel lying flat.</summary>
    public double CamberChangeDeg(in Vector3 spinChange) => -double.RadiansToDegrees(spinChange.Z / Math.Sqrt(LevelSquare));

    /// <summary>Change of toe, degrees, with a change of the spin axis, to first order. Not finite for a wheel lying flat.</summary>
    public double ToeChangeDeg(in Vector3 spinChange) => double.RadiansToDegrees(((Spin.Y * spinChange.X) - (Spin.X * spinChange.Y)) / LevelSquare);

    /// <summary>Where the wheel rolls to: level, of length 1. Not finite for a wheel lying flat.</summary>
    public Vector3 Heading => new Vector3(Spin.Y, -Spin.X, 0).Unit();

    /// <summary>Level, across the heading, pointing outboard, of length 1. Not finite for a wheel lying flat.</summary>
    public Vector3 Outboard => new Vector3(Spin.X, Spin.Y, 0).Unit();

    /// <summary>The steepest way up within the wheel's plane, of length 1. Not finite for a wheel lying flat.</summary>
    public Vector3 Up => (Vector3.Up - (Spin.Z * Spin)).Unit();

    /// <summary>A wheel of given angles, degrees.</summary>
    public static WheelPlane At(Vector3 centre, double camberDeg, double toeDeg) => new(centre, SpinOf(camberDeg, toeDeg));

    /// <summary>The spin axis of a left wheel of given camber and toe, degrees.</summary>
    public static Vector3 SpinOf(double camberDeg, double toeDeg)
    {
        var (sinCamber, cosCamber) = Math.SinCos(double.DegreesToRadians(camberDeg));
        var (sinToe, cosToe) = Math.SinCos(double.DegreesToRadians(toeDeg));
        return new(sinToe * cosCamber, cosToe * cosCamber, -sinCamber);
    }

    /// <summary>The lowest point of the circle of <paramref name="loadedRadiusMm"/> in the wheel's plane: the contact centre.</summary>
    public Vector3 Contact(double loadedRadiusMm) => Centre - (loadedRadiusMm * Up);

    /// <summary>Movement of the contact centre against the wheel centre, mm, with a change of the spin axis, to first order. Not finite for a wheel lying flat.</summary>
    public Vector3 ContactChange(double loadedRadiusMm, in Vector3 spinChange)
    {
        var climb = Vector3.Up - (Spin.Z * Spin);
        var steepness = climb.Length;
        var up = (1 / steepness) * climb;
        var change = -((spinChange.Z * Spin) + (Spin.Z * spinChange));
        return -(loadedRadiusMm / steepness) * (change - (up.Dot(change) * up));
    }

    private double LevelSquare => (Spin.X * Spin.X) + (Spin.Y * Spin.Y);
}
