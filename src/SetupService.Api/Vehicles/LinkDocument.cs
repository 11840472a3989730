using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>One link between body and upright.</summary>
public sealed record LinkDocument
{
    /// <summary>The end on the body.</summary>
    [JsonRequired]
    public PointDocument Chassis { get; set; } = null!;

    /// <summary>The end on the upright.</summary>
    [JsonRequired]
    public PointDocument Upright { get; set; } = null!;
}
