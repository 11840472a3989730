using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear;

/// <summary>The tread temperatures between which a tyre works, as its maker or experience has them.</summary>
public sealed record TemperatureWindowDocument
{
    /// <summary>Lower end.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(70.0)]
    public double From { get; set; }

    /// <summary>Upper end.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(95.0)]
    public double To { get; set; }
}
