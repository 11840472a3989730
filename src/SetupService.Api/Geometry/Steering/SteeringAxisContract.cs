using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The two joints a left wheel steers about, and how the wheel stands.</summary>
public sealed record SteeringAxisRequest
{
    /// <summary>The lower point of the axis: the lower ball joint.</summary>
    [JsonRequired]
    public PointDocument Lower { get; set; } = null!;

    /// <summary>The upper point of the axis: the upper ball joint, or the centre of a strut's top mount.</summary>
    [JsonRequired]
    public PointDocument Upper { get; set; } = null!;

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;

    /// <summary>Height of the wheel centre above the ground at no camber.</summary>
    [JsonRequired]
    [Range(150, 600)]
    [Sample(302.0)]
    public double LoadedRadiusMm { get; set; }

    /// <summary>Camber; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-0.7)]
    public double CamberDeg { get; set; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(0.08)]
    public double ToeDeg { get; set; }
}

/// <summary>How a left wheel stands to the axis it steers about.</summary>
public sealed record SteeringAxisAnswer
{
    /// <summary>Caster, in side view; positive = the axis' top rearward.</summary>
    [Sample(6.43)]
    public required double CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, in front view; positive = the axis' top inboard.</summary>
    [Sample(13.12)]
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Inclination and camber together: the angle between axis and wheel plane in front view, which only the parts between joint and hub decide.</summary>
    [Sample(12.42)]
    public required double IncludedAngleDeg { get; init; }

    /// <summary>Scrub radius, across the wheel's own heading; positive = the axis meets the ground inboard of the contact centre.</summary>
    [Sample(-2.1)]
    public required double ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, along the wheel's own heading; positive = the axis meets the ground ahead of the contact centre.</summary>
    [Sample(27.7)]
    public required double MechanicalTrailMm { get; init; }

    /// <summary>How far the wheel centre stands outboard of the axis at its own height, across the car; steer-sweep takes it.</summary>
    [Sample(64.6)]
    public required double SpindleOffsetMm { get; init; }

    /// <summary>How far the axis, at the wheel centre's height, stands ahead of it, along the car; steer-sweep takes it.</summary>
    [Sample(-6.3)]
    public required double WheelCentreTrailMm { get; init; }

    /// <summary>Where the axis meets the ground, the level plane through the contact centre.</summary>
    public required PointResponse AxisAtGround { get; init; }

    /// <summary>The contact centre: the lowest point of the circle of loadedRadiusMm in the wheel's plane.</summary>
    public required PointResponse ContactCentre { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("steering-axis")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
