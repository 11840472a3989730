using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>Where to look first when both sides of an axle differ in steering-axis inclination or included angle. A hint, no finding.</summary>
[JsonConverter(typeof(WordConverter<IncludedAngleHintWord>))]
public enum IncludedAngleHintWord
{
    /// <summary>Both sides agree.</summary>
    NoDifference,

    /// <summary>The included angles differ, the inclinations do not: upright, hub, strut or the joint between them.</summary>
    UprightOrStrut,

    /// <summary>The inclinations differ, the included angles do not: strut tower, top mount, arm or subframe.</summary>
    TowerOrArm,

    /// <summary>Both differ: more than one part, or one that does both.</summary>
    Both,
}
