using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>The spring at one wheel travel; the spring itself is taken as linear.</summary>
public sealed record TravelRatePart
{
    /// <summary>Wheel travel from ride height; positive = bump.</summary>
    [Sample(20.0)]
    public required double TravelMm { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    [Sample(0.95)]
    public required double MotionRatio { get; init; }

    /// <summary>Rate at the wheel.</summary>
    [Sample(24.6)]
    public required double WheelRateNPerMm { get; init; }
}
