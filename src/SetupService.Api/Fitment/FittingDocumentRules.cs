using FluentValidation;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;

namespace SetupService.Api.Fitment;

/// <summary>What a fitting must keep beyond types and ranges: what its wheel and tyre must.</summary>
public sealed class FittingDocumentRules : AbstractValidator<FittingDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public FittingDocumentRules()
    {
        // A part that could not be bound is null here, and its fault is known already.
        RuleFor(fitting => fitting.Wheel).SetValidator(new WheelDocumentRules()).When(fitting => fitting.Wheel is not null);
        RuleFor(fitting => fitting.Tyre).SetValidator(new TyreDocumentRules()).When(fitting => fitting.Tyre is not null);
    }
}
