using FluentValidation;
using SetupService.Api.Http.Rules;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Vehicles;

/// <summary>What a hub must keep beyond types and ranges: its bolt circle and thread can be read.</summary>
public sealed class HubDocumentRules : AbstractValidator<HubDocument>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public HubDocumentRules()
    {
        RuleFor(hub => hub.BoltCircle).Readable(BoltCircleReader.Read);
        RuleFor(hub => hub.FastenerThread).Readable(FastenerThreadReader.Read);
    }
}
