using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>What a wheel's inclination to the road is made of, degrees; the five add up to it.</summary>
public sealed record ContributionsPart
{
    /// <summary>Camber as set.</summary>
    [Sample(-2.0)]
    public required double Static { get; init; }

    /// <summary>What travel, and a changed ride height, do; null where an inner wheel is beyond what was read of its suspension.</summary>
    [Sample(-0.4)]
    public required double? Kinematic { get; init; }

    /// <summary>What the roll of the body does.</summary>
    [Sample(2.6)]
    public required double Roll { get; init; }

    /// <summary>What steering about the inclined axis does.</summary>
    [Sample(-0.3)]
    public required double Steer { get; init; }

    /// <summary>What side force does by the give of the suspension.</summary>
    [Sample(0.5)]
    public required double Compliance { get; init; }
}
