using FluentValidation;

namespace SetupService.Api.Fitment.Batch;

/// <summary>What a candidate line must keep beyond types and ranges: what its fitting must.</summary>
public sealed class BatchCandidateLineRules : AbstractValidator<BatchCandidateLine>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public BatchCandidateLineRules() =>
        RuleFor(line => line.Candidate).SetValidator(new FittingDocumentRules()).When(line => line.Candidate is not null);
}
