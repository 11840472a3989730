using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>Ends of a camber setting, degrees.</summary>
public sealed record CamberRangeDocument
{
    /// <summary>The most negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-2.5)]
    public double From { get; set; }

    /// <summary>The least negative.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-0.5)]
    public double To { get; set; }
}
