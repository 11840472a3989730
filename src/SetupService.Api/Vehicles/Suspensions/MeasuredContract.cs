using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>What a person with a jack, a ruler and gauges knows of a corner.</summary>
public sealed record MeasuredSuspensionDocument : SuspensionDocument
{
    /// <summary>Camber, and toe where measured, over wheel travel; this or table is needed.</summary>
    [Count(2, TravelTable.MostReadings)]
    public TravelReadingDocument[]? Readings { get; set; }

    /// <summary>The same as text, a line a reading: travel in mm, camber, and toe where measured, in degrees; separated by blank, tab, comma or semicolon.</summary>
    [StringLength(TravelTable.MaximumLength)]
    [Sample("-20; -0.4\n0; -0.9\n20; -1.3")]
    public string? Table { get; set; }

    /// <summary>Camber over steer angle.</summary>
    [Count(1, 200)]
    public SteerReadingDocument[]? SteerReadings { get; set; }

    /// <summary>Camber over top-mount movement.</summary>
    [Count(1, 200)]
    public TopMountReadingDocument[]? TopMountReadings { get; set; }

    /// <summary>Standard deviation of one camber reading; 0 = without error, 0.1 where left out.</summary>
    [Range(0, 2)]
    [Sample(0.1)]
    public double? GaugeErrorDeg { get; set; }
}

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
