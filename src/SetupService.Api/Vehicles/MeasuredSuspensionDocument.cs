using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Vehicles;

/// <summary>What a person with a jack, a ruler and gauges knows of a corner.</summary>
public sealed record MeasuredSuspensionDocument : SuspensionDocument
{
    /// <summary>Camber, and toe where measured, over wheel travel.</summary>
    [JsonRequired]
    [Count(2, 200)]
    public TravelReadingDocument[] Readings { get; set; } = [];

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
