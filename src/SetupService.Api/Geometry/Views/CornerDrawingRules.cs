using FluentValidation;
using SetupService.Api.Geometry.Adjusting;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Views;

/// <summary>What a corner to be drawn must keep beyond types and ranges.</summary>
public sealed class CornerDrawingRules : AbstractValidator<CornerDrawingRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public CornerDrawingRules()
    {
        this.CornersAreWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Suspension is MeasuredSuspensionDocument)
                context.Add("Suspension.Kind", FaultCodes.Inconsistent, "a measured suspension has no points to be drawn.");
            if (request.RackMm is not (null or 0) && request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
                context.Add("RackMm", FaultCodes.Inconsistent, "this kind of suspension has no rack; leave rackMm out.");
        });
    }
}
