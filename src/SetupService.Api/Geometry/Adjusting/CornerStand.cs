using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What an answer says of a corner as it stands, whether solved from points or known by measuring.</summary>
internal sealed record CornerStand
{
    public required CornerFiguresPart Figures { get; init; }

    /// <summary>Height of the contact against the body, mm.</summary>
    public double? ContactHeightMm { get; init; }

    public double? HalfTrackMm { get; init; }

    public double? TieRodLengthMm { get; init; }

    public double? TyreTopOutboardMm { get; init; }

    public double? StrutGapMm { get; init; }

    public UncertaintyResponse? CamberRangeDeg { get; init; }

    public static CornerStand Of(AdjustableCorner corner)
    {
        var told = corner.Told;
        return new CornerStand
        {
            Figures = new CornerFiguresPart
            {
                CamberDeg = told.CamberDeg,
                CasterDeg = told.CasterDeg,
                SteeringAxisInclinationDeg = told.SteeringAxisInclinationDeg,
                ToeDeg = told.ToeDeg,
                IncludedAngleDeg = told.SteeringAxisInclinationDeg + told.CamberDeg,
                ScrubRadiusMm = told.ScrubRadiusMm,
                MechanicalTrailMm = told.MechanicalTrailMm,
                RollCentreHeightMm = told.RollCentreHeightMm,
                CamberGainDegPerMm = told.CamberGainDegPerMm,
                BumpSteerDegPer10Mm = 10 * told.ToeGainDegPerMm,
                SpringMotionRatio = told.SpringMotionRatio,
            },
            ContactHeightMm = told.ContactHeightMm,
            HalfTrackMm = told.HalfTrackMm,
            TieRodLengthMm = told.TieRodLengthMm,
            TyreTopOutboardMm = told.TyreTopOutboardMm,
            StrutGapMm = told.StrutGapMm,
            CamberRangeDeg = told.Camber is { } camber ? UncertaintyResponse.Of(camber) : null,
        };
    }
}
