using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a twist beam.</summary>
public sealed record TwistBeamPointsDocument
{
    /// <summary>The left pivot on the body.</summary>
    [JsonRequired]
    public PointDocument PivotLeft { get; set; } = null!;

    /// <summary>Shear centre of the cross beam, in the car's centre plane.</summary>
    [JsonRequired]
    public PointDocument BeamShearCentre { get; set; } = null!;

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
