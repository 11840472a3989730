using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Depth at one place across the tread.</summary>
public sealed record ZoneDocument
{
    /// <summary>Where: 0 = the outer edge of the tread, 100 = the inner one.</summary>
    [JsonRequired]
    [Range(0, 100)]
    [Sample(15.0)]
    public double AcrossPct { get; set; }

    /// <summary>Depth there.</summary>
    [JsonRequired]
    [Range(0, 20)]
    [Sample(4.1)]
    public double DepthMm { get; set; }
}
