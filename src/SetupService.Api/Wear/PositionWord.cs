using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear;

/// <summary>One of the four wheels.</summary>
[JsonConverter(typeof(WordConverter<PositionWord>))]
public enum PositionWord
{
    /// <summary>Front left.</summary>
    FrontLeft,

    /// <summary>Front right.</summary>
    FrontRight,

    /// <summary>Rear left.</summary>
    RearLeft,

    /// <summary>Rear right.</summary>
    RearRight,
}
