using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>A moving part that can carry the end of a spring or damper.</summary>
[JsonConverter(typeof(WordConverter<SuspensionPart>))]
public enum SuspensionPart
{
    /// <summary>The lower arm.</summary>
    LowerArm,

    /// <summary>The upper arm.</summary>
    UpperArm,

    /// <summary>The upright.</summary>
    Upright,

    /// <summary>The beam or trailing arm.</summary>
    Beam,
}
