using FluentValidation;

namespace SetupService.Api.Fitment;

/// <summary>What a comparison must keep beyond types and ranges: what its fittings must.</summary>
public sealed class ComparisonRequestRules : AbstractValidator<ComparisonRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public ComparisonRequestRules()
    {
        RuleFor(request => request.Current).SetValidator(new FittingDocumentRules()).When(request => request.Current is not null);
        RuleFor(request => request.Candidate).SetValidator(new FittingDocumentRules()).When(request => request.Candidate is not null);
    }
}
