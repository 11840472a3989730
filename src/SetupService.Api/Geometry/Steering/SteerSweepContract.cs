using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;

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

/// <summary>Steer of one wheel from one end to the other, degrees, positive = left.</summary>
public sealed record SteerRangeDocument
{
    /// <summary>First value.</summary>
    [JsonRequired]
    [Range(-60, 60)]
    [Sample(-30.0)]
    public double From { get; set; }

    /// <summary>The end, itself a value where the step meets it.</summary>
    [JsonRequired]
    [Range(-60, 60)]
    [Sample(30.0)]
    public double To { get; set; }

    /// <summary>From one value to the next; its sign leads from the one end to the other.</summary>
    [JsonRequired]
    [Range(-120, 120)]
    [Sample(5.0)]
    public double Step { get; set; }

    /// <summary>The values.</summary>
    internal SweepRange ToRange() => new(From, To, Step);
}

/// <summary>A wheel over its steer.</summary>
public sealed record SteerSweepAnswer
{
    /// <summary>The headings reached, in the order asked for.</summary>
    public required SteerSweepRow[] Rows { get; init; }

    /// <summary>The headings no turn about the axis gives.</summary>
    public required UnreachableSteerResponse[] Unreachable { get; init; }

    /// <summary>The figures left null in every row, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("steer-sweep")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The wheel at one steer angle; null where an input is missing (<c>unknown</c> says which).</summary>
public sealed record SteerSweepRow
{
    /// <summary>Heading of this wheel; positive = left. A left wheel at negative steer is the outer one.</summary>
    [Sample(-20.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Camber by exact rotation; negative = top leaning to the car's centre.</summary>
    [Sample(-2.1)]
    public required double CamberDeg { get; init; }

    /// <summary>Camber less that before steering.</summary>
    [Sample(-1.4)]
    public required double CamberChangeDeg { get; init; }

    /// <summary>An approximation for comparison: camber by the handbooks' form for small angles, camber ± caster · sin(steer) + inclination · (1 − cos(steer)), plus for a left wheel.</summary>
    [Sample(-2.1)]
    public required double CamberApproximationDeg { get; init; }

    /// <summary>Turn about the steering axis from where the wheel was stated; positive = left.</summary>
    [Sample(-20.4)]
    public required double RotationDeg { get; init; }

    /// <summary>Scrub radius, across the wheel's own heading; positive = the axis meets the ground inboard of the contact centre.</summary>
    [Sample(-1.0)]
    public required double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail, along the wheel's own heading; positive = the axis meets the ground ahead of the contact centre.</summary>
    [Sample(29.4)]
    public required double? MechanicalTrailMm { get; init; }

    /// <summary>Height of the contact centre against the body, less that before steering; negative = the wheel pushes down, so the body rises here if the other wheels are left out of account.</summary>
    [Sample(0.4)]
    public required double? ContactHeightChangeMm { get; init; }
}

/// <summary>A heading the wheel cannot be turned to.</summary>
public sealed record UnreachableSteerResponse
{
    /// <summary>Steer asked for.</summary>
    [Sample(50.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Why.</summary>
    [Sample("no turn about this axis heads the wheel to 50.00°: the axis leans so far that the heading turns back at −89.02° and 42.20°.")]
    public required string Reason { get; init; }
}
