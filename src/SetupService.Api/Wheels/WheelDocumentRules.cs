using FluentValidation;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>What a wheel must keep beyond types and ranges: its bolt circle can be read, and its inside lies within its rim.</summary>
public sealed class WheelDocumentRules : AbstractValidator<WheelDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public WheelDocumentRules()
    {
        RuleFor(wheel => wheel.BoltCircle).Readable(BoltCircleReader.Read);
        RuleFor(wheel => wheel.InnerProfile)
            .Must(static (wheel, _) => wheel.RimDiameterIn == 0 || WheelMapper.HasInsideWithinRim(wheel))
            .WithErrorCode(FaultCodes.Inconsistent)
            .WithMessage("innerProfile has a radius beyond the rim's own bead seat, half of rimDiameterIn.");
    }
}
