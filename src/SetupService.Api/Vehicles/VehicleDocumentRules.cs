using FluentValidation;

namespace SetupService.Api.Vehicles;

/// <summary>What a car must keep beyond types and ranges: what its axles must.</summary>
public sealed class VehicleDocumentRules : AbstractValidator<VehicleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public VehicleDocumentRules()
    {
        RuleFor(car => car.Front!).SetValidator(new AxleDocumentRules()).When(car => car.Front is not null);
        RuleFor(car => car.Rear!).SetValidator(new AxleDocumentRules()).When(car => car.Rear is not null);
    }
}
