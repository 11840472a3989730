using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Steering;

/// <summary>A heading the wheel cannot be turned to.</summary>
public sealed record UnreachableSteerPart
{
    /// <summary>Steer asked for.</summary>
    [Sample(50.0)]
    public required double SteerDeg { get; init; }

    /// <summary>Why.</summary>
    [Sample("no turn about this axis heads the wheel to 50.00°: the axis leans so far that the heading turns back at −89.02° and 42.20°.")]
    public required string Reason { get; init; }
}
