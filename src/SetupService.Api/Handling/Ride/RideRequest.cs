using System.Text.Json.Serialization;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>A car, and where asked a change of it.</summary>
public sealed record RideRequest
{
    /// <summary>The car. Needed: both axle loads (or all corner weights), and each axle's track (or points) and spring rate.</summary>
    [JsonRequired]
    public VehicleDocument Vehicle { get; set; } = null!;

    /// <summary>What is changed; the answer is then for the car after it, with the car before beside it.</summary>
    public VehicleChange? Change { get; set; }

    /// <summary>The damping ratios, bump and rebound averaged, that serve; 0.25 to 0.7 where left out.</summary>
    public DampingRangeDocument? DampingRatioRange { get; set; }
}
