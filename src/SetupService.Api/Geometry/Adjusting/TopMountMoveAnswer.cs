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
        var before = CornerChange.Figures(change.Before);
        var after = CornerChange.Figures(change.After);
        return new TopMountMoveAnswer
        {
            MoveMm = new TopMountMovePart { Inboard = change.Adjustments[0].Amount, Rearward = change.Adjustments[1].Amount },
            Reached = change.IsReached,
            BlockedBy = change.BlockedBy(),
            Before = before,
            After = after,
            Change = after.Since(before),
            RideHeightChangeMm = change.RideHeightChangeMm,
            TrackChangeMm = change.TrackChangeMm,
            TieRodChangeMm = change.After.TieRodLengthMm - change.Before.TieRodLengthMm,
            TyreTopOutboardChangeMm = change.After.TyreTopOutboardMm - change.Before.TyreTopOutboardMm,
            InboardGapChangeMm = change.After.StrutGapMm - change.Before.StrutGapMm,
            CamberRangeDeg = null,
            Unknown = change.Unknown(),
            Method = "suspension-adjustment",
            Edition = Domain.Answers.Edition.Current,
            Assumptions = AssumptionPart.Of(assumptions),
            Cautions = CautionPart.Of(GeometryCautions.ForAdjustment),
        };
    }
}
