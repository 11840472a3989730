using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Tread depth at three places across a tyre; outer and inner are away from and towards the car's centre.</summary>
public sealed record DepthsDocument
{
    /// <summary>In the groove next to the outer shoulder.</summary>
    [JsonRequired]
    [Range(0, 20)]
    [Sample(3.9)]
    public double Outer { get; set; }

    /// <summary>In the middle.</summary>
    [JsonRequired]
    [Range(0, 20)]
    [Sample(5.6)]
    public double Centre { get; set; }

    /// <summary>In the groove next to the inner shoulder.</summary>
    [JsonRequired]
    [Range(0, 20)]
    [Sample(5.8)]
    public double Inner { get; set; }

    internal AcrossTread<double> ToDomain() => new(Outer, Centre, Inner);
}
