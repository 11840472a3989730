using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>How the two wheels of an axle move together.</summary>
[JsonConverter(typeof(WordConverter<AxleMotionWord>))]
public enum AxleMotionWord
{
    /// <summary>Both alike: heave.</summary>
    Parallel,

    /// <summary>As much up on one side as down on the other: roll.</summary>
    Opposite,
}
