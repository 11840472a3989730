using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>Tread depths of one tyre as its clocks ran on, and what else is known of it.</summary>
public sealed record ForecastRequest
{
    /// <summary>The readings in the order they were taken; four at different distances carry a forecast.</summary>
    [JsonRequired]
    [Count(2, 200)]
    public DepthReadingDocument[] Readings { get; set; } = [];

    /// <summary>Depth at which the tyre is done; 1.6 where left out.</summary>
    [Range(0, 20)]
    [Sample(1.6)]
    public double? LimitDepthMm { get; set; }

    /// <summary>Error of one reading, one standard deviation; the readings' own scatter tells it where left out.</summary>
    [Range(0.01, 2)]
    [Sample(0.15)]
    public double? GaugeErrorMm { get; set; }

    /// <summary>Depth of the tread when new; needed for the cost.</summary>
    [Range(0, 20)]
    [Sample(8.0)]
    public double? NewDepthMm { get; set; }

    /// <summary>Price of the tyre; needed for the cost.</summary>
    public TyrePriceDocument? TyrePrice { get; set; }

    /// <summary>The treadwear grade on the tyre's side.</summary>
    [Range(1, 2000)]
    [Sample(240.0)]
    public double? TreadwearGrade { get; set; }

    /// <summary>The treadwear grade of a tyre thought of in its place.</summary>
    [Range(1, 2000)]
    [Sample(300.0)]
    public double? OtherTreadwearGrade { get; set; }

    /// <summary>A tyre of the car this one may change places with.</summary>
    public OtherTyreDocument? OtherTyre { get; set; }
}
