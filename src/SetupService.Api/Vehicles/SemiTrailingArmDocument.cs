using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>An arm on one oblique pivot axis.</summary>
public sealed record SemiTrailingArmDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public SemiTrailingArmPointsDocument Points { get; set; } = null!;
}
