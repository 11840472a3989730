using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>A car, an axle, and the cornering its outer tyre is to stand right for: exactly one of lateralG, corners and histogramCsv.</summary>
public sealed record CamberTargetRequest
{
    /// <summary>The most corners, or rows of a histogram.</summary>
    public const int MostCorners = 100;

    /// <summary>The car. Needed: both axle loads (or all corner weights), wheelbase, and each axle's track (or points) and spring rate.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>The axle whose camber is looked for.</summary>
    [JsonRequired]
    [Sample("front")]
    public CarAxle Axle { get; set; }

    /// <summary>Mean inclination to the road wanted at the outer wheel; 0, the tread flat, where left out.</summary>
    [Range(-10, 10)]
    [Sample(0.0)]
    public double? TargetInclinationDeg { get; set; }

    /// <summary>Which way a corner turns that does not say; left where left out.</summary>
    [Sample("left")]
    public TurnDirection? Turn { get; set; }

    /// <summary>Radius of a corner that does not say.</summary>
    [Range(TurnRules.LeastRadiusM, 10_000)]
    [Sample(60.0)]
    public double? CornerRadiusM { get; set; }

    /// <summary>Speed in a corner that does not say; either this or cornerRadiusM.</summary>
    [Range(1, 500)]
    [Sample(87.0)]
    public double? SpeedKmh { get; set; }

    /// <summary>The most lateral acceleration the car was measured to hold as given, in the hardest corner; the grip of all tyres is scaled to it. Left out, it goes by the tyres' category.</summary>
    [Range(0.05, 3)]
    [Sample(1.1)]
    public double? HeldLateralG { get; set; }

    /// <summary>One lateral acceleration for all cornering.</summary>
    [Range(0, 3)]
    [Sample(0.9)]
    public double? LateralG { get; set; }

    /// <summary>A mix of corners with their shares of the time.</summary>
    [Count(1, MostCorners)]
    public BendMixEntry[]? Corners { get; set; }

    /// <summary>The same as CSV text, as a phone or logger gives a histogram: a header with lateralG and sharePct (or count), and where known cornerRadiusM, speedKmh, turn. A negative lateralG is a right turn where there is no column turn.</summary>
    [StringLength(20_000)]
    [Sample("lateralG,sharePct\n0.7,40\n0.9,60\n")]
    public string? HistogramCsv { get; set; }

    /// <summary>Casters to answer for beside the present one; one, two and three degrees more, as far as the axle's adjustable goes, where left out.</summary>
    [Count(1, 8)]
    [Range(-5, 20)]
    [Sample(6.0)]
    public double[]? CastersDeg { get; set; }
}

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
