using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What an adjustment makes of a corner, at an unchanged height of the wheel centre against the body unless the ride height is what is adjusted.</summary>
public abstract record CornerChangeAnswer
{
    /// <summary>For the serialiser.</summary>
    protected CornerChangeAnswer()
    {
    }

    [SetsRequiredMembers]
    private protected CornerChangeAnswer(CornerChange change, IReadOnlyList<Assumption> assumptions)
    {
        Reached = change.IsReached;
        BlockedBy = change.BlockedBy();
        Before = change.Before.Figures;
        After = change.After.Figures;
        Change = After.Since(Before);
        RideHeightChangeMm = change.RideHeightChangeMm;
        TrackChangeMm = change.TrackChangeMm;
        TieRodChangeMm = change.After.TieRodLengthMm - change.Before.TieRodLengthMm;
        TyreTopOutboardChangeMm = change.After.TyreTopOutboardMm - change.Before.TyreTopOutboardMm;
        InboardGapChangeMm = change.After.StrutGapMm - change.Before.StrutGapMm;
        CamberRangeDeg = change.After.CamberRangeDeg;
        Unknown = change.Unknown();
        Method = CamberRangeDeg is null ? "suspension-adjustment" : "measured-corner";
        Edition = Domain.Answers.Edition.Current;
        Assumptions = AssumptionResponse.Of(assumptions);
        Cautions = CautionResponse.Of(GeometryCautions.ForAdjustment);
    }

    /// <summary>Whether the target is met; null where none was asked for.</summary>
    [JsonPropertyOrder(1)]
    [Sample(true)]
    public required bool? Reached { get; init; }

    /// <summary>What stands in the way of a target that is not met; empty otherwise.</summary>
    [JsonPropertyOrder(1)]
    public required BlockedByPart[] BlockedBy { get; init; }

    /// <summary>As the corner is described.</summary>
    [JsonPropertyOrder(1)]
    public required CornerFiguresPart Before { get; init; }

    /// <summary>With everything adjusted.</summary>
    [JsonPropertyOrder(1)]
    public required CornerFiguresPart After { get; init; }

    /// <summary>After less before.</summary>
    [JsonPropertyOrder(1)]
    public required CornerFiguresPart Change { get; init; }

    /// <summary>How much higher the body stands over the ground; negative = lower.</summary>
    [JsonPropertyOrder(1)]
    [Sample(-0.04)]
    public required double? RideHeightChangeMm { get; init; }

    /// <summary>Change of the axle's track, both sides adjusted alike.</summary>
    [JsonPropertyOrder(1)]
    [Sample(-1.2)]
    public required double? TrackChangeMm { get; init; }

    /// <summary>How much longer the tie rod or toe link is; null where there is none.</summary>
    [JsonPropertyOrder(1)]
    [Sample(-0.6)]
    public required double? TieRodChangeMm { get; init; }

    /// <summary>Movement of the tyre's top, a loaded radius above the wheel centre, outboard against the body and so towards the arch.</summary>
    [JsonPropertyOrder(1)]
    [Sample(-4.1)]
    public required double? TyreTopOutboardChangeMm { get; init; }

    /// <summary>Change of the room between strut and wheel at the height of the tyre's top; negative = less room. Null without a strut.</summary>
    [JsonPropertyOrder(1)]
    [Sample(0.0)]
    public required double? InboardGapChangeMm { get; init; }

    /// <summary>Camber after, with what the gauge's error makes of it; only of a measured suspension, else null.</summary>
    [JsonPropertyOrder(1)]
    public required UncertaintyResponse? CamberRangeDeg { get; init; }

    /// <summary>The figures left null, and why.</summary>
    [JsonPropertyOrder(1)]
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that says how it is computed.</summary>
    [JsonPropertyOrder(1)]
    [Sample("suspension-adjustment")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [JsonPropertyOrder(1)]
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    [JsonPropertyOrder(1)]
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer; gravest first.</summary>
    [JsonPropertyOrder(1)]
    public required CautionResponse[] Cautions { get; init; }
}
