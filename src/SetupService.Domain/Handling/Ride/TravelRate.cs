namespace SetupService.Domain.Handling.Ride;

/// <summary>A rate at a wheel travel.</summary>
/// <param name="TravelMm">Travel from ride height, mm; positive = bump.</param>
/// <param name="MotionRatio">Spring travel by wheel travel there.</param>
/// <param name="WheelRateNPerMm">Rate at the wheel, N/mm.</param>
public readonly record struct TravelRate(double TravelMm, double MotionRatio, double WheelRateNPerMm);
