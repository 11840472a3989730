using FluentValidation;
using FluentValidation.Results;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Handling.Ride;

/// <summary>What the call on ride must keep beyond types and ranges: a whole car before and after, springs and ranges that do not contradict themselves.</summary>
public sealed class RideRules : AbstractValidator<RideRequest>
{
    private static readonly RideCarRules Car = new();

    /// <summary>What the car after the change must keep.</summary>
    internal static RideCarRules Changed { get; } = new(isChanged: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public RideRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(Car).When(request => request.Vehicle is not null);
        RuleFor(request => request.Change).ChangesSoundly(request => request.Vehicle, nameof(RideRequest.Vehicle), Changed);
        RuleFor(request => request.DampingRatioRange).Custom((range, context) =>
        {
            if (range is null || range.From < range.To) return;
            context.AddFailure(new ValidationFailure("DampingRatioRange.To", FormattableString.Invariant($"to is {range.To}, not above from, which is {range.From}."))
            {
                ErrorCode = FaultCodes.Inconsistent,
            });
        });
    }
}
