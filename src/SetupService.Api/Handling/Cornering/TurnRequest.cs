using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

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

    /// <summary>The lateral acceleration the tyres are known to hold: their peak is scaled to it where it would be less. Left out, it is scaled to what the car does, where it must.</summary>
    [Range(0.05, 3)]
    [Sample(1.1)]
    public double? HeldLateralG { get; set; }
}
