using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>Damping at the wheel by what is critical for wheel rate and sprung corner mass; null where the damper is not known.</summary>
public sealed record DampingRatioPart
{
    /// <summary>In bump.</summary>
    [Sample(0.24)]
    public required double? Bump { get; init; }

    /// <summary>In rebound.</summary>
    [Sample(0.51)]
    public required double? Rebound { get; init; }

    /// <summary>Mean of both, which a whole swing feels.</summary>
    [Sample(0.375)]
    public required double? Mean { get; init; }
}
