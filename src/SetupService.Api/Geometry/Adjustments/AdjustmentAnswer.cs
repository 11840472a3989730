using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjustments;

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

    /// <summary>The calls that usually follow.</summary>
    public required NextCallResponse[] Next { get; init; }

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
