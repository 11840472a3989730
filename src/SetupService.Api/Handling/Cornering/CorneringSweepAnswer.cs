using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.Cornering;

/// <summary>The car in turns of more and more lateral acceleration.</summary>
public sealed record CorneringSweepAnswer
{
    /// <summary>The turns it stands in, each as the single call answers it.</summary>
    public required TurnRow[] Rows { get; init; }

    /// <summary>The turns it has no equilibrium in.</summary>
    public required UnreachableTurnPart[] Unreachable { get; init; }

    /// <summary>The figures left null, in every row unless said otherwise, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("cornering")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it; of a scalar also how far roll and the outer wheels' inclination of the hardest row move over its plausible range.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
