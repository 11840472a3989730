using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Tread depths before and after something was changed: a setting, the pressure, the tyre.</summary>
public sealed record BeforeAfterRequest
{
    /// <summary>Readings before, in the order they were taken.</summary>
    [JsonRequired]
    [Count(1, 200)]
    public DepthReadingDocument[] Before { get; set; } = [];

    /// <summary>Readings after, of the same tyre or of another; their clocks may start anew. Left out before the session that is to show it.</summary>
    [Count(1, 200)]
    public DepthReadingDocument[]? After { get; set; }

    /// <summary>Error of one reading, one standard deviation; the readings' own scatter tells it where left out.</summary>
    [Range(0.01, 2)]
    [Sample(0.15)]
    public double? GaugeErrorMm { get; set; }

    /// <summary>Ratio of the rates, after over before, that the change is hoped to bring; the one seen where left out.</summary>
    [Range(0, 10)]
    [Sample(0.8)]
    public double? ExpectedRatio { get; set; }

    /// <summary>How many further readings are planned; 4 where left out.</summary>
    [Range(2, 100)]
    [Sample(4)]
    public int? PlannedReadings { get; set; }

    /// <summary>How many further laps are planned; how often they would show the change is answered where given. Counts only where laps are compared.</summary>
    [Range(1, 100_000)]
    [Sample(60.0)]
    public double? PlannedLaps { get; set; }
}
