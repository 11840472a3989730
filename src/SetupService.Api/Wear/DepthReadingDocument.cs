using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear;

/// <summary>Tread depths of one tyre, read when its two clocks stood where they did.</summary>
public sealed record DepthReadingDocument
{
    /// <summary>The most kilometres a tyre is taken to have run.</summary>
    public const double MostRoadKm = 1_000_000;

    /// <summary>The most laps a tyre is taken to have run.</summary>
    public const double MostLaps = 100_000;

    /// <summary>Kilometres on the road until this reading, in all; where they begin does not matter.</summary>
    [JsonRequired]
    [Range(0, MostRoadKm)]
    [Sample(2350.0)]
    public double RoadKm { get; set; }

    /// <summary>Laps on track until this reading, in all.</summary>
    [JsonRequired]
    [Range(0, MostLaps)]
    [Sample(41.0)]
    public double TrackLaps { get; set; }

    /// <summary>Tread depth across the tyre; best the mean of several places round it.</summary>
    [JsonRequired]
    public DepthsDocument DepthMm { get; set; } = null!;

    internal DepthReading ToDomain() => new(RoadKm, TrackLaps, DepthMm.ToDomain());

    internal static DepthReading[] ToDomain(DepthReadingDocument[]? readings)
    {
        var list = new DepthReading[readings?.Length ?? 0];
        for (var i = 0; i < list.Length; i++) list[i] = readings![i].ToDomain();
        return list;
    }
}
