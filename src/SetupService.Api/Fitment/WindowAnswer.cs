using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Fitment;

/// <summary>The answer to a question for feasible offsets.</summary>
public sealed record WindowAnswer
{
    /// <summary>One window a rim width, in the order asked.</summary>
    public required WindowPart[] Windows { get; init; }

    /// <summary>The page under /docs/methods that derives the ends.</summary>
    [Sample("fitment-window")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
