using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>A request with one reading for each tyre.</summary>
internal interface ITyreReadings
{
    /// <summary>The tyres, each wheel once.</summary>
    TyreReadingDocument[] Tyres { get; }

    /// <summary>The day of the readings, year-month-day; null = the service's day.</summary>
    string? ReadOn { get; }
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
