using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>One kind of corner of a lap.</summary>
public sealed record BendMixEntry
{
    /// <summary>Lateral acceleration.</summary>
    [JsonRequired]
    [Range(0, 3)]
    [Sample(0.95)]
    public double LateralG { get; set; }

    /// <summary>Share of the cornering time; shares that do not make 100 are taken as ratios.</summary>
    [JsonRequired]
    [Range(0, 1_000_000)]
    [Sample(40.0)]
    public double SharePct { get; set; }

    /// <summary>Radius; the request's where left out.</summary>
    [Range(TurnRules.LeastRadiusM, 10_000)]
    [Sample(45.0)]
    public double? CornerRadiusM { get; set; }

    /// <summary>Speed; the request's where left out; either this or cornerRadiusM.</summary>
    [Range(1, 500)]
    [Sample(75.0)]
    public double? SpeedKmh { get; set; }

    /// <summary>Which way; the request's where left out.</summary>
    [Sample("right")]
    public TurnDirection? Turn { get; set; }
}
