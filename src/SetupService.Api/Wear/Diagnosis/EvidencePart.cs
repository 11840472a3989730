using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>One observation for or against a cause, beside the other causes most likely at work.</summary>
public sealed record EvidencePart
{
    /// <summary>What was observed, with its numbers.</summary>
    [Sample("front: the outer shoulder is worn more than the inner one, by 61 % of the mean wear")]
    public required string Observation { get; init; }

    /// <summary>Whether it speaks for the cause.</summary>
    [Sample(true)]
    public required bool Supports { get; init; }

    /// <summary>How heavily: common logarithm of how many times as likely the observation is one way as the other; 1 = ten times, 0.3 = twice.</summary>
    [Sample(0.8)]
    public required double Weight { get; init; }
}
