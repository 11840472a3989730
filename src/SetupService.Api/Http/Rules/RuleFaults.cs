using FluentValidation.Results;
using SetupService.Api.Http.Faults;

namespace SetupService.Api.Http.Rules;

/// <summary>Turns what a rule found into a fault of the request.</summary>
internal static class RuleFaults
{
    /// <exception cref="InvalidOperationException">The rule has no documented code, which is a mistake of ours.</exception>
    public static Fault From(ValidationFailure failure) =>
        FaultCodes.All.Contains(failure.ErrorCode)
            ? Fault.At(PointerOf.Path(failure.PropertyName), failure.ErrorCode, failure.ErrorMessage, failure.CustomState as FaultLimits)
            : throw new InvalidOperationException($"The rule on {failure.PropertyName} needs a code of FaultCodes, not {failure.ErrorCode}.");
}
