using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>One of a car's two axles.</summary>
[JsonConverter(typeof(WordConverter<Axle>))]
public enum Axle
{
    /// <summary>The front axle.</summary>
    Front,

    /// <summary>The rear axle.</summary>
    Rear,
}
