using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.CamberTarget;

/// <summary>Ends of a caster setting, degrees.</summary>
public sealed record CasterRangeDocument
{
    /// <summary>Least.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(5.0)]
    public double From { get; set; }

    /// <summary>Most.</summary>
    [JsonRequired]
    [Range(-5, 20)]
    [Sample(8.0)]
    public double To { get; set; }
}
