using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>A car in a steady turn, and changes of it to be compared.</summary>
public sealed record WhatIfRequest : TurnRequest
{
    /// <summary>The most changes of one request.</summary>
    public const int MostChanges = 24;

    /// <summary>Lateral acceleration, taken as what the car does.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.9)]
    public double LateralG { get; set; }

    /// <summary>The changes, each worked alone and all together in this order.</summary>
    [JsonRequired]
    [Count(1, MostChanges)]
    public WhatIfChangeDocument[] Changes { get; set; } = [];
}

/// <summary>One change of the car.</summary>
public sealed record WhatIfChangeDocument
{
    /// <summary>What the caller calls it.</summary>
    [JsonRequired]
    [StringLength(80)]
    [Sample("front springs 40 N/mm")]
    public string Label { get; set; } = "";

    /// <summary>What is changed.</summary>
    [JsonRequired]
    public VehicleChange Vehicle { get; set; } = null!;
}

/// <summary>What each change does alone, and all of them together.</summary>
public sealed record WhatIfAnswer
{
    /// <summary>The car as given.</summary>
    public required WhatIfFiguresResponse Before { get; init; }

    /// <summary>Each change alone, in the order asked.</summary>
    public required WhatIfChangeResponse[] Changes { get; init; }

    /// <summary>All changes, one after the other: where two set the same, the later stands.</summary>
    public required WhatIfTogetherResponse Together { get; init; }

    /// <summary>The same as a table for a person: plain text in columns, for a typeface of one width.</summary>
    [Sample("                        roll")]
    public required string Table { get; init; }

    /// <summary>What is null for the car as given, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("what-if")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The car with one change.</summary>
public sealed record WhatIfChangeResponse
{
    /// <summary>What the caller calls the change.</summary>
    [Sample("front springs 40 N/mm")]
    public required string Label { get; init; }

    /// <summary>The figures of the car with it.</summary>
    public required WhatIfFiguresResponse After { get; init; }

    /// <summary>How far they move: after less before.</summary>
    public required WhatIfFiguresResponse Change { get; init; }

    /// <summary>What is null, and why; places relative to this object.</summary>
    public required UnknownResponse[] Unknown { get; init; }
}

/// <summary>The car with all changes.</summary>
public sealed record WhatIfTogetherResponse
{
    /// <summary>The figures of the car with them.</summary>
    public required WhatIfFiguresResponse After { get; init; }

    /// <summary>How far they move: after less before.</summary>
    public required WhatIfFiguresResponse Change { get; init; }

    /// <summary>What is null, and why; places relative to this object.</summary>
    public required UnknownResponse[] Unknown { get; init; }
}

/// <summary>What a change is judged by: values of a car, or how far a change moves them; null where a figure is not known.</summary>
public sealed record WhatIfFiguresResponse
{
    /// <summary>Roll of the body in the turn.</summary>
    [Sample(3.1)]
    public required double? RollDeg { get; init; }

    /// <summary>Inclination of the outer front wheel to the road.</summary>
    [Sample(0.4)]
    public required double? FrontInclinationDeg { get; init; }

    /// <summary>Inclination of the outer rear wheel to the road.</summary>
    [Sample(-0.2)]
    public required double? RearInclinationDeg { get; init; }

    /// <summary>Front axle's share of the load transfer.</summary>
    [Sample(56.0)]
    public required double? FrontLoadTransferPct { get; init; }

    /// <summary>Lateral acceleration the front axle can hold, the rear supplying what it needs.</summary>
    [Sample(1.02)]
    public required double? FrontLimitG { get; init; }

    /// <summary>Lateral acceleration the rear axle can hold, the front supplying what it needs.</summary>
    [Sample(1.08)]
    public required double? RearLimitG { get; init; }

    /// <summary>The rear's limit less the front's; positive = the front gives up first.</summary>
    [Sample(0.06)]
    public required double? LimitMarginG { get; init; }

    /// <summary>Understeer gradient at this turn; null where an axle uses more than nine tenths of its grip or a wheel has lifted.</summary>
    [Sample(2.1)]
    public required double? UndersteerDegPerG { get; init; }

    /// <summary>Travel left to the bump stop at the outer front wheel in the turn.</summary>
    [Sample(24.0)]
    public required double? FrontBumpLeftMm { get; init; }

    /// <summary>Travel left to the bump stop at the outer rear wheel in the turn.</summary>
    [Sample(31.0)]
    public required double? RearBumpLeftMm { get; init; }

    /// <summary>Front ride frequency, the tyre in series.</summary>
    [Sample(1.41)]
    public required double? FrontRideFrequencyHz { get; init; }

    /// <summary>Rear ride frequency, the tyre in series.</summary>
    [Sample(1.5)]
    public required double? RearRideFrequencyHz { get; init; }

    /// <summary>Mean of bump and rebound damping ratio in front.</summary>
    [Sample(0.37)]
    public required double? FrontDampingRatio { get; init; }

    /// <summary>Mean of bump and rebound damping ratio behind.</summary>
    [Sample(0.3)]
    public required double? RearDampingRatio { get; init; }

    /// <summary>How much higher the front stands than the car as given.</summary>
    [Sample(-12.0)]
    public required double? FrontRideHeightChangeMm { get; init; }

    /// <summary>How much higher the rear stands than the car as given.</summary>
    [Sample(-8.0)]
    public required double? RearRideHeightChangeMm { get; init; }
}

/// <summary>What a comparison of changes must keep beyond types and ranges: a whole turn, and a whole car after each change and after all.</summary>
public sealed class WhatIfRules : AbstractValidator<WhatIfRequest>
{
    /// <summary>What the car after each change must keep.</summary>
    internal static HandlingRules Car { get; } = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public WhatIfRules()
    {
        this.TurnsAreWhole(request => request.LateralG);
        RuleFor(request => request.Changes).EachChangesSoundly(
            one => one.Vehicle, nameof(WhatIfChangeDocument.Vehicle), request => request.Vehicle, nameof(WhatIfRequest.Vehicle), Car);
    }
}
