using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

/// <summary>A car's corner and what is adjusted on it, or the angles wanted and what may be adjusted for them.</summary>
public sealed record AdjustmentRequest : CornerRequest
{
    /// <summary>How both wheels move; only a twist beam tells the difference. Parallel where left out.</summary>
    [Sample("parallel")]
    public AxleMotion? Motion { get; set; }

    /// <summary>What is adjusted, all of it together; this, or <c>target</c>, or <c>change</c>.</summary>
    [Count(1, 10)]
    public AdjustmentDocument[]? Adjustments { get; set; }

    /// <summary>The angles wanted.</summary>
    public AngleTargetDocument? Target { get; set; }

    /// <summary>The same as changes of the present angles.</summary>
    public AngleChangeDocument? Change { get; set; }

    /// <summary>What may be adjusted for <c>target</c> or <c>change</c>, and how far.</summary>
    [Count(1, 4)]
    public AdjusterRangeDocument[]? Adjusters { get; set; }

    /// <summary>How far outboard the tyre's top may move before it meets the arch; only where angles are wanted.</summary>
    [Range(0, 200)]
    [Sample(10.0)]
    public double? ArchGapMm { get; set; }

    /// <summary>Whether the tie rod is then set so that toe is what it was; not so where left out.</summary>
    [Sample(true)]
    public bool? ResetToe { get; set; }
}

/// <summary>What is adjusted, with what only some adjusters need.</summary>
public abstract record AdjusterDocument
{
    /// <summary>What is adjusted.</summary>
    [JsonRequired]
    [Sample("strutTopInboard")]
    [JsonPropertyOrder(-1)]
    public Adjuster Adjuster { get; set; }

    /// <summary>Which of five links, from 1; only with <c>linkLength</c>.</summary>
    [Range(1, 5)]
    [Sample(2)]
    public int? Link { get; set; }

    /// <summary>Distance between the knuckle's two bolts; only with <c>knuckleEccentric</c>.</summary>
    [Range(10, 200)]
    [Sample(58.0)]
    public double? BoltSpacingMm { get; set; }

    /// <summary>Centre of the bolt that stays; only with <c>knuckleEccentric</c>. <c>strutLower</c> where left out.</summary>
    public PointDocument? Pivot { get; set; }
}

/// <summary>One thing adjusted, by how much.</summary>
public sealed record AdjustmentDocument : AdjusterDocument
{
    /// <summary>How far; for every adjuster but the hub shims.</summary>
    [Range(-100, 100)]
    [Sample(5.0)]
    public double? AmountMm { get; set; }

    /// <summary>How far; for the hub shims.</summary>
    [Range(-5, 5)]
    [Sample(-0.5)]
    public double? AmountDeg { get; set; }
}

/// <summary>Something that may be adjusted, and how far.</summary>
public sealed record AdjusterRangeDocument : AdjusterDocument
{
    /// <summary>How far; for every adjuster but the hub shims. −100 to 100 where left out, an eccentric half its bolt spacing.</summary>
    public MovementRangeDocument? RangeMm { get; set; }

    /// <summary>How far, a hub shim. −5 to 5 where left out.</summary>
    public ShimRangeDocument? RangeDeg { get; set; }
}

/// <summary>How far something may be moved from where it stands now, mm.</summary>
public sealed record MovementRangeDocument
{
    /// <summary>The least movement; usually negative or 0.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(-6.0)]
    public double From { get; set; }

    /// <summary>The greatest movement.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(6.0)]
    public double To { get; set; }
}

/// <summary>How far a hub may be shimmed from where it stands now, degrees.</summary>
public sealed record ShimRangeDocument
{
    /// <summary>The least angle; usually negative or 0.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(-1.0)]
    public double From { get; set; }

    /// <summary>The greatest angle.</summary>
    [JsonRequired]
    [Range(-5, 5)]
    [Sample(1.0)]
    public double To { get; set; }
}

/// <summary>The angles wanted; one of them at least.</summary>
public sealed record AngleTargetDocument
{
    /// <summary>Camber wanted; negative = top towards the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-2.0)]
    public double? CamberDeg { get; set; }

    /// <summary>Caster wanted; positive = steering axis' top rearward.</summary>
    [Range(-5, 20)]
    [Sample(7.0)]
    public double? CasterDeg { get; set; }

    /// <summary>Toe of the wheel wanted; positive = toe-in. Not together with resetToe.</summary>
    [Range(-5, 5)]
    [Sample(0.1)]
    public double? ToeDeg { get; set; }
}

/// <summary>By how much the angles are to change; one of them at least.</summary>
public sealed record AngleChangeDocument
{
    /// <summary>Change of camber; negative = top further towards the car's centre.</summary>
    [Range(-15, 15)]
    [Sample(-1.3)]
    public double? CamberDeg { get; set; }

    /// <summary>Change of caster; positive = top further rearward.</summary>
    [Range(-15, 15)]
    [Sample(0.5)]
    public double? CasterDeg { get; set; }

    /// <summary>Change of the wheel's toe; positive = more toe-in. Not together with resetToe.</summary>
    [Range(-5, 5)]
    [Sample(0.1)]
    public double? ToeDeg { get; set; }
}

