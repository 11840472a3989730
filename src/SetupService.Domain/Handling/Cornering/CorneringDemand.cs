using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What the car does: a steady turn.</summary>
/// <param name="LateralG">Lateral acceleration in g, not negative.</param>
/// <param name="RadiusM">Radius of the centre of gravity's path, m.</param>
/// <param name="Turn">Which way.</param>
public readonly record struct CorneringDemand(double LateralG, double RadiusM, TurnDirection Turn)
{
    // Straighter than this, m, nothing changes any more.
    private const double StraightM = 1e6;

    /// <summary>Speed, km/h.</summary>
    public double SpeedKmh => 3.6 * Math.Sqrt(LateralG * HandlingCar.StandardGravity * RadiusM);

    /// <summary>Whether the path is as good as straight.</summary>
    public bool IsStraight => RadiusM >= StraightM;

    /// <summary>A turn at a speed, km/h; without lateral acceleration it is straight.</summary>
    public static CorneringDemand AtSpeed(double lateralG, double speedKmh, TurnDirection turn) =>
        new(lateralG, lateralG > 0 ? Math.Min(StraightM, speedKmh * speedKmh / (12.96 * lateralG * HandlingCar.StandardGravity)) : StraightM, turn);
}
