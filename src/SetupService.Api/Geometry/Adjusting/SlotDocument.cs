using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>How far a top mount can be moved in its slot, mm, from where it stands now.</summary>
public sealed record SlotDocument
{
    /// <summary>The least movement; usually negative or 0.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(-5.0)]
    public double Minimum { get; set; }

    /// <summary>The greatest movement.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(12.0)]
    public double Maximum { get; set; }
}
