using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>A double wishbone: lower and upper arm, tie rod.</summary>
public sealed record DoubleWishboneDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public DoubleWishbonePointsDocument Points { get; set; } = null!;
}
