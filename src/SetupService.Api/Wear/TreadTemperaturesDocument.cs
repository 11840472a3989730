using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Temperature at three places across a tread; outer and inner are away from and towards the car's centre.</summary>
public sealed record TreadTemperaturesDocument
{
    /// <summary>At the outer shoulder.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(86.0)]
    public double Outer { get; set; }

    /// <summary>In the middle.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(79.0)]
    public double Centre { get; set; }

    /// <summary>At the inner shoulder.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(74.0)]
    public double Inner { get; set; }

    internal AcrossTread<double> ToDomain() => new(Outer, Centre, Inner);
}
