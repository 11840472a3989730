using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Answers for a steering axis.</summary>
internal static class SteeringAxisMapper
{
    /// <summary>The answer to a request without contradictions.</summary>
    public static SteeringAxisAnswer ToAnswer(SteeringAxisRequest request)
    {
        var axis = SteeringAxis.Through(SuspensionMapper.Read(request.Lower), SuspensionMapper.Read(request.Upper));
        var wheel = WheelPlane.At(SuspensionMapper.Read(request.WheelCentre), request.CamberDeg, request.ToeDeg);
        var figures = SteeringAxisFigures.Compute(axis, wheel, request.LoadedRadiusMm);
        return new SteeringAxisAnswer
        {
            CasterDeg = figures.CasterDeg,
            SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
            IncludedAngleDeg = figures.IncludedAngleDeg,
            ScrubRadiusMm = figures.ScrubRadiusMm,
            MechanicalTrailMm = figures.MechanicalTrailMm,
            SpindleOffsetMm = figures.SpindleOffsetMm,
            WheelCentreTrailMm = figures.WheelCentreTrailMm,
            AxisAtGround = PointResponse.From(figures.AxisAtGround),
            ContactCentre = PointResponse.From(figures.Contact),
            Method = "steering-axis",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.From([SuspensionAssumptions.ThinTyre]),
            Cautions = CautionResponse.From(SteeringCautions.For(figures)),
        };
    }
}

/// <summary>What a steering axis must keep beyond types and ranges: points that do not contradict each other.</summary>
public sealed class SteeringAxisRules : AbstractValidator<SteeringAxisRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public SteeringAxisRules()
    {
        AgainstLower(RuleFor(request => request.Upper), "upper", nameof(SteeringAxisRequest.Upper));
        AgainstLower(RuleFor(request => request.WheelCentre), "wheelCentre", nameof(SteeringAxisRequest.WheelCentre));
    }

    private static void AgainstLower(IRuleBuilder<SteeringAxisRequest, PointDocument> point, string name, string member) => point
        .Must((request, _) => Contradiction(request, name) is null).Says(FaultCodes.Inconsistent, (request, _) => Contradiction(request, name)!)
        .WhenRead(nameof(SteeringAxisRequest.Lower), member);

    private static string? Contradiction(SteeringAxisRequest request, string name) => request is { Lower: { } lower, Upper: { } upper, WheelCentre: { } centre }
        ? SteeringAxisContradictions.Find(SuspensionMapper.Read(lower), SuspensionMapper.Read(upper), SuspensionMapper.Read(centre)).FirstOrDefault(one => one.Member == name)?.Message
        : null;
}
