using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>Two fittings to be compared on one hub.</summary>
public sealed record ComparisonRequest
{
    /// <summary>The wheel and tyre fitted now.</summary>
    [JsonRequired]
    public FittingDocument Current { get; set; } = null!;

    /// <summary>The wheel and tyre that would take their place.</summary>
    [JsonRequired]
    public FittingDocument Candidate { get; set; } = null!;

    /// <summary>Steering-axis inclination, positive = top inboard; without it a change of diameter leaves the scrub radius unknown.</summary>
    [Range(-10, 40)]
    [Sample(13.1)]
    public double? SteeringAxisInclinationDeg { get; set; }

    /// <summary>Speed shown for which the true speed is worked out; 100 km/h where left out.</summary>
    [Range(1, 500)]
    [Sample(100.0)]
    public double? IndicatedKmh { get; set; }
}
