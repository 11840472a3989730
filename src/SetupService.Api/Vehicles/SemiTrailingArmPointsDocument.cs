using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a semi-trailing arm; a trailing arm is one whose pivot axis is across the car.</summary>
public sealed record SemiTrailingArmPointsDocument : SpringDamperPointsDocument
{
    /// <summary>The arm's inner pivot.</summary>
    [JsonRequired]
    public PointDocument PivotInner { get; set; } = null!;

    /// <summary>The arm's outer pivot.</summary>
    [JsonRequired]
    public PointDocument PivotOuter { get; set; } = null!;

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;
}
