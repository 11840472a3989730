using SetupService.Api.Http.Parts;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What adjusting makes of a corner.</summary>
public sealed record AdjustmentAnswer : CornerChangeAnswer
{
    /// <summary>What was asked about, or the least that gives the angles wanted.</summary>
    public required AdjustedPart[] Adjustments { get; init; }

    /// <summary>The answer of a change.</summary>
    internal static AdjustmentAnswer Of(CornerChange change, IReadOnlyList<Assumption> assumptions)
    {
        var before = CornerChange.Figures(change.Before);
        var after = CornerChange.Figures(change.After);
        return new AdjustmentAnswer
        {
            Adjustments = change.Adjusted(),
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
