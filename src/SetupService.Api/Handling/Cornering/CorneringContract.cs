using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.Cornering;

/// <summary>A car in a steady turn on a level road, braked or driven through it where longitudinalG says so.</summary>
public sealed record CorneringRequest : TurnRequest
{
    /// <summary>Lateral acceleration, taken as what the car does.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.9)]
    public double LateralG { get; set; }

    /// <summary>Longitudinal acceleration kept up through the turn; positive = driven, which needs drivenAxle, negative = braked. Left out, 0.</summary>
    [Range(-2, 2)]
    [Sample(-0.3)]
    public double? LongitudinalG { get; set; }
}

/// <summary>How the car stands in the turn, and what that rests on.</summary>
public sealed record CorneringAnswer : TurnRow
{
    /// <summary>What each axle can hold at this radius or speed, and which gives up first.</summary>
    public required LimitResponse Limit { get; init; }

    /// <summary>The figures left null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("cornering")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was taken although nobody gave it; of a scalar also how far roll, the outer wheels' inclination and the limits move over its plausible range.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>What a turn must keep beyond types and ranges.</summary>
public sealed class CorneringRules : AbstractValidator<CorneringRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public CorneringRules()
    {
        this.TurnsAreWhole(request => request.LateralG);
        this.DrivenAxleIsKnown(request => request.LongitudinalG > 0);
    }
}
