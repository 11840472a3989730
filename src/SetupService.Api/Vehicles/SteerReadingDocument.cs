using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Camber measured at one steer angle.</summary>
public sealed record SteerReadingDocument
{
    /// <summary>Steer angle of this wheel; positive = left.</summary>
    [JsonRequired]
    [Range(-60, 60)]
    [Sample(20.0)]
    public double SteerDeg { get; set; }

    /// <summary>Camber there; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-1.9)]
    public double CamberDeg { get; set; }
}
