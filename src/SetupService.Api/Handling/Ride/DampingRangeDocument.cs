using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>A range of damping ratios.</summary>
public sealed record DampingRangeDocument
{
    /// <summary>Least that serves.</summary>
    [JsonRequired]
    [Range(0.01, 3)]
    [Sample(0.3)]
    public double From { get; set; }

    /// <summary>Most that serves.</summary>
    [JsonRequired]
    [Range(0.01, 3)]
    [Sample(0.7)]
    public double To { get; set; }
}
