using FluentValidation;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

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
