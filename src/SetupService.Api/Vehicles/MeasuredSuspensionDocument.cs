using System.ComponentModel.DataAnnotations;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Api.Vehicles;

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
