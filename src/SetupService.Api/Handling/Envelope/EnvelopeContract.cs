using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Geometry;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Envelope;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Handling.Envelope;

/// <summary>How hard a car corners while it is braked or driven.</summary>
public sealed record EnvelopeRequest
{
    /// <summary>The car. Needed: both axle loads (or all corner weights), wheelbase, and each axle's track (or points) and spring rate; to be driven, drivenAxle.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>Longitudinal acceleration; negative = braked, positive = driven.</summary>
    [JsonRequired]
    public LongitudinalRangeDocument LongitudinalG { get; set; } = null!;

    /// <summary>Which way it turns; left where left out. Matters only where both sides of the car differ.</summary>
    [Sample("left")]
    public TurnDirection? Turn { get; set; }

    /// <summary>Speed; this, or cornerRadiusM, or neither: then 100 km/h.</summary>
    [Range(1, 500)]
    [Sample(100.0)]
    public double? SpeedKmh { get; set; }

    /// <summary>Radius of the centre of gravity's path; instead of speedKmh.</summary>
    [Range(TurnRules.LeastRadiusM, 10_000)]
    [Sample(60.0)]
    public double? CornerRadiusM { get; set; }

    /// <summary>The most lateral acceleration the car was measured to hold, neither braked nor driven: the grip of all tyres is scaled to it. Left out, it goes by the tyres' category.</summary>
    [Range(0.05, 3)]
    [Sample(1.1)]
    public double? HeldLateralG { get; set; }
}

/// <summary>Longitudinal acceleration from one end to the other, g.</summary>
public sealed record LongitudinalRangeDocument
{
    /// <summary>First value; negative = braked.</summary>
    [JsonRequired]
    [Range(-2, 2)]
    [Sample(-1.1)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-2, 2)]
    [Sample(0.5)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-4, 4)]
    [Sample(0.1)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}

/// <summary>The most lateral acceleration over longitudinal, quasi-steady: no yaw acceleration, no engine limit, a level, even road.</summary>
public sealed record EnvelopeAnswer
{
    /// <summary>A row for each longitudinal acceleration.</summary>
    public required EnvelopeRow[] Rows { get; init; }

    /// <summary>How hard the tyres let it brake and drive straight ahead.</summary>
    public required StraightResponse Straight { get; init; }

    /// <summary>The whole in a few sentences.</summary>
    [Sample("Most of all: neither braked nor driven it holds 1.10 g; then the front pushes wide. Straight ahead it brakes 1.09 g, then the rear tyres give no more. …")]
    public required string Text { get; init; }

    /// <summary>The figures left null, in every row unless said otherwise, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("envelope")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it; of a scalar with the range it plausibly lies in.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The most lateral acceleration at one longitudinal acceleration.</summary>
public sealed record EnvelopeRow
{
    /// <summary>Longitudinal acceleration; negative = braked.</summary>
    [Sample(-0.4)]
    public required double LongitudinalG { get; init; }

    /// <summary>The most lateral acceleration; null where the car cannot brake or drive so hard at all.</summary>
    [Sample(0.95)]
    public required double? LateralG { get; init; }

    /// <summary>What ends it: side force of an axle, what its tyres hold lengthwise as brakes or differential share it, roll-over, the reach of a suspension, an axle without load, or that nobody said which axle is driven.</summary>
    [Sample("rear")]
    public required EnvelopeEnd LimitedBy { get; init; }

    /// <summary>The same as a sentence.</summary>
    [Sample("Braking at 0.40 g it holds 0.95 g; then the rear slides.")]
    public required string Text { get; init; }

    /// <summary>Speed there; null with lateralG.</summary>
    [Sample(100.0)]
    public required double? SpeedKmh { get; init; }

    /// <summary>Radius of the path there; null with lateralG, or where it is as good as straight.</summary>
    [Sample(83.0)]
    public required double? CornerRadiusM { get; init; }

    /// <summary>The front axle's own limit, as cornering has it; null where the car has no equilibrium up to there, or lateralG is null.</summary>
    [Sample(1.02)]
    public required double? FrontLimitG { get; init; }

    /// <summary>The rear axle's own limit.</summary>
    [Sample(0.95)]
    public required double? RearLimitG { get; init; }

    /// <summary>The front tyres' longitudinal force there by the most they could give; null with lateralG.</summary>
    [Sample(38.0)]
    public required double? FrontLongitudinalUsedPct { get; init; }

    /// <summary>The same of the rear tyres.</summary>
    [Sample(34.0)]
    public required double? RearLongitudinalUsedPct { get; init; }

    /// <summary>Roll there; positive = out of the turn. Null with lateralG.</summary>
    [Sample(4.4)]
    public required double? RollDeg { get; init; }

    /// <summary>Pitch there; positive = nose down. Null with lateralG.</summary>
    [Sample(0.9)]
    public required double? PitchDeg { get; init; }
}

/// <summary>How hard the tyres let the car brake and drive straight ahead, whatever brakes and engine can.</summary>
public sealed record StraightResponse
{
    /// <summary>Most braking, below 0.</summary>
    [Sample(-1.09)]
    public required double? BrakingG { get; init; }

    /// <summary>What ends it.</summary>
    [Sample("rearLongitudinal")]
    public required EnvelopeEnd BrakingLimitedBy { get; init; }

    /// <summary>Most driving; null where drivenAxle is not given.</summary>
    [Sample(0.62)]
    public required double? DrivingG { get; init; }

    /// <summary>What ends it.</summary>
    [Sample("rearLongitudinal")]
    public required EnvelopeEnd DrivingLimitedBy { get; init; }
}

/// <summary>What an envelope must keep beyond types and ranges.</summary>
public sealed class EnvelopeRules : AbstractValidator<EnvelopeRequest>
{
    /// <summary>The most rows.</summary>
    public const int MostRows = 200;

    private static readonly HandlingRules Car = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public EnvelopeRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request.SpeedKmh).Null()
            .When(request => request.CornerRadiusM is not null)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage(TurnRules.OneOfBoth);
        this.LeadsToItsEnd(nameof(EnvelopeRequest.LongitudinalG), static request => request.LongitudinalG?.ToRange(), MostRows);
    }
}
