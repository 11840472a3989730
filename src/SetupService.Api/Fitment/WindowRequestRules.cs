using FluentValidation;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>What a question for offsets must keep beyond types and ranges: what its car and tyre must.</summary>
public sealed class WindowRequestRules : AbstractValidator<WindowRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public WindowRequestRules()
    {
        RuleFor(request => request.Vehicle).SetValidator(new VehicleDocumentRules()).When(request => request.Vehicle is not null);
        RuleFor(request => request.Tyre).SetValidator(new TyreDocumentRules()).When(request => request.Tyre is not null);
    }
}
