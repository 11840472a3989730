using FluentValidation;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>What a check must keep beyond types and ranges: what its car and candidate must.</summary>
public sealed class CheckRequestRules : AbstractValidator<CheckRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public CheckRequestRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(new VehicleDocumentRules()).When(request => request.Vehicle is not null);
        RuleFor(request => request.Candidate).SetValidator(new FittingDocumentRules()).When(request => request.Candidate is not null);
    }
}
