using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>A turn the car has no equilibrium in.</summary>
public sealed record UnreachableTurnPart
{
    /// <summary>Lateral acceleration asked for.</summary>
    [Sample(1.4)]
    public required double LateralG { get; init; }

    /// <summary>Why.</summary>
    [Sample("at 1.4 g the inner wheels carry nothing and the car would roll over; up to 1.32 g it stays upright.")]
    public required string Reason { get; init; }

    /// <summary>Up to which lateral acceleration there is an equilibrium.</summary>
    [Sample(1.32)]
    public required double LimitG { get; init; }
}
