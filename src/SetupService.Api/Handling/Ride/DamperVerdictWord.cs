using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>Whether the dampers fitted serve the springs.</summary>
[JsonConverter(typeof(WordConverter<DamperVerdictWord>))]
public enum DamperVerdictWord
{
    /// <summary>They serve.</summary>
    Keep,

    /// <summary>They serve, close to an end of the range.</summary>
    Borderline,

    /// <summary>They do not.</summary>
    Replace,

    /// <summary>Not told: the damper's figures are not given.</summary>
    Unknown,
}
