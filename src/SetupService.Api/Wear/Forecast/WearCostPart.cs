using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What wear costs: the zone that ends the tyre takes its share of the usable depth, times the price.</summary>
public sealed record WearCostPart
{
    /// <summary>The currency.</summary>
    [Sample("EUR")]
    public required string Currency { get; init; }

    /// <summary>The zone it is counted by.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>New depth minus the limit.</summary>
    [Sample(6.4)]
    public required double UsableDepthMm { get; init; }

    /// <summary>Cost of a lap; null where its wear is not told apart.</summary>
    public required UncertaintyResponse? PerLapAmount { get; init; }

    /// <summary>Cost of 1000 km on the road; null where their wear is not told apart.</summary>
    public required UncertaintyResponse? Per1000KmAmount { get; init; }

    /// <summary>Cost of a lap with the road that goes with it; null where one clock stands still.</summary>
    public required UncertaintyResponse? PerLapOfMixAmount { get; init; }
}
