using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Parts;

/// <summary>A figure the answer leaves null, and why.</summary>
public sealed record UnknownPart
{
    /// <summary>The member that is null.</summary>
    [Sample("antiDivePct")]
    public required string Output { get; init; }

    /// <summary>What would have to be given, or why this kind has no such figure.</summary>
    [Sample("needs axle, wheelbaseMm, centreOfGravityHeightMm and brakeShareFrontPct")]
    public required string Reason { get; init; }
}
