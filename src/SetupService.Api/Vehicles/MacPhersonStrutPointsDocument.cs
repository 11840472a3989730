using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a strut. Without spring and damper points both act along the strut.</summary>
public sealed record MacPhersonStrutPointsDocument
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

    /// <summary>Spring's end on the body.</summary>
    public PointDocument? SpringChassis { get; set; }

    /// <summary>Spring's end on the moving part.</summary>
    public PointDocument? SpringMoving { get; set; }

    /// <summary>Damper's end on the body.</summary>
    public PointDocument? DamperChassis { get; set; }

    /// <summary>Damper's end on the moving part.</summary>
    public PointDocument? DamperMoving { get; set; }

    /// <summary>The part that carries the spring's moving end.</summary>
    [Sample("lowerArm")]
    public SuspensionPart? SpringOn { get; set; }

    /// <summary>The part that carries the damper's moving end.</summary>
    [Sample("lowerArm")]
    public SuspensionPart? DamperOn { get; set; }
}
