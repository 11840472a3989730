using FluentValidation;
using SetupService.Api.Vehicles.Suspensions;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Rules between the members of a diagnosis: suspensions without contradictions, a day that exists, sound tyre readings.</summary>
public sealed class DiagnosisRules : AbstractValidator<DiagnosisRequest>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public DiagnosisRules()
    {
        RuleFor(request => request.Vehicle!.Front!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Front is not null);
        RuleFor(request => request.Vehicle!.Rear!.Suspension).WithoutContradictions().When(request => request.Vehicle?.Rear is not null);
        RuleFor(request => request.ReadOn).IsADay();
        RuleForEach(request => request.Tyres).SetValidator(new TyreReadingRules());
    }
}
