using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Parts;

/// <summary>How a check turned out; a verdict is the gravest of its checks.</summary>
[JsonConverter(typeof(WordConverter<StatusWord>))]
public enum StatusWord
{
    /// <summary>Nothing speaks against it.</summary>
    Pass,

    /// <summary>It can go wrong within the stated uncertainty, or somebody else has to decide.</summary>
    Caution,

    /// <summary>It does not fit, does not carry, or breaks a stated limit.</summary>
    Fail,

    /// <summary>Something needed was not given; nothing is guessed in its place.</summary>
    Unknown,
}
