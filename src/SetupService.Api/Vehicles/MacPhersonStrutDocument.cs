using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>A strut: lower arm, strut, tie rod.</summary>
public sealed record MacPhersonStrutDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public MacPhersonStrutPointsDocument Points { get; set; } = null!;
}
