using SetupService.Domain.Suspension.Search;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>One thing that stands in the way of the target.</summary>
public sealed record BlockedByPart
{
    /// <summary>What it is.</summary>
    [Sample("limit")]
    public required Obstacle Obstacle { get; init; }

    /// <summary>The adjuster at its limit; null for the others.</summary>
    [Sample("strutTopInboard")]
    public required Adjuster? Adjuster { get; init; }

    /// <summary>The same as a sentence.</summary>
    [Sample("strutTopInboard is at its limit of 12.0 mm.")]
    public required string Text { get; init; }
}
