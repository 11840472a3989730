using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What a top mount's movement must keep beyond types and ranges.</summary>
public sealed class TopMountMoveRules : AbstractValidator<TopMountMoveRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TopMountMoveRules()
    {
        this.CornersAreWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Suspension is not (null or MacPhersonStrutDocument or MeasuredSuspensionDocument))
                context.Add("Suspension.Kind", FaultCodes.Inconsistent, "only a strut has a top mount that sets the wheel's angles; the call adjustment takes what this kind has.");
            TargetRules.CheckChoice(context, "moveMm", request.MoveMm is not null, request.Target);
            if (request.LimitsMm is not null && !context.IsTargetSent(request.Target))
                context.Add("LimitsMm", FaultCodes.Inconsistent, "limitsMm goes with target: a given movement is not looked for.");
            TargetRules.CheckOrder(context, "LimitsMm.Inboard", request.LimitsMm?.Inboard?.Minimum, request.LimitsMm?.Inboard?.Maximum, "mm");
            TargetRules.CheckOrder(context, "LimitsMm.Rearward", request.LimitsMm?.Rearward?.Minimum, request.LimitsMm?.Rearward?.Maximum, "mm");
        });
    }
}
