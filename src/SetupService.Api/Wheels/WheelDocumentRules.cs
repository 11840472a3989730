using FluentValidation;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>What a wheel must keep beyond types and ranges: its bolt circle can be read.</summary>
public sealed class WheelDocumentRules : AbstractValidator<WheelDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public WheelDocumentRules() => RuleFor(wheel => wheel.BoltCircle).Readable(BoltCircleReader.Read);
}
