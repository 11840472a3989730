using FluentValidation;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>What a comparison must keep beyond types and ranges: each list is of one tyre.</summary>
public sealed class BeforeAfterRules : AbstractValidator<BeforeAfterRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public BeforeAfterRules()
    {
        RuleFor(request => request).Custom(static (request, context) =>
        {
            DepthReadingRules.Check(context, "Before", request.Before, request.GaugeErrorMm);
            DepthReadingRules.Check(context, "After", request.After, request.GaugeErrorMm);
        });
    }
}
