using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

/// <summary>The points of a twist beam.</summary>
public sealed record TwistBeamPointsDocument : SpringDamperPointsDocument
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
}
