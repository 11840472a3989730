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
        RuleFor(request => request.Suspension).WithoutContradictions();
        this.AnglesGoWithPoints(request => request.Suspension, request => request.Alignment);
        RuleFor(request => request).Custom((request, context) =>
        {
            if (request.TravelMm is not { } travel) return;
            var travelRange = travel.ToRange();
            RangeRules.Check(context, nameof(request.TravelMm), travelRange);
            var count = (long)travelRange.Count;
            if (request.RackMm is { } rack)
            {
                RangeRules.Check(context, nameof(request.RackMm), rack.ToRange());
                count *= rack.ToRange().Count;
                CheckRack(context, request.Suspension);
            }

            RangeRules.CheckCount(context, nameof(request.TravelMm), count);
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
