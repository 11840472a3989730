using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry;

/// <summary>Which side of the car a wheel is on, seen in the direction of travel.</summary>
[JsonConverter(typeof(WordConverter<WheelSideWord>))]
public enum WheelSideWord
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}
