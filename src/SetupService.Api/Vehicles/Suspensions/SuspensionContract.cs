using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>
/// A corner's suspension, one of several kinds told apart by <c>kind</c>, which may stand anywhere in the object.
/// Points are the left corner's at ride height; the right is its mirror.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(MacPhersonStrutDocument), "macPhersonStrut")]
[JsonDerivedType(typeof(DoubleWishboneDocument), "doubleWishbone")]
[JsonDerivedType(typeof(FiveLinkDocument), "fiveLink")]
[JsonDerivedType(typeof(SemiTrailingArmDocument), "semiTrailingArm")]
[JsonDerivedType(typeof(TwistBeamDocument), "twistBeam")]
[JsonDerivedType(typeof(MeasuredSuspensionDocument), "measured")]
public abstract record SuspensionDocument;

/// <summary>A strut: lower arm, strut, tie rod.</summary>
public sealed record MacPhersonStrutDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public MacPhersonStrutPointsDocument Points { get; set; } = null!;
}

/// <summary>A double wishbone: lower and upper arm, tie rod.</summary>
public sealed record DoubleWishboneDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public DoubleWishbonePointsDocument Points { get; set; } = null!;
}

/// <summary>Five links between body and upright.</summary>
public sealed record FiveLinkDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public FiveLinkPointsDocument Points { get; set; } = null!;
}

/// <summary>An arm on one oblique pivot axis.</summary>
public sealed record SemiTrailingArmDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public SemiTrailingArmPointsDocument Points { get; set; } = null!;
}

/// <summary>Two trailing arms joined by a beam that twists.</summary>
public sealed record TwistBeamDocument : SuspensionDocument
{
    /// <summary>Its points, at ride height.</summary>
    [JsonRequired]
    public TwistBeamPointsDocument Points { get; set; } = null!;
}

/// <summary>Where spring and damper stand: what the points of every kind of suspension may add. Written after the kind's own.</summary>
public abstract record SpringDamperPointsDocument
{
    /// <summary>Spring's end on the body.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? SpringChassis { get; set; }

    /// <summary>Spring's end on the moving part.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? SpringMoving { get; set; }

    /// <summary>Damper's end on the body.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? DamperChassis { get; set; }

    /// <summary>Damper's end on the moving part.</summary>
    [JsonPropertyOrder(1)]
    public PointDocument? DamperMoving { get; set; }

    /// <summary>The part that carries the spring's moving end.</summary>
    [JsonPropertyOrder(1)]
    [Sample("lowerArm")]
    public SuspensionMember? SpringOn { get; set; }

    /// <summary>The part that carries the damper's moving end.</summary>
    [JsonPropertyOrder(1)]
    [Sample("lowerArm")]
    public SuspensionMember? DamperOn { get; set; }

    /// <summary>Standard deviation of each coordinate of the points; figures of travel-sweep and adjustment then have ranges, a check more tolerance, a camber target a wider interval. Points count as exact where left out.</summary>
    [JsonPropertyOrder(1)]
    [Range(0, 20)]
    [Sample(1.0)]
    public double? PointErrorMm { get; set; }
}

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

/// <summary>The points of a double wishbone.</summary>
public sealed record DoubleWishbonePointsDocument : SpringDamperPointsDocument
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

    /// <summary>Upper arm's front pivot on the body.</summary>
    [JsonRequired]
    public PointDocument UpperArmFront { get; set; } = null!;

    /// <summary>Upper arm's rear pivot on the body.</summary>
    [JsonRequired]
    public PointDocument UpperArmRear { get; set; } = null!;

    /// <summary>Upper ball joint.</summary>
    [JsonRequired]
    public PointDocument UpperBallJoint { get; set; } = null!;

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

/// <summary>The points of a five-link suspension. The fifth link is the tie rod or toe link.</summary>
public sealed record FiveLinkPointsDocument : SpringDamperPointsDocument
{
    /// <summary>The five links; the fifth is the tie rod or toe link.</summary>
    [JsonRequired]
    [Count(5, 5)]
    public LinkDocument[] Links { get; set; } = [];

    /// <summary>Where the spin axis meets the wheel's centre plane.</summary>
    [JsonRequired]
    public PointDocument WheelCentre { get; set; } = null!;
}

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

/// <summary>A point of the left corner: x forward, y left, z up; y = 0 is the car's centre plane.</summary>
public sealed record PointDocument
{
    /// <summary>Forward.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(12.0)]
    public double XMm { get; set; }

    /// <summary>To the left of the car's centre plane.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(640.0)]
    public double YMm { get; set; }

    /// <summary>Up.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(210.0)]
    public double ZMm { get; set; }
}
