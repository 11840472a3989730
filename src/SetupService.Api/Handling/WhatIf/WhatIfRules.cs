using FluentValidation;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Http.Rules;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>What a comparison of changes must keep beyond types and ranges: a whole turn, and a whole car after each change and after all.</summary>
public sealed class WhatIfRules : AbstractValidator<WhatIfRequest>
{
    /// <summary>What the car after each change must keep.</summary>
    internal static HandlingRules Car { get; } = new(needsWheelbase: true);

    /// <summary>Makes the rules; they hold no state.</summary>
    public WhatIfRules()
    {
        this.TurnsAreWhole(request => request.LateralG);
        RuleFor(request => request.Changes).EachChangesSoundly(
            one => one.Vehicle, nameof(NamedChangeDocument.Vehicle), request => request.Vehicle, nameof(WhatIfRequest.Vehicle), Car);
    }
}
