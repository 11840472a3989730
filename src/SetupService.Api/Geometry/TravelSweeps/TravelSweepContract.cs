using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>A corner, and the wheel travel and rack it is to be moved over.</summary>
public sealed record TravelSweepRequest : CornerRequest
{
    /// <summary>Wheel travel.</summary>
    [JsonRequired]
    public TravelRangeDocument TravelMm { get; set; } = null!;

    /// <summary>Rack travel, walked through at every wheel travel; in the middle where left out.</summary>
    public RackRangeDocument? RackMm { get; set; }

    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }

    /// <summary>Diameter at which toe is told in mm; 400 where left out.</summary>
    [Range(200, 1000)]
    [Sample(406.4)]
    public double? MeasuringDiameterMm { get; set; }
}

/// <summary>Wheel travel from one end to the other, mm, positive = bump.</summary>
public sealed record TravelRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(-60.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(60.0)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-500, 500)]
    [Sample(5.0)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}

/// <summary>Rack travel from one end to the other, mm, positive = to the left.</summary>
public sealed record RackRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(-200, 200)]
    [Sample(-40.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-200, 200)]
    [Sample(40.0)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-200, 200)]
    [Sample(10.0)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}

/// <summary>A corner over wheel travel and rack.</summary>
public sealed record TravelSweepAnswer
{
    /// <summary>The positions reached, over travel and over rack within each travel.</summary>
    public required TravelSweepRow[] Rows { get; init; }

    /// <summary>The positions that do not close.</summary>
    public required UnreachableResponse[] Unreachable { get; init; }

    /// <summary>How far the wheel can move at all; null where every position asked for was reached.</summary>
    public required RangeResponse? ReachableTravelMm { get; init; }

    /// <summary>The figures left null, in every row unless said otherwise, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("travel-sweep")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>A position the corner cannot take.</summary>
public sealed record UnreachableResponse
{
    /// <summary>Wheel travel asked for.</summary>
    [Sample(140.0)]
    public required double TravelMm { get; init; }

    /// <summary>Rack travel asked for.</summary>
    [Sample(0.0)]
    public required double RackMm { get; init; }

    /// <summary>Why.</summary>
    [Sample("the upper arm's front link is 4.2 mm too short there")]
    public required string Reason { get; init; }

    /// <summary>The largest length by which a part does not close there at best; practically 0 past a dead point.</summary>
    [Sample(4.2)]
    public required double ResidualMm { get; init; }
}

/// <summary>What a travel sweep must keep beyond types and ranges.</summary>
public sealed class TravelSweepRules : AbstractValidator<TravelSweepRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TravelSweepRules()
    {
        this.CornerIsWhole();
        this.LeadToTheirEnds(
            nameof(TravelSweepRequest.TravelMm), static request => request.TravelMm?.ToRange(), nameof(TravelSweepRequest.RackMm), static request => request.RackMm?.ToRange());
        RuleFor(request => request.RackMm).Null().When(request => request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
            .Says(FaultCodes.Inconsistent, "this kind of suspension has no rack; leave rackMm out.");
    }
}
