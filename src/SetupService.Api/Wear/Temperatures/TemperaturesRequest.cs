using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>Tread temperatures and pressures after driving, with the air they were read in.</summary>
public sealed record TemperaturesRequest
{
    /// <summary>The car: of each axle the tyre's marking and the load, which tell the least pressure; without it that is unknown.</summary>
    public VehicleDocument? Vehicle { get; set; }

    /// <summary>The tyres, each wheel once.</summary>
    [JsonRequired]
    [Count(1, 4)]
    public TyreHeatDocument[] Readings { get; set; } = [];

    /// <summary>Temperature of the tyres, and so of the gas in them, when the cold pressures were set.</summary>
    [Range(-40, 250)]
    [Sample(18.0)]
    public double? ColdTemperatureC { get; set; }

    /// <summary>The same before the next session.</summary>
    [Range(-40, 250)]
    [Sample(27.0)]
    public double? NextColdTemperatureC { get; set; }

    /// <summary>Air where the treads were read; as coldTemperatureC where left out.</summary>
    [Range(-40, 250)]
    [Sample(21.0)]
    public double? AirTemperatureC { get; set; }

    /// <summary>Altitude of the place; tells the air's pressure where that is left out.</summary>
    [Range(-500, 5000)]
    [Sample(240.0)]
    public double? AltitudeM { get; set; }

    /// <summary>Pressure of the air at the place itself, not reduced to sea level.</summary>
    [Range(50, 110)]
    [Sample(98.5)]
    public double? AirPressureKpa { get; set; }

    /// <summary>Error of one reading of the pressure gauge, one standard deviation; 2 where left out.</summary>
    [Range(0, 20)]
    [Sample(2.0)]
    public double? GaugeErrorKpa { get; set; }
}
