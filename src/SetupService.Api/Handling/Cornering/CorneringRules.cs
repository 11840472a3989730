using FluentValidation;

namespace SetupService.Api.Handling.Cornering;

/// <summary>What a turn must keep beyond types and ranges.</summary>
public sealed class CorneringRules : AbstractValidator<CorneringRequest>
{
    /// <summary>Makes the rules; they hold no state.</summary>
    public CorneringRules() => this.TurnsAreWhole(request => request.LateralG);
}
