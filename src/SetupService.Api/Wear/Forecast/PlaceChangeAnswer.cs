using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Forecast;

/// <summary>When a change of places is best and what it gains, by the estimates; null for a clock that stands still.</summary>
public sealed record ChangeOfPlaceResponse
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
public sealed record TurningResponse
{
    /// <summary>What to do, and what it gains.</summary>
    [Sample("Turning the tyre on its rim gains nothing.")]
    public required string Text { get; init; }

    /// <summary>When, and how much.</summary>
    public required ChangeOfPlaceResponse Change { get; init; }

    /// <summary>Whether the readings show that the shoulders wear at different rates; else the gain may be chance.</summary>
    [Sample(true)]
    public required bool IsShown { get; init; }
}

/// <summary>What swapping two tyres brings, each going on at the other's rates, in the first one's proportion of road and track.</summary>
public sealed record SwappingResponse
{
    /// <summary>The first of the two.</summary>
    [Sample("frontLeft")]
    public required WheelPosition One { get; init; }

    /// <summary>The other.</summary>
    [Sample("rearLeft")]
    public required WheelPosition Other { get; init; }

    /// <summary>What each tyre lasts in either place, and when to swap them.</summary>
    [Sample("Swap the front left with the rear left after 12 more laps, where both are of one size: the first replacement comes 34 laps later.")]
    public required string Text { get; init; }

    /// <summary>The best time, and how long until the first of both is done.</summary>
    public required ChangeOfPlaceResponse Change { get; init; }

    /// <summary>The first where it is.</summary>
    public required TyreLifeResponse OneAsItIs { get; init; }

    /// <summary>The first in the other's place from now on.</summary>
    public required TyreLifeResponse OneSwapped { get; init; }

    /// <summary>The other where it is.</summary>
    public required TyreLifeResponse OtherAsItIs { get; init; }

    /// <summary>The other in the first's place from now on.</summary>
    public required TyreLifeResponse OtherSwapped { get; init; }
}

/// <summary>A life in laps and kilometres, by the estimates.</summary>
public sealed record TyreLifeResponse
{
    /// <summary>Laps left; null where laps stand still.</summary>
    [Sample(49.0)]
    public required double? LapsLeft { get; init; }

    /// <summary>Kilometres left; null where kilometres stand still.</summary>
    [Sample(2900.0)]
    public required double? KmLeft { get; init; }
}
