using System.Text.Json.Serialization;

namespace SetupService.Api.Vehicles;

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
