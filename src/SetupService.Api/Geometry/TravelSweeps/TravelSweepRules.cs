using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>What a travel sweep must keep beyond types and ranges.</summary>
public sealed class TravelSweepRules : AbstractValidator<TravelSweepRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TravelSweepRules()
    {
        this.CornerIsWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            var travels = request.TravelMm is { } travel ? RangeRules.Check(context, nameof(request.TravelMm), travel.ToRange()) : 0;
            var racks = request.RackMm is { } rack ? RangeRules.Check(context, nameof(request.RackMm), rack.ToRange()) : 0;
            RangeRules.CheckCount(context, (nameof(request.TravelMm), travels), (nameof(request.RackMm), racks));
        });
        RuleFor(request => request.RackMm).Null().When(request => request.Suspension is SemiTrailingArmDocument or TwistBeamDocument)
            .WithErrorCode(FaultCodes.Inconsistent).WithMessage("this kind of suspension has no rack; leave rackMm out.");
    }
}
