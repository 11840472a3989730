using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What was read of a car's tyres.</summary>
public sealed record DiagnosisRequest
{
    /// <summary>The car, as far as it is known; no part of it is needed. With loads, tracks, wheelbase and springs a cornering model tells how many degrees the camber is short.</summary>
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

/// <summary>What was read of one tyre. All but its position may be left out; depths stand either in depthMm or in zones.</summary>
public sealed record TyreReadingDocument
{
    /// <summary>The most places across or round a tyre.</summary>
    public const int MostPlaces = 24;

    /// <summary>Where it is on the car.</summary>
    [JsonRequired]
    [Sample("frontLeft")]
    public WheelPosition Position { get; set; }

    /// <summary>Depth when new; 8 where left out, for the scale of wear only.</summary>
    [Range(1, 20)]
    [Sample(7.8)]
    public double? NewDepthMm { get; set; }

    /// <summary>Depth in the outer, middle and inner groove.</summary>
    public DepthsDocument? DepthMm { get; set; }

    /// <summary>Depth at any three or more places across, from the outer edge inwards.</summary>
    [Count(3, MostPlaces)]
    public ZoneDocument[]? Zones { get; set; }

    /// <summary>The same three grooves at further places round the tyre, beside depthMm.</summary>
    [Count(1, MostPlaces)]
    public DepthsDocument[]? AroundMm { get; set; }

    /// <summary>What eye and hand find; left out = nobody looked, empty = looked and found nothing.</summary>
    [Count(0, 10)]
    public TreadPattern[]? Patterns { get; set; }

    /// <summary>Damage seen.</summary>
    [Count(0, 10)]
    public TyreDamage[]? Damage { get; set; }

    /// <summary>Tread temperatures.</summary>
    public TreadTemperaturesDocument? TemperatureC { get; set; }

    /// <summary>What they were read with; infrared, the less exact, where left out.</summary>
    [Sample("probe")]
    public Thermometer? TemperatureBy { get; set; }

    /// <summary>From the end of the last quick lap to the reading.</summary>
    [Range(0, 3600)]
    [Sample(40.0)]
    public double? SecondsAfterLap { get; set; }

    /// <summary>The temperatures the tyre works at.</summary>
    public TemperatureWindowDocument? TemperatureWindowC { get; set; }

    /// <summary>Pressures, gauge.</summary>
    public PressuresDocument? PressureKpa { get; set; }

    /// <summary>Standard deviation of one depth reading; 0.25 where left out.</summary>
    [Range(0.01, 2)]
    [Sample(0.15)]
    public double? GaugeErrorMm { get; set; }

    /// <summary>Where it was before, oldest first.</summary>
    [Count(0, 20)]
    public HistoryLegDocument[]? History { get; set; }

    /// <summary>Week of making as the sidewall has it: week and year, "2319" for week 23 of 2019.</summary>
    [StringLength(16)]
    [Sample("2319")]
    public string? MadeWeek { get; set; }
}

/// <summary>Depth at one place across the tread.</summary>
public sealed record ZoneDocument
{
    /// <summary>Where: 0 = the outer edge of the tread, 100 = the inner one.</summary>
    [JsonRequired]
    [Range(0, 100)]
    [Sample(15.0)]
    public double AcrossPct { get; set; }

    /// <summary>Depth there.</summary>
    [JsonRequired]
    [Range(0, 20)]
    [Sample(4.1)]
    public double DepthMm { get; set; }
}

/// <summary>One stretch of a tyre's life.</summary>
public sealed record HistoryLegDocument
{
    /// <summary>Where on the car it was.</summary>
    [JsonRequired]
    [Sample("frontLeft")]
    public WheelPosition Position { get; set; }

    /// <summary>Kilometres of road there.</summary>
    [Range(0, 500_000)]
    [Sample(6200.0)]
    public double? RoadKm { get; set; }

    /// <summary>Laps there.</summary>
    [Range(0, 20_000)]
    [Sample(85.0)]
    public double? TrackLaps { get; set; }

    /// <summary>Whether it was mounted with its sides changed over against now; not where left out.</summary>
    [Sample(false)]
    public bool? TurnedOnRim { get; set; }

    internal HistoryLeg ToDomain() => new(Position, RoadKm, TrackLaps, TurnedOnRim ?? false);
}
