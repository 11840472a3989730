using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>A position the corner cannot take.</summary>
public sealed record UnreachablePart
{
    /// <summary>Wheel travel asked for.</summary>
    [Sample(140.0)]
    public required double TravelMm { get; init; }

    /// <summary>Rack travel asked for.</summary>
    [Sample(0.0)]
    public required double RackMm { get; init; }

    /// <summary>Why.</summary>
    [Sample("the upper arm's front link is 4.2 mm too short there")]
    public required string Reason { get; init; }

    /// <summary>The largest length by which a part does not close there at best; practically 0 past a dead point.</summary>
    [Sample(4.2)]
    public required double ResidualMm { get; init; }
}
