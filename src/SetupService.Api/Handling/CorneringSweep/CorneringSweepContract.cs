using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Geometry;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Handling.CorneringSweep;

/// <summary>A car in steady turns of more and more lateral acceleration, each by itself.</summary>
public sealed record CorneringSweepRequest : TurnRequest
{
    /// <summary>Lateral acceleration, each taken as what the car does.</summary>
    [JsonRequired]
    public LateralRangeDocument LateralG { get; set; } = null!;

    /// <summary>Longitudinal acceleration kept up through the turn; positive = driven, which needs drivenAxle, negative = braked. Left out, 0.</summary>
    [Range(-2, 2)]
    [Sample(-0.3)]
    public double? LongitudinalG { get; set; }
}

/// <summary>Lateral acceleration from one end to the other, g.</summary>
public sealed record LateralRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(1.2)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-3, 3)]
    [Sample(0.1)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}

/// <summary>The car in turns of more and more lateral acceleration.</summary>
public sealed record CorneringSweepAnswer
{
    /// <summary>The turns it stands in, each as the single call answers it.</summary>
    public required TurnRow[] Rows { get; init; }

    /// <summary>What each axle can hold at this radius or speed, and which gives up first.</summary>
    public required LimitResponse Limit { get; init; }

    /// <summary>The turns it has no equilibrium in.</summary>
    public required UnreachableTurnResponse[] Unreachable { get; init; }

    /// <summary>The figures left null, in every row unless said otherwise, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("cornering")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it; of a scalar also how far roll and the outer wheels' inclination of the hardest row, and the limits, move over its plausible range.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>A turn the car has no equilibrium in.</summary>
public sealed record UnreachableTurnResponse
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

/// <summary>What a sweep over turns must keep beyond types and ranges.</summary>
public sealed class CorneringSweepRules : AbstractValidator<CorneringSweepRequest>
{
    /// <summary>The most rows of one sweep; more than any chart shows.</summary>
    public const int MostRows = 1000;

    /// <summary>Makes the rules; they hold no state.</summary>
    public CorneringSweepRules()
    {
        this.TurnsAreWhole(request => request.LateralG?.ToRange() is { Step: not 0, Count: > 0 } range ? Math.Max(range[0], range[range.Count - 1]) : null);
        this.DrivenAxleIsKnown(request => request.LongitudinalG > 0);
        this.LeadsToItsEnd(nameof(CorneringSweepRequest.LateralG), static request => request.LateralG?.ToRange(), MostRows);
    }
}
