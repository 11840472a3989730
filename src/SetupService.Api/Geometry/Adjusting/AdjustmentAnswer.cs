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
        return new AdjustmentAnswer
        {
            Adjustments = change.Adjusted(),
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
