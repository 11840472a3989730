using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>Tread temperatures and pressures after driving, with the air they were read in.</summary>
public sealed record TemperaturesRequest : ITyreReadings
{
    /// <summary>The car: of each axle the tyre's marking and the load, which tell the least pressure; without it that is unknown.</summary>
    public VehicleDocument? Vehicle { get; set; }

    /// <summary>The tyres, each wheel once, read as for a diagnosis; depths, damage and week of making bring cautions.</summary>
    [JsonRequired]
    [Count(1, 4)]
    public TyreReadingDocument[] Tyres { get; set; } = [];

    /// <summary>The day of the readings, year-month-day; the service's day where left out. Tells the tyres' age.</summary>
    [StringLength(10)]
    [Sample("2026-11-20")]
    public string? ReadOn { get; set; }

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

/// <summary>What readings must keep beyond types and ranges: each wheel once, windows and aims that have an inside, air that belongs to the place.</summary>
public sealed class TemperaturesRules : AbstractValidator<TemperaturesRequest>
{
    // The weather moves the air's pressure by less than this, kPa; a figure reduced to sea level is further off from some 700 m up.
    private const double WeatherMostKpa = 8;

    /// <summary>Creates the rules; they hold no state.</summary>
    public TemperaturesRules()
    {
        RuleForEach(request => request.Tyres).SetValidator(new TyreReadingRules());
        RuleFor(request => request.ReadOn).IsADay();
        RuleFor(request => request.AirPressureKpa).Must((request, airKpa) => !(Math.Abs(airKpa - StandardKpa(request) ?? 0) > WeatherMostKpa))
            .Says(FaultCodes.Inconsistent, (request, airKpa) => FormattableString.Invariant($"{airKpa} kPa is not the pressure at {request.AltitudeM} m, where it is about {StandardKpa(request):0.0}: weather services reduce it to sea level. Give the pressure at the place, or leave it out."));
    }

    private static double? StandardKpa(TemperaturesRequest request) => request.AltitudeM is { } altitudeM ? StandardAtmosphere.PressureKpa(altitudeM) : null;
}
