using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
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
            AxisAtGround = PointResponse.From(figures.AxisAtGround),
            ContactCentre = PointResponse.From(figures.Contact),
            Method = "steering-axis",
            Edition = Edition.Current,
            Assumptions = AssumptionResponse.Of([GeometryAssumptions.ThinTyre]),
            Cautions = CautionResponse.Of(SteeringCautions.For(figures)),
        };
    }
}

/// <summary>What a steering axis must keep beyond types and ranges: points that do not contradict each other.</summary>
public sealed class SteeringAxisRules : AbstractValidator<SteeringAxisRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public SteeringAxisRules() => RuleFor(request => request).Custom(static (request, context) =>
    {
        if (request is not { Lower: { } lower, Upper: { } upper, WheelCentre: { } centre }) return;

        // Each of them is a point against the lower one.
        var found = SteeringAxisContradictions.Of(SuspensionMapper.Read(lower), SuspensionMapper.Read(upper), SuspensionMapper.Read(centre));
        foreach (var one in found)
        {
            if (!context.IsRefused(nameof(request.Lower)) && !context.IsRefused(one.Member)) context.Add(one.Member, FaultCodes.Inconsistent, one.Message);
        }
    });
}
