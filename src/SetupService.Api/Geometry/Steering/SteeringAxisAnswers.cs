using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Answers for a steering axis.</summary>
internal static class SteeringAxisAnswers
{
    /// <summary>The answer to a request without contradictions.</summary>
    public static SteeringAxisAnswer Of(SteeringAxisRequest request)
    {
        var axis = SteeringAxis.Through(SuspensionMapper.Read(request.Lower), SuspensionMapper.Read(request.Upper));
        var wheel = WheelPlane.At(SuspensionMapper.Read(request.WheelCentre), request.CamberDeg, request.ToeDeg);
        var figures = SteeringAxisFigures.Of(axis, wheel, request.LoadedRadiusMm);
        return new SteeringAxisAnswer
        {
            CasterDeg = figures.CasterDeg,
            SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
            IncludedAngleDeg = figures.IncludedAngleDeg,
            ScrubRadiusMm = figures.ScrubRadiusMm,
            MechanicalTrailMm = figures.MechanicalTrailMm,
            SpindleOffsetMm = figures.SpindleOffsetMm,
            WheelCentreTrailMm = figures.WheelCentreTrailMm,
            AxisAtGround = PointPart.Of(figures.AxisAtGround),
            ContactCentre = PointPart.Of(figures.Contact),
            Method = "steering-axis",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of([GeometryAssumptions.ThinTyre]),
            Cautions = CautionResponse.Of(SteeringCautions.For(figures)),
        };
    }
}
