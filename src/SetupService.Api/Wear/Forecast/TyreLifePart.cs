using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>A life in laps and kilometres, by the estimates.</summary>
public sealed record TyreLifePart
{
    /// <summary>Laps left; null where laps stand still.</summary>
    [Sample(49.0)]
    public required double? LapsLeft { get; init; }

    /// <summary>Kilometres left; null where kilometres stand still.</summary>
    [Sample(2900.0)]
    public required double? KmLeft { get; init; }
}
