using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.Inputs;

/// <summary>A scalar nobody gave, with what was used in its place.</summary>
/// <param name="Input">Which.</param>
/// <param name="Value">What was used, in the input's unit.</param>
/// <param name="Lower">Lower end of the range it plausibly lies in (90 %).</param>
/// <param name="Upper">Upper end of that range.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Reason">Why it was needed, and what it does to the answer.</param>
public sealed record AssumedInput(HandlingInput Input, double Value, double Lower, double Upper, string Source, string Reason)
{
    /// <summary>The standard error the range stands for, the range taken as 90 % of a normal distribution.</summary>
    public double StandardError => (Upper - Lower) / (2 * Uncertainty.StandardErrorsAtNinetyPct);

    /// <summary>As it stands in an answer.</summary>
    public Assumption ToAssumption() => new("/vehicle" + Input.Place, Value, null, Source, Reason);
}
