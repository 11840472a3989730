using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>Which way a car turns.</summary>
[JsonConverter(typeof(WordConverter<TurnWord>))]
public enum TurnWord
{
    /// <summary>To the left; the right wheels are the outer ones.</summary>
    Left,

    /// <summary>To the right; the left wheels are the outer ones.</summary>
    Right,
}
