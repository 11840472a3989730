using FluentValidation;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Steering;
using SetupService.Domain.Geometry.Suspensions;

namespace SetupService.Api.Geometry.Steering;

/// <summary>What a steering axis must keep beyond types and ranges: points that do not contradict each other.</summary>
public sealed class SteeringAxisRules : AbstractValidator<SteeringAxisRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public SteeringAxisRules() => RuleFor(request => request).Custom(static (request, context) =>
    {
        if (request is not { Lower: not null, Upper: not null, WheelCentre: not null }) return;
        foreach (var one in Contradictions(request)) context.Add(one.Member, FaultCodes.Inconsistent, one.Message);
    });

    /// <summary>What contradicts in a request with all its points.</summary>
    internal static IReadOnlyList<Contradiction> Contradictions(SteeringAxisRequest request) => SteeringAxisContradictions.Of(
        SuspensionReading.Read(request.Lower), SuspensionReading.Read(request.Upper), SuspensionReading.Read(request.WheelCentre));
}
