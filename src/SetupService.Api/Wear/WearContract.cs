using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>The readings of one tyre as its clocks ran on; each has the members a single reading has in the other wear calls.</summary>
public sealed record TyreReadingsDocument
{
    /// <summary>Where it is on the car.</summary>
    [JsonRequired]
    [Sample("frontLeft")]
    public WheelPosition Position { get; set; }

    /// <summary>Depth when new; needed for the cost, and for the wear so far of a single reading.</summary>
    [Range(1, 20)]
    [Sample(7.8)]
    public double? NewDepthMm { get; set; }

    /// <summary>Standard deviation of one depth reading; 0.25 where left out, and from four readings on their own scatter counts.</summary>
    [Range(0.01, 2)]
    [Sample(0.15)]
    public double? GaugeErrorMm { get; set; }

    /// <summary>The readings in the order they were taken.</summary>
    [JsonRequired]
    [Count(1, 200)]
    public DepthReadingDocument[] Readings { get; set; } = [];

    internal DepthReading[] ToDomain()
    {
        var list = new DepthReading[Readings.Length];
        for (var i = 0; i < list.Length; i++) list[i] = Readings[i].ToDomain();
        return list;
    }

    /// <summary>The session of each reading, numbered.</summary>
    internal int[] Sessions()
    {
        var names = new List<string>();
        var list = new int[Readings.Length];
        for (var i = 0; i < list.Length; i++)
        {
            var name = Readings[i].Session ?? "";
            if (names.IndexOf(name) < 0) names.Add(name);
            list[i] = names.IndexOf(name);
        }

        return list;
    }
}

/// <summary>Tread depths of one tyre, read when its clocks stood where they did; depths stand either in depthMm or in zones.</summary>
public sealed record DepthReadingDocument
{
    /// <summary>The most kilometres a tyre is taken to have run.</summary>
    public const double MostRoadKm = 1_000_000;

    /// <summary>The most laps a tyre is taken to have run.</summary>
    public const double MostLaps = 100_000;

    /// <summary>Kilometres on the road until this reading, in all; where they begin does not matter. Left out in all readings: not counted.</summary>
    [Range(0, MostRoadKm)]
    [Sample(2350.0)]
    public double? RoadKm { get; set; }

    /// <summary>Laps on track until this reading, in all. Left out in all readings: not counted.</summary>
    [Range(0, MostLaps)]
    [Sample(41.0)]
    public double? TrackLaps { get; set; }

    /// <summary>The session the use since the reading before was in, any name; before-after counts one name, or none, as one session.</summary>
    [StringLength(60)]
    [Sample("2026-05-16")]
    public string? Session { get; set; }

    /// <summary>Depth in the outer, middle and inner groove.</summary>
    public DepthsDocument? DepthMm { get; set; }

    /// <summary>Depth at any three or more places across, from the outer edge inwards.</summary>
    [Count(3, TyreReadingDocument.MostPlaces)]
    public ZoneDocument[]? Zones { get; set; }

    /// <summary>The same three grooves at further places round the tyre, beside depthMm; their mean counts.</summary>
    [Count(1, TyreReadingDocument.MostPlaces)]
    public DepthsDocument[]? AroundMm { get; set; }

    internal DepthReading ToDomain() => new(RoadKm ?? 0, TrackLaps ?? 0, Depths());

    private AcrossTread<double> Depths() =>
        TreadFigures.Compute(new TyreReading { Position = default, Zones = TyreReadingMapper.Across(DepthMm, AroundMm, Zones) }) is { } figures ? figures.DepthMm : default;
}

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

/// <summary>One figure at three places across a tread, in the unit of the member it stands under; outer and inner are away from and towards the car's centre.</summary>
public sealed record DepthsResponse
{
    /// <summary>At the outer shoulder.</summary>
    [Sample(3.9)]
    public required double Outer { get; init; }

    /// <summary>In the middle.</summary>
    [Sample(5.6)]
    public required double Centre { get; init; }

    /// <summary>At the inner shoulder.</summary>
    [Sample(5.8)]
    public required double Inner { get; init; }

    internal static DepthsResponse From(AcrossTread<double> values) => new() { Outer = values.Outer, Centre = values.Centre, Inner = values.Inner };
}

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

/// <summary>The tread temperatures between which a tyre works, as its maker or experience has them.</summary>
public sealed record TemperatureWindowDocument
{
    /// <summary>Lower end.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(70.0)]
    public double From { get; set; }

    /// <summary>Upper end.</summary>
    [JsonRequired]
    [Range(-40, 250)]
    [Sample(95.0)]
    public double To { get; set; }
}

/// <summary>Gauge pressures of one tyre; each may be left out.</summary>
public sealed record PressuresDocument
{
    /// <summary>As set before driving, cold.</summary>
    [Range(80, 500)]
    [Sample(210.0)]
    public double? Cold { get; set; }

    /// <summary>Right after driving.</summary>
    [Range(80, 500)]
    [Sample(262.0)]
    public double? Hot { get; set; }

    /// <summary>What it should be cold.</summary>
    [Range(80, 500)]
    [Sample(200.0)]
    public double? AimCold { get; set; }

    /// <summary>What it should be hot.</summary>
    [Range(80, 500)]
    [Sample(245.0)]
    public double? AimHot { get; set; }

    internal TyrePressures ToDomain() => new(Cold, Hot, AimCold, AimHot);
}
