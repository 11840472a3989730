using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>What a travel sweep must keep beyond types and ranges.</summary>
public sealed class TravelSweepRules : AbstractValidator<TravelSweepRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public TravelSweepRules()
    {
        this.CornersAreWhole();
        RuleFor(request => request).Custom((request, context) =>
        {
            var travels = request.TravelMm is { } travel ? RangeRules.Check(context, nameof(request.TravelMm), travel.ToRange()) : 0;
            var racks = request.RackMm is { } rack ? RangeRules.Check(context, nameof(request.RackMm), rack.ToRange()) : 0;
            RangeRules.CheckCount(context, (nameof(request.TravelMm), travels), (nameof(request.RackMm), racks));
            if (request.RackMm is not null) CheckRack(context, request.Suspension);
        });
    }

    private static void CheckRack(ValidationContext<TravelSweepRequest> context, SuspensionDocument? suspension)
    {
        if (suspension is null or MacPhersonStrutDocument or DoubleWishboneDocument or FiveLinkDocument or MeasuredSuspensionDocument) return;
        context.AddFailure(new ValidationFailure(nameof(TravelSweepRequest.RackMm), "this kind of suspension has no rack; leave rackMm out.")
        {
            ErrorCode = FaultCodes.Inconsistent,
        });
    }
}
