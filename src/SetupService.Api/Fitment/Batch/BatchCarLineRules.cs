using FluentValidation;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Fitment.Batch;

/// <summary>What a car line must keep beyond types and ranges: what its car must.</summary>
public sealed class BatchCarLineRules : AbstractValidator<BatchCarLine>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public BatchCarLineRules() =>
        RuleFor(line => line.Vehicle).SetValidator(new VehicleDocumentRules()).When(line => line.Vehicle is not null);
}
