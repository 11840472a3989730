using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Vehicles;

/// <summary>What an axle must keep beyond types and ranges: what its wheel, tyre and hub must.</summary>
public sealed class AxleDocumentRules : AbstractValidator<AxleDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public AxleDocumentRules()
    {
        RuleFor(axle => axle.Wheel!).SetValidator(new WheelDocumentRules()).When(axle => axle.Wheel is not null);
        RuleFor(axle => axle.Tyre!).SetValidator(new TyreDocumentRules()).When(axle => axle.Tyre is not null);
        RuleFor(axle => axle.Suspension)
            .Must(VehicleMapper.IsConsistent)
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage(MeasuredWords.Fault(CornerReadingsFault.CamberContradicts).Message);
        RuleFor(axle => axle.Hub!).SetValidator(new HubDocumentRules()).When(axle => axle.Hub is not null);
    }
}
