namespace SetupService.Domain.Handling.Cornering;

/// <summary>What a wheel's inclination to the road is made of, degrees; the five add up to it.</summary>
/// <param name="StaticDeg">Camber as set.</param>
/// <param name="KinematicDeg">What travel, and a changed ride height, do.</param>
/// <param name="RollDeg">What the roll of the body does.</param>
/// <param name="SteerDeg">What steering about the inclined axis does.</param>
/// <param name="ComplianceDeg">What side force does by the give of the suspension.</param>
public readonly record struct CamberContributions(double StaticDeg, double KinematicDeg, double RollDeg, double SteerDeg, double ComplianceDeg)
{
    /// <summary>Inclination to the road, degrees; negative = top towards the car's centre.</summary>
    public double InclinationAngleDeg => StaticDeg + KinematicDeg + RollDeg + SteerDeg + ComplianceDeg;
}
