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

/// <summary>What turning the tyre on its rim brings: outer and inner shoulder change places. Only where the tread has no direction and no marked outside.</summary>
public sealed record TurningPart
{
    /// <summary>When, and how much.</summary>
    public required ChangeOfPlacePart Change { get; init; }

    /// <summary>Whether the readings show that the shoulders wear at different rates; else the gain may be chance.</summary>
    [Sample(true)]
    public required bool IsShown { get; init; }
}

/// <summary>What swapping with the other tyre brings, each going on at the other's rates; outer stays outer. By the estimates, in this tyre's proportion of road and track.</summary>
public sealed record SwappingPart
{
    /// <summary>The best time, and how long until the first of both is done.</summary>
    public required ChangeOfPlacePart Change { get; init; }

    /// <summary>This tyre where it is.</summary>
    public required TyreLifePart ThisHere { get; init; }

    /// <summary>This tyre in the other's place from now on.</summary>
    public required TyreLifePart ThisThere { get; init; }

    /// <summary>The other tyre where it is.</summary>
    public required TyreLifePart OtherThere { get; init; }

    /// <summary>The other tyre in this one's place from now on.</summary>
    public required TyreLifePart OtherHere { get; init; }
}

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
