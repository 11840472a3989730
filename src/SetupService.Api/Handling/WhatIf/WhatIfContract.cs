using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
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

    /// <summary>The changes, each worked alone and all together in this order. The faults of one are told in its own answer.</summary>
    [JsonRequired]
    [Count(1, MostChanges)]
    [KeepsFaults<CarChangeDocument>]
    public CarChangeDocument[] Changes { get; set; } = [];
}

/// <summary>What each change does alone, and all of them together.</summary>
public sealed record WhatIfAnswer
{
    /// <summary>The car as given.</summary>
    public required WhatIfFiguresResponse Before { get; init; }

    /// <summary>Each change alone, in the order asked.</summary>
    public required WhatIfChangeResponse[] Changes { get; init; }

    /// <summary>All changes, one after the other: where two set the same, the later stands. Null where one of them, or all together, cannot be answered; unknown says why.</summary>
    public required WhatIfTogetherResponse? Together { get; init; }

    /// <summary>The same as a table for a person: plain text in columns, for a typeface of one width.</summary>
    [Sample("                        roll")]
    public required string Table { get; init; }

    /// <summary>What is null for the car as given, and all together, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("what-if")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The car with one change, or why it is not answered.</summary>
public sealed record WhatIfChangeResponse
{
    /// <summary>What the caller calls the change.</summary>
    [Sample("front springs 40 N/mm")]
    public required string Label { get; init; }

    /// <summary>What it does, in at most three sentences; null where problem is not.</summary>
    [Sample("The front can hold 1.12 g (+0.024), the rear about 1.12 g as before. …")]
    public required string? Text { get; init; }

    /// <summary>The figures of the car with it; null where problem says why.</summary>
    public required WhatIfFiguresResponse? After { get; init; }

    /// <summary>How far they move: after less before; null where problem says why.</summary>
    public required WhatIfFiguresResponse? Change { get; init; }

    /// <summary>How far it moves what each axle can hold, with what the tyres leave open; null where a limit is not known, and where problem says why.</summary>
    public required LimitChangeResponse? Ranges { get; init; }

    /// <summary>What is null, and why; places relative to this object.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Why this change is not answered: it cannot be read, the car cannot stand with it, or it cannot hold the turn. Left out where it is answered.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Problem? Problem { get; init; }
}

/// <summary>The car with all changes.</summary>
public sealed record WhatIfTogetherResponse
{
    /// <summary>What they do, in at most three sentences.</summary>
    [Sample("Both axles can hold more: the front 1.14 g (+0.042), the rear 1.16 g (+0.037). …")]
    public required string Text { get; init; }

    /// <summary>The figures of the car with them.</summary>
    public required WhatIfFiguresResponse After { get; init; }

    /// <summary>How far they move: after less before.</summary>
    public required WhatIfFiguresResponse Change { get; init; }

    /// <summary>How far they move what each axle can hold, with what the tyres leave open; null where a limit is not known.</summary>
    public required LimitChangeResponse? Ranges { get; init; }

    /// <summary>What is null, and why; places relative to this object.</summary>
    public required UnknownResponse[] Unknown { get; init; }
}

/// <summary>How far a change moves the limits, g, by joint draws of what is not known of the tyres: a range that holds 0 is too little to tell.</summary>
public sealed record LimitChangeResponse
{
    /// <summary>What the front axle can hold.</summary>
    public required UncertaintyResponse FrontLimitG { get; init; }

    /// <summary>What the rear axle can hold.</summary>
    public required UncertaintyResponse RearLimitG { get; init; }

    /// <summary>The rear's less the front's.</summary>
    public required UncertaintyResponse LimitMarginG { get; init; }
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

    /// <summary>How much higher over the ground the front of the body stands than that of the car as given.</summary>
    [Sample(-12.0)]
    public required double? FrontRideHeightChangeMm { get; init; }

    /// <summary>How much higher over the ground the rear of the body stands than that of the car as given.</summary>
    [Sample(-8.0)]
    public required double? RearRideHeightChangeMm { get; init; }

    /// <summary>Camber of the front wheels standing, mean of both.</summary>
    [Sample(-0.7)]
    public required double? FrontCamberDeg { get; init; }

    /// <summary>Camber of the rear wheels standing, mean of both.</summary>
    [Sample(-1.4)]
    public required double? RearCamberDeg { get; init; }

    /// <summary>Height of the front roll centre above the ground, standing.</summary>
    [Sample(55.0)]
    public required double? FrontRollCentreHeightMm { get; init; }

    /// <summary>Height of the rear roll centre above the ground, standing.</summary>
    [Sample(95.0)]
    public required double? RearRollCentreHeightMm { get; init; }

    /// <summary>Front track.</summary>
    [Sample(1510.0)]
    public required double? FrontTrackMm { get; init; }

    /// <summary>Rear track.</summary>
    [Sample(1500.0)]
    public required double? RearTrackMm { get; init; }

    /// <summary>Scrub radius of the front wheels, standing; positive = the steering axis meets the ground inboard of the contact.</summary>
    [Sample(9.0)]
    public required double? FrontScrubRadiusMm { get; init; }

    /// <summary>Unsprung mass of a front wheel.</summary>
    [Sample(38.0)]
    public required double? FrontUnsprungMassKg { get; init; }

    /// <summary>Unsprung mass of a rear wheel.</summary>
    [Sample(36.0)]
    public required double? RearUnsprungMassKg { get; init; }
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
            one => one.Vehicle, nameof(CarChangeDocument.Vehicle), request => request.Vehicle, nameof(WhatIfRequest.Vehicle), Car);
    }
}
