using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>A corner over wheel travel and rack.</summary>
public sealed record TravelSweepAnswer
{
    /// <summary>The positions reached, over travel and over rack within each travel.</summary>
    public required TravelSweepRow[] Rows { get; init; }

    /// <summary>The positions that do not close.</summary>
    public required UnreachablePart[] Unreachable { get; init; }

    /// <summary>How far the wheel can move at all; null where every position asked for was reached.</summary>
    public required ReachableTravelPart? ReachableTravelMm { get; init; }

    /// <summary>The figures left null, in every row unless said otherwise, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("travel-sweep")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
