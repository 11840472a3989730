using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a strut. Without spring and damper points both act along the strut.</summary>
public sealed record MacPhersonStrutPointsDocument : SpringDamperPointsDocument
{
    /// <summary>Lower arm's front pivot on the body.</summary>
    [JsonRequired]
    public PointDocument LowerArmFront { get; set; } = null!;

    /// <summary>Lower arm's rear pivot on the body.</summary>
    [JsonRequired]
    public PointDocument LowerArmRear { get; set; } = null!;

    /// <summary>Lower ball joint.</summary>
    [JsonRequired]
    public PointDocument LowerBallJoint { get; set; } = null!;

    /// <summary>Strut's top mount.</summary>
    [JsonRequired]
    public PointDocument StrutTop { get; set; } = null!;

    /// <summary>A second point on the strut's axis, fixed to the upright.</summary>
    [JsonRequired]
    public PointDocument StrutLower { get; set; } = null!;

    /// <summary>Tie rod's end on the rack or body.</summary>
    [JsonRequired]
    public PointDocument TieRodInner { get; set; } = null!;

    /// <summary>Tie rod's end on the upright.</summary>
    [JsonRequired]
    public PointDocument TieRodOuter { get; set; } = null!;

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;
}
