using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>How far the wheel can move at all from the stated position, the rack in the middle, within ±500 mm.</summary>
public sealed record ReachableTravelPart
{
    /// <summary>Furthest droop.</summary>
    [Sample(-182.4)]
    public required double From { get; init; }

    /// <summary>Furthest bump.</summary>
    [Sample(131.7)]
    public required double To { get; init; }
}
