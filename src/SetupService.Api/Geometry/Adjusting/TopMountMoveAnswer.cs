using SetupService.Api.Http.Parts;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What a movement of the top mount makes of a corner.</summary>
public sealed record TopMountMoveAnswer : CornerChangeAnswer
{
    /// <summary>The movement asked about, or the least one that gives the angles wanted.</summary>
    public required TopMountMovePart MoveMm { get; init; }

    /// <summary>The answer of a change.</summary>
    internal static TopMountMoveAnswer Of(CornerChange change, IReadOnlyList<Assumption> assumptions)
    {
        return new TopMountMoveAnswer
        {
            MoveMm = new TopMountMovePart { Inboard = change.Adjustments[0].Amount, Rearward = change.Adjustments[1].Amount },
            Reached = change.IsReached,
            BlockedBy = change.BlockedBy(),
            Before = change.Before.Figures,
            After = change.After.Figures,
            Change = change.After.Figures.Since(change.Before.Figures),
            RideHeightChangeMm = change.RideHeightChangeMm,
            TrackChangeMm = change.TrackChangeMm,
            TieRodChangeMm = change.After.TieRodLengthMm - change.Before.TieRodLengthMm,
            TyreTopOutboardChangeMm = change.After.TyreTopOutboardMm - change.Before.TyreTopOutboardMm,
            InboardGapChangeMm = change.After.StrutGapMm - change.Before.StrutGapMm,
            CamberRangeDeg = change.After.CamberRangeDeg,
            Unknown = change.Unknown(),
            Method = change.After.CamberRangeDeg is null ? "suspension-adjustment" : "measured-corner",
            Edition = Domain.Answers.Edition.Current,
            Assumptions = AssumptionPart.Of(assumptions),
            Cautions = CautionPart.Of(GeometryCautions.ForAdjustment),
        };
    }
}
