using SetupService.Api.Http.Shared;
using SetupService.Domain.Suspension.Readings;
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

    public static CornerStand Of(AdjustedCorner corner)
    {
        var figures = corner.Figures;
        return new CornerStand
        {
            Figures = new CornerFiguresPart
            {
                CamberDeg = figures.CamberDeg,
                CasterDeg = figures.CasterDeg,
                SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
                ToeDeg = corner.ToeDeg,
                IncludedAngleDeg = figures.SteeringAxisInclinationDeg + figures.CamberDeg,
                ScrubRadiusMm = figures.ScrubRadiusMm,
                MechanicalTrailMm = figures.MechanicalTrailMm,
                RollCentreHeightMm = figures.RollCentreHeightMm,
                CamberGainDegPerMm = figures.CamberGainDegPerMm,
                BumpSteerDegPer10Mm = 10 * figures.ToeGainDegPerMm,
                SpringMotionRatio = figures.SpringMotionRatio,
            },
            ContactHeightMm = figures.ContactHeightMm,
            HalfTrackMm = figures.HalfTrackMm,
            TieRodLengthMm = corner.TieRodLengthMm,
            TyreTopOutboardMm = corner.TyreTopOutboardMm,
            StrutGapMm = corner.StrutGapMm,
        };
    }

    /// <summary>Of a measured corner; the contact follows from camber and the loaded radius, the wheel centre's height being known.</summary>
    public static CornerStand Of(MeasuredStand corner, double loadedRadiusMm) => new()
    {
        Figures = new CornerFiguresPart
        {
            CamberDeg = corner.CamberDeg,
            CasterDeg = corner.CasterDeg,
            SteeringAxisInclinationDeg = corner.SteeringAxisInclinationDeg,
            ToeDeg = corner.ToeDeg,
            IncludedAngleDeg = corner.SteeringAxisInclinationDeg + corner.CamberDeg,
            ScrubRadiusMm = null,
            MechanicalTrailMm = null,
            RollCentreHeightMm = null,
            CamberGainDegPerMm = corner.CamberGainDegPerMm,
            BumpSteerDegPer10Mm = 10 * corner.ToeGainDegPerMm,
            SpringMotionRatio = null,
        },
        ContactHeightMm = corner.TravelMm - (loadedRadiusMm * Math.Cos(double.DegreesToRadians(corner.CamberDeg))),
        CamberRangeDeg = UncertaintyResponse.Of(corner.Camber),
    };
}
