using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What was read of one tyre after driving.</summary>
public sealed record TyreHeatDocument
{
    /// <summary>Which wheel it is on.</summary>
    [JsonRequired]
    [Sample("frontLeft")]
    public WheelPosition Position { get; set; }

    /// <summary>Across the tread.</summary>
    public TreadTemperaturesDocument? TemperatureC { get; set; }

    /// <summary>What that was read with; infrared, the less exact, where left out.</summary>
    [Sample("probe")]
    public Thermometer? TemperatureBy { get; set; }

    /// <summary>From the end of the last quick lap to the reading.</summary>
    [Range(0, 3600)]
    [Sample(25.0)]
    public double? SecondsAfterLap { get; set; }

    /// <summary>The temperatures the tyre works at.</summary>
    public TemperatureWindowDocument? TemperatureWindowC { get; set; }

    /// <summary>Pressures, gauge.</summary>
    public PressuresDocument? PressureKpa { get; set; }
}
