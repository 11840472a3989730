using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>Five links between body and upright.</summary>
public sealed record FiveLinkDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public FiveLinkPointsDocument Points { get; set; } = null!;
}
