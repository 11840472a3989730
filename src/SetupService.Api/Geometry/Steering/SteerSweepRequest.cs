using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>A wheel with its steering axis, and the steer it is to be turned over.</summary>
public sealed record SteerSweepRequest
{
    /// <summary>Caster; positive = the axis' top rearward.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(6.4)]
    public double CasterDeg { get; set; }

    /// <summary>Steering-axis inclination; positive = the axis' top inboard.</summary>
    [JsonRequired]
    [Range(-10, 40)]
    [Sample(13.1)]
    public double SteeringAxisInclinationDeg { get; set; }

    /// <summary>Camber before steering; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double CamberDeg { get; set; }

    /// <summary>Toe of this wheel before steering; positive = toe-in.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(0.08)]
    public double ToeDeg { get; set; }

    /// <summary>Where this wheel is to head; positive = left, whichever side it is on.</summary>
    [JsonRequired]
    public SteerRangeDocument SteerDeg { get; set; } = null!;

    /// <summary>Height of the wheel centre above the ground at no camber; needed for scrub radius, trail and height.</summary>
    [Range(150, 600)]
    [Sample(302.0)]
    public double? LoadedRadiusMm { get; set; }

    /// <summary>How far the wheel centre stands outboard of the axis at its own height before steering, across the car; needed for the same.</summary>
    [Range(-500, 500)]
    [Sample(64.6)]
    public double? SpindleOffsetMm { get; set; }

    /// <summary>How far the axis, at the wheel centre's height, stands ahead of it before steering, along the car; needed for the same.</summary>
    [Range(-500, 500)]
    [Sample(-6.3)]
    public double? WheelCentreTrailMm { get; set; }

    /// <summary>The side the wheel is on; left where left out.</summary>
    [Sample("left")]
    public WheelSide? Side { get; set; }
}