/// <summary>What an adjustment makes of a corner, at an unchanged height of the wheel centre against the body unless the ride height is what is adjusted.</summary>
public sealed record AdjustmentAnswer
{
    /// <summary>What was asked about, or the least that gives the angles wanted.</summary>
    public required AdjustmentResponse[] Adjustments { get; init; }

    /// <summary>Whether the angles wanted are reached; null where none were asked for.</summary>
    [Sample(true)]
    public required bool? IsReached { get; init; }

    /// <summary>What stands in the way of angles that are not reached; empty otherwise.</summary>
    public required BlockedByResponse[] BlockedBy { get; init; }

    /// <summary>As the corner is described, at its ride height.</summary>
    public required CornerFiguresResponse Before { get; init; }

    /// <summary>With everything adjusted.</summary>
    public required CornerFiguresResponse After { get; init; }

    /// <summary>After less before.</summary>
    public required CornerFiguresResponse Change { get; init; }

    /// <summary>How much higher the body stands over the ground; negative = lower.</summary>
    [Sample(-0.04)]
    public required double? RideHeightChangeMm { get; init; }

    /// <summary>Change of the axle's track, both sides adjusted alike.</summary>
    [Sample(-1.2)]
    public required double? TrackChangeMm { get; init; }

    /// <summary>How much longer the tie rod or toe link is; null where there is none.</summary>
    [Sample(-0.6)]
    public required double? TieRodChangeMm { get; init; }

    /// <summary>Movement of the tyre's top, a loaded radius above the wheel centre, outboard against the body and so towards the arch.</summary>
    [Sample(-4.1)]
    public required double? TyreTopOutboardChangeMm { get; init; }

    /// <summary>Change of the room between strut and wheel at the height of the tyre's top; negative = less room. Null without a strut.</summary>
    [Sample(0.0)]
    public required double? InboardGapChangeMm { get; init; }

    /// <summary>How sure the angles after are, where the readings' gauge error tells it; null where points are taken as exact.</summary>
    public required AdjustmentRangesResponse? Ranges { get; init; }

    /// <summary>The figures left null, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that says how it is computed.</summary>
    [Sample("suspension-adjustment")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer; gravest first.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

/// <summary>The angles after an adjustment with what the readings' error leaves open.</summary>
public sealed record AdjustmentRangesResponse
{
    /// <summary>Camber.</summary>
    public required UncertaintyResponse CamberDeg { get; init; }

    /// <summary>Caster; null where it is not known, or stated without an error.</summary>
    public required UncertaintyResponse? CasterDeg { get; init; }
}

/// <summary>One thing adjusted, by how much.</summary>
public sealed record AdjustmentResponse
{
    /// <summary>What.</summary>
    [Sample("lowerJointOutboard")]
    public required Adjuster Adjuster { get; init; }

    /// <summary>Which of five links, from 1; null for every other adjuster.</summary>
    [Sample(2)]
    public required int? Link { get; init; }

    /// <summary>How far; null for the hub shims.</summary>
    [Sample(4.2)]
    public required double? AmountMm { get; init; }

    /// <summary>How far, a hub shim; null for every other adjuster.</summary>
    [Sample(-0.5)]
    public required double? AmountDeg { get; init; }
}

/// <summary>One thing that stands in the way of the target.</summary>
public sealed record BlockedByResponse
{
    /// <summary>What it is.</summary>
    [Sample("limit")]
    public required Obstacle Obstacle { get; init; }

    /// <summary>The adjuster at its limit; null for the others.</summary>
    [Sample("strutTopInboard")]
    public required Adjuster? Adjuster { get; init; }

    /// <summary>The same as a sentence.</summary>
    [Sample("strutTopInboard is at its limit of 12.0 mm.")]
    public required string Text { get; init; }
}

/// <summary>A corner's figures at the height it stands at, or a change of them; null where this corner has no such figure or it is not known.</summary>
public sealed record CornerFiguresResponse
{
    /// <summary>Camber; negative = top towards the car's centre.</summary>
    [Sample(-1.35)]
    public required double? CamberDeg { get; init; }

    /// <summary>Caster; null where nothing steers the wheel.</summary>
    [Sample(6.4)]
    public required double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination.</summary>
    [Sample(13.7)]
    public required double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Sample(0.31)]
    public required double? ToeDeg { get; init; }

    /// <summary>Inclination and camber together: it changes only where the wheel moves in its upright.</summary>
    [Sample(12.4)]
    public required double? IncludedAngleDeg { get; init; }

    /// <summary>Scrub radius.</summary>
    [Sample(-2.1)]
    public required double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail.</summary>
    [Sample(27.7)]
    public required double? MechanicalTrailMm { get; init; }

    /// <summary>Kinematic roll centre above the contact centre.</summary>
    [Sample(66.5)]
    public required double? RollCentreHeightMm { get; init; }

    /// <summary>Change of camber per mm of bump.</summary>
    [Sample(-0.0155)]
    public required double? CamberGainDegPerMm { get; init; }

    /// <summary>Change of toe per 10 mm of bump.</summary>
    [Sample(-0.03)]
    public required double? BumpSteerDegPer10Mm { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    [Sample(0.95)]
    public required double? SpringMotionRatio { get; init; }
}
