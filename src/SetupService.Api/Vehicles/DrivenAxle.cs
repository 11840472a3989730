using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Which wheels are driven.</summary>
[JsonConverter(typeof(WordConverter<DrivenAxle>))]
public enum DrivenAxle
{
    /// <summary>The front wheels.</summary>
    Front,

    /// <summary>The rear wheels.</summary>
    Rear,

    /// <summary>All four wheels.</summary>
    Both,
}
