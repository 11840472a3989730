using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What was read of a car's tyres.</summary>
public sealed record DiagnosisRequest : ITyreReadings
{
    /// <summary>The car, as far as it is known; no part of it is needed.</summary>
    public VehicleDocument? Vehicle { get; set; }

    /// <summary>What the tyres did.</summary>
    public UseDocument? Use { get; set; }

    /// <summary>The tyres, each wheel once; empty where nothing was read.</summary>
    [JsonRequired]
    [Count(0, 4)]
    public TyreReadingDocument[] Tyres { get; set; } = [];

    /// <summary>The day of the readings, year-month-day; the service's day where left out. Tells the tyres' age.</summary>
    [StringLength(10)]
    [Sample("2026-11-20")]
    public string? ReadOn { get; set; }
}

/// <summary>What the tyres did since they were new.</summary>
public sealed record UseDocument
{
    /// <summary>Kilometres of road.</summary>
    [Range(0, 500_000)]
    [Sample(6200.0)]
    public double? RoadKm { get; set; }

    /// <summary>Laps of a track, or runs up a hill.</summary>
    [Range(0, 20_000)]
    [Sample(85.0)]
    public double? TrackLaps { get; set; }

    /// <summary>Length of a lap; 3 where left out.</summary>
    [Range(0.05, 100)]
    [Sample(3.2)]
    public double? LapKm { get; set; }

    /// <summary>Lateral acceleration usual in the corners, for the wear model; 0.85 where left out.</summary>
    [Range(0.05, 3)]
    [Sample(0.9)]
    public double? LateralG { get; set; }

    /// <summary>Radius of a usual corner, for the wear model; 60 where left out.</summary>
    [Range(5, 1000)]
    [Sample(55.0)]
    public double? CornerRadiusM { get; set; }

    internal WearUse ToDomain() => new(RoadKm, TrackLaps, LapKm) { LateralG = LateralG, CornerRadiusM = CornerRadiusM };
}
