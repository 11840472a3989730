using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Vehicles;

/// <summary>Camber and toe measured at one wheel travel.</summary>
public sealed record TravelReadingDocument
{
    /// <summary>Wheel travel from ride height; positive = bump.</summary>
    [JsonRequired]
    [Range(-TravelTable.MostTravelMm, TravelTable.MostTravelMm)]
    [Sample(20.0)]
    public double TravelMm { get; set; }

    /// <summary>Camber there; negative = top leaning to the car's centre.</summary>
    [JsonRequired]
    [Range(-TravelTable.MostCamberDeg, TravelTable.MostCamberDeg)]
    [Sample(-1.1)]
    public double CamberDeg { get; set; }

    /// <summary>Toe there; positive = toe-in.</summary>
    [Range(-TravelTable.MostToeDeg, TravelTable.MostToeDeg)]
    [Sample(0.05)]
    public double? ToeDeg { get; set; }
}
