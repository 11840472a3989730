using FluentValidation;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What an adjustment must keep beyond types and ranges.</summary>
public sealed class AdjustmentRules : AbstractValidator<AdjustmentRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public AdjustmentRules()
    {
        this.CornersAreWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            TargetRules.CheckChoice(context, "adjustments", request.Adjustments is not null, request.Target);
            TargetRules.CheckReset(context, request.Suspension, request.ResetToe);
            var isTargetSent = context.IsTargetSent(request.Target);
            if (isTargetSent && request.Adjusters is null)
                context.Add("Adjusters", FaultCodes.Required, "adjusters is needed with target: what may be adjusted, and how far.");
            if (!isTargetSent && request.Adjusters is not null)
                context.Add("Adjusters", FaultCodes.Inconsistent, "adjusters goes with target: given adjustments are not looked for.");
            if (!isTargetSent && request.ArchGapMm is not null)
                context.Add("ArchGapMm", FaultCodes.Inconsistent, "archGapMm goes with target: given adjustments are not limited.");
            AdjusterRules.Check(context, "Adjustments", request.Adjustments, request);
            AdjusterRules.Check(context, "Adjusters", request.Adjusters, request);
        });
    }
}
