using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>What holds a wheel to its hub.</summary>
[JsonConverter(typeof(WordConverter<FastenerKind>))]
public enum FastenerKind
{
    /// <summary>A bolt into the hub.</summary>
    Bolt,

    /// <summary>A nut on a stud of the hub.</summary>
    Nut,
}
