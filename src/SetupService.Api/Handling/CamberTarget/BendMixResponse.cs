using SetupService.Api.Http.Contract;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>The outer wheel in one kind of corner, with the camber found.</summary>
public sealed record BendMixResponse
{
    /// <summary>Lateral acceleration.</summary>
    [Sample(0.95)]
    public required double LateralG { get; init; }

    /// <summary>Radius.</summary>
    [Sample(45.0)]
    public required double CornerRadiusM { get; init; }

    /// <summary>Which way.</summary>
    [Sample("left")]
    public required TurnDirection Turn { get; init; }

    /// <summary>Inclination to the road.</summary>
    [Sample(0.3)]
    public required double InclinationDeg { get; init; }

    /// <summary>Load.</summary>
    [Sample(5600.0)]
    public required double LoadN { get; init; }

    /// <summary>Slip angle; positive = pulling into the turn.</summary>
    [Sample(7.1)]
    public required double SlipDeg { get; init; }

    /// <summary>Share of the tyre's work, load times slip times time, done here.</summary>
    [Sample(48.0)]
    public required double WorkPct { get; init; }
}
