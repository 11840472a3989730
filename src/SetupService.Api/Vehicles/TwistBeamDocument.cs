using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>Two trailing arms joined by a beam that twists.</summary>
public sealed record TwistBeamDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public TwistBeamPointsDocument Points { get; set; } = null!;
}
