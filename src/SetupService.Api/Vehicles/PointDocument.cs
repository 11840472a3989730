using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>A point of the left corner: x forward, y left, z up; y = 0 is the car's centre plane.</summary>
public sealed record PointDocument
{
    /// <summary>Forward.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(12.0)]
    public double XMm { get; set; }

    /// <summary>To the left of the car's centre plane.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(640.0)]
    public double YMm { get; set; }

    /// <summary>Up.</summary>
    [JsonRequired]
    [Range(-5000, 5000)]
    [Sample(210.0)]
    public double ZMm { get; set; }
}
