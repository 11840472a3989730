using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Geometry.Drawing;

/// <summary>What a corner to be drawn must keep beyond types and ranges.</summary>
public sealed class DrawingRules : AbstractValidator<DrawingRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public DrawingRules()
    {
        this.CornerIsWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.Suspension is MeasuredSuspensionDocument)
                context.Add($"Vehicle.{request.Axle}.Suspension.Kind", FaultCodes.Inconsistent, "a measured suspension has no points to be drawn.");
        });
        RuleFor(request => request.RackMm).Must(rackMm => rackMm is null or 0).When(request => request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
            .WithErrorCode(FaultCodes.Inconsistent).WithMessage("this kind of suspension has no rack; leave rackMm out.");
    }
}
