using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Turns;

/// <summary>What every call on a car in a turn takes. Written before the call's own members.</summary>
public abstract record TurnRequest
{
    /// <summary>The car. Needed: both axle loads (or all corner weights), wheelbase, and each axle's track (or points) and spring rate.</summary>
    [JsonRequired]
    [JsonPropertyOrder(-1)]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>Which way it turns. In a left turn the right wheels are the outer ones.</summary>
    [JsonRequired]
    [Sample("left")]
    public TurnDirection Turn { get; set; }

    /// <summary>Radius of the centre of gravity's path; either this or speedKmh.</summary>
    [Range(TurnRules.LeastRadiusM, 10_000)]
    [Sample(60.0)]
    public double? CornerRadiusM { get; set; }

    /// <summary>Speed; either this or cornerRadiusM.</summary>
    [Range(1, 500)]
    [Sample(87.0)]
    public double? SpeedKmh { get; set; }

    /// <summary>The most lateral acceleration the car was measured to hold as given: the grip of all tyres is scaled to it. Left out, it goes by the tyres' category.</summary>
    [Range(0.05, 3)]
    [Sample(1.1)]
    public double? HeldLateralG { get; set; }
}

/// <summary>How much of a turn is worked out.</summary>
public enum TurnDetail
{
    /// <summary>How the car stands in the turn; the limits stay null, and of what was assumed only value and range are told.</summary>
    Turn,

    /// <summary>Also what each axle can hold, with its range, and what the answer becomes at both ends of every assumed range.</summary>
    Full,
}

/// <summary>How the car stands in one turn. Written before what a call adds.</summary>
public record TurnRow
{
    /// <summary>Lateral acceleration.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(0.9)]
    public required double LateralG { get; init; }

    /// <summary>Speed.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(82.8)]
    public required double SpeedKmh { get; init; }

    /// <summary>Radius of the centre of gravity's path; null where it runs as good as straight.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(60.0)]
    public required double? CornerRadiusM { get; init; }

    /// <summary>Longitudinal acceleration; negative = braked. Only where it is asked for, or the air acts.</summary>
    [JsonPropertyOrder(-1)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(-0.3)]
    public double? LongitudinalG { get; init; }

    /// <summary>Pitch of the body between its axles; positive = nose down (ISO 8855). Only with longitudinalG.</summary>
    [JsonPropertyOrder(-1)]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    [Sample(0.7)]
    public double? PitchDeg { get; init; }

    /// <summary>Roll of the body; positive = leaning out of the turn.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.1)]
    public required double RollDeg { get; init; }

    /// <summary>Change of roll per g at this turn, radius held; null where there is no turn a little harder.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.5)]
    public required double? RollDegPerG { get; init; }

    /// <summary>Mean steer of the front wheels, give left out; positive = left.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.4)]
    public required double SteerDeg { get; init; }

    /// <summary>Angle of the steering wheel that the driver turns, bump steer and give of both axles included; positive = left. Null where steeringRatio is not given.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(48.3)]
    public required double? SteeringWheelDeg { get; init; }

    /// <summary>Each wheel.</summary>
    [JsonPropertyOrder(-1)]
    public required TurnWheelsResponse Wheels { get; init; }

    /// <summary>Each axle.</summary>
    [JsonPropertyOrder(-1)]
    public required TurnAxlesResponse Axles { get; init; }

    /// <summary>Front axle's share of both axles' roll stiffness at ride height: springs and bar, tyres in series.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(58.0)]
    public required double RollStiffnessFrontPct { get; init; }

    /// <summary>Which end gives way first.</summary>
    [JsonPropertyOrder(-1)]
    public required BalanceResponse Balance { get; init; }
}
