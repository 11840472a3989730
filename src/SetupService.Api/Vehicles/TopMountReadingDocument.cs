using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>Camber measured with the strut's top mount moved.</summary>
public sealed record TopMountReadingDocument
{
    /// <summary>How far the top mount was moved; positive = inboard.</summary>
    [JsonRequired]
    [Range(-100, 100)]
    [Sample(5.0)]
    public double InboardMm { get; set; }

    /// <summary>Camber there; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-15, 15)]
    [Sample(-1.2)]
    public double CamberDeg { get; set; }
}
