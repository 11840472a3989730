using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Wear.Forecast;

namespace SetupService.Api.Wear.Forecast;

/// <summary>How one zone wears and how long it lasts.</summary>
public sealed record ForecastZonePart
{
    /// <summary>Whether the readings carry a forecast.</summary>
    [Sample("estimated")]
    public required ForecastStatus Status { get; init; }

    /// <summary>Why there is no forecast; null where there is one.</summary>
    [Sample("A forecast needs 4 readings at different distances; there are 3.")]
    public required string? Reason { get; init; }

    /// <summary>Wear from the first reading to the last, as read.</summary>
    [Sample(2.1)]
    public required double WornMm { get; init; }

    /// <summary>Depth at the last reading by the straight line; null without a forecast.</summary>
    public required UncertaintyResponse? DepthNowMm { get; init; }

    /// <summary>Wear per 1000 km on the road; null where the readings do not tell it apart.</summary>
    public required UncertaintyResponse? RatePer1000KmMm { get; init; }

    /// <summary>Wear per lap on track; null where the readings do not tell it apart.</summary>
    public required UncertaintyResponse? RatePerLapMm { get; init; }

    /// <summary>Kilometres left if it sees nothing but road; null where the rate is not known or not shown to be above zero.</summary>
    public required UncertaintyResponse? KmLeft { get; init; }

    /// <summary>Kilometres that are left at least, with 95 %, if it sees nothing but road; null where the rate is not known, or depth grows.</summary>
    [Sample(5200.0)]
    public required double? KmLeftAtLeast { get; init; }

    /// <summary>Laps left if it sees nothing but track; null where the rate is not known or not shown to be above zero.</summary>
    public required UncertaintyResponse? LapsLeft { get; init; }

    /// <summary>Laps that are left at least, with 95 %, if it sees nothing but track; null where the rate is not known, or depth grows.</summary>
    [Sample(61.0)]
    public required double? LapsLeftAtLeast { get; init; }

    /// <summary>What is left if road and track go on in the proportion they had; null without a forecast or where one clock stands still.</summary>
    public required SameMixPart? SameMix { get; init; }
}
