using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What is left with road and track in the proportion they had between the first reading and the last: kilometres and laps are both driven.</summary>
public sealed record SameMixPart
{
    /// <summary>Road driven for each lap.</summary>
    [Sample(58.8)]
    public required double RoadPerLapKm { get; init; }

    /// <summary>Wear per lap with the road that goes with it.</summary>
    public required UncertaintyResponse WearPerLapMm { get; init; }

    /// <summary>Laps left; null where wear is not shown to be above zero.</summary>
    public required UncertaintyResponse? LapsLeft { get; init; }

    /// <summary>Laps left at least, with 95 %; null where depth grows.</summary>
    [Sample(49.0)]
    public required double? LapsLeftAtLeast { get; init; }

    /// <summary>Kilometres left that go with those laps; null where wear is not shown to be above zero.</summary>
    public required UncertaintyResponse? KmLeft { get; init; }

    /// <summary>Kilometres left at least, with 95 %; null where depth grows.</summary>
    [Sample(2900.0)]
    public required double? KmLeftAtLeast { get; init; }
}
