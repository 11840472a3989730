using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>Whether any offset fits.</summary>
[JsonConverter(typeof(WordConverter<WindowStatusWord>))]
public enum WindowStatusWord
{
    /// <summary>Offsets from the minimum to the maximum fit.</summary>
    Fits,

    /// <summary>No offset fits.</summary>
    NothingFits,

    /// <summary>Neither end is known.</summary>
    Unknown,
}
