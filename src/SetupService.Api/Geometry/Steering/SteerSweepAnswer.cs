using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Geometry.Steering;

/// <summary>A wheel over its steer.</summary>
public sealed record SteerSweepAnswer
{
    /// <summary>The headings reached, in the order asked for.</summary>
    public required SteerSweepRow[] Rows { get; init; }

    /// <summary>The headings no turn about the axis gives.</summary>
    public required UnreachableSteerPart[] Unreachable { get; init; }

    /// <summary>The figures left null in every row, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("steer-sweep")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}
