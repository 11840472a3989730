using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A movement of the strut's top mount, mm.</summary>
public sealed record TopMountMoveDocument
{
    /// <summary>Inboard; negative = outboard.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(8.0)]
    public double Inboard { get; set; }

    /// <summary>Rearward; negative = forward.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(0.0)]
    public double Rearward { get; set; }
}
