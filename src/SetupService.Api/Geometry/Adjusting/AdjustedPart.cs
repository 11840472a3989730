using SetupService.Domain.Suspension.Search;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>One thing adjusted, by how much.</summary>
public sealed record AdjustedPart
{
    /// <summary>What.</summary>
    [Sample("lowerJointOutboard")]
    public required Adjuster Adjuster { get; init; }

    /// <summary>Which of five links, from 1; null for every other adjuster.</summary>
    [Sample(2)]
    public required int? Link { get; init; }

    /// <summary>How far; null for the hub shims.</summary>
    [Sample(4.2)]
    public required double? AmountMm { get; init; }

    /// <summary>How far, a hub shim; null for every other adjuster.</summary>
    [Sample(-0.5)]
    public required double? AmountDeg { get; init; }
}
