using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A movement of the strut's top mount, mm.</summary>
public sealed record TopMountMovePart
{
    /// <summary>Inboard; negative = outboard.</summary>
    [Sample(8.0)]
    public required double Inboard { get; init; }

    /// <summary>Rearward; negative = forward.</summary>
    [Sample(0.0)]
    public required double Rearward { get; init; }
}
