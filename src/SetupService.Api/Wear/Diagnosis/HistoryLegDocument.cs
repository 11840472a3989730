using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

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
