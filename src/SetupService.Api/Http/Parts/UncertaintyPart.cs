using SetupService.Api.Http.Contract;
using SetupService.Domain.Answers;

namespace SetupService.Api.Http.Parts;

/// <summary>A value and the range it lies in at a stated probability, in the unit of the member it stands under.</summary>
public sealed record UncertaintyPart
{
    /// <summary>The best estimate.</summary>
    [Sample(-1.2)]
    public required double Value { get; init; }

    /// <summary>Lower end.</summary>
    [Sample(-1.35)]
    public required double Lower { get; init; }

    /// <summary>Upper end.</summary>
    [Sample(-1.05)]
    public required double Upper { get; init; }

    /// <summary>Probability that the true value lies between, in percent.</summary>
    [Sample(90.0)]
    public required double LevelPct { get; init; }

    /// <summary>The part of a range.</summary>
    internal static UncertaintyPart Of(Uncertainty range) => new() { Value = range.Value, Lower = range.Lower, Upper = range.Upper, LevelPct = range.LevelPct };

    /// <summary>The 90 % range of an estimate.</summary>
    internal static UncertaintyPart Of(Estimate estimate) => Of(estimate.Ninety);
}
