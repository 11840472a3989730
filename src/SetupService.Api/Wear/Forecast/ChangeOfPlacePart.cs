using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>When a change of places is best and what it gains, by the estimates; road and track in the proportion they had. A clock that stands still has null.</summary>
public sealed record ChangeOfPlacePart
{
    /// <summary>The best time, laps from now.</summary>
    [Sample(12.0)]
    public required double? BestAfterLaps { get; init; }

    /// <summary>The best time, kilometres from now.</summary>
    [Sample(700.0)]
    public required double? BestAfterKm { get; init; }

    /// <summary>Laps until the first zone is done, with the change.</summary>
    [Sample(71.0)]
    public required double? LapsLeft { get; init; }

    /// <summary>Kilometres until then.</summary>
    [Sample(4200.0)]
    public required double? KmLeft { get; init; }

    /// <summary>Laps gained; 0 where a change gains nothing.</summary>
    [Sample(22.0)]
    public required double? GainedLaps { get; init; }

    /// <summary>Kilometres gained.</summary>
    [Sample(1300.0)]
    public required double? GainedKm { get; init; }
}
