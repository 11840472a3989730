using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>The answer to a fitment check.</summary>
public sealed record CheckAnswer
{
    /// <summary>The gravest status among the checks, in the order fail, unknown, caution, pass; an unknown counts only where it is required.</summary>
    [Sample("caution")]
    public required CheckStatus Verdict { get; init; }

    /// <summary>The place with least room in the worst case; null where no room is known.</summary>
    [Sample("inboardClearance")]
    public required CheckId? Governing { get; init; }

    /// <summary>The checks that could not be told, why, and what would settle them.</summary>
    public required UnknownCheck[] Unknown { get; init; }

    /// <summary>Every check that applies to the axle.</summary>
    public required CheckItem[] Checks { get; init; }

    /// <summary>What changes against the wheel and tyre fitted now; null where they are not both described.</summary>
    public required ComparisonPart? Comparison { get; init; }

    /// <summary>The page under /docs/methods that says how each check is made.</summary>
    [Sample("fitment-check")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer; gravest first.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
