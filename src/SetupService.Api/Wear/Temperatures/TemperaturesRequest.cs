using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using FluentValidation;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Rules;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;

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

/// <summary>What readings must keep beyond types and ranges: each wheel once, windows and aims that have an inside, air that belongs to the place.</summary>
public sealed class TemperaturesRules : AbstractValidator<TemperaturesRequest>
{
    // The weather moves the air's pressure by less than this, kPa; a figure reduced to sea level is further off from some 700 m up.
    private const double WeatherMostKpa = 8;

    /// <summary>Creates the rules; they hold no state.</summary>
    public TemperaturesRules()
    {
        RuleForEach(request => request.Readings).SetValidator(new TyreHeatRules());
        RuleFor(request => request.AirPressureKpa).Must((request, airKpa) => !(Math.Abs(airKpa - StandardKpa(request) ?? 0) > WeatherMostKpa))
            .Says(FaultCodes.Inconsistent, (request, airKpa) => FormattableString.Invariant($"{airKpa} kPa is not the pressure at {request.AltitudeM} m, where it is about {StandardKpa(request):0.0}: weather services reduce it to sea level. Give the pressure at the place, or leave it out."));
    }

    private static double? StandardKpa(TemperaturesRequest request) => request.AltitudeM is { } altitudeM ? StandardAtmosphere.PressureKpa(altitudeM) : null;
}

/// <summary>What the readings of one tyre must keep: its wheel once, a window and aims that have an inside.</summary>
public sealed class TyreHeatRules : AbstractValidator<TyreHeatDocument>
{
    /// <summary>Creates the rules; they hold no state.</summary>
    public TyreHeatRules()
    {
        RuleFor(reading => reading.Position).IsGivenOnce<TemperaturesRequest, TyreHeatDocument>(request => request.Readings, reading => reading.Position, nameof(TemperaturesRequest.Readings));
        RuleFor(reading => reading.TemperatureWindowC!.To).GreaterThanOrEqualTo(reading => reading.TemperatureWindowC!.From).When(reading => reading.TemperatureWindowC is not null)
            .Says(FaultCodes.Inconsistent, (reading, to) => FormattableString.Invariant($"to is {to} °C, below from, which is {reading.TemperatureWindowC!.From} °C.")).WhenRead(nameof(TyreHeatDocument.TemperatureWindowC));
        RuleFor(reading => reading.PressureKpa!.AimHot).Must((reading, aimHot) => !(aimHot < reading.PressureKpa!.AimCold)).When(reading => reading.PressureKpa is not null)
            .Says(FaultCodes.Inconsistent, (reading, aimHot) => FormattableString.Invariant($"aimHot is {aimHot} kPa, below aimCold, which is {reading.PressureKpa!.AimCold} kPa: a tyre that gets warm gains pressure."));
    }
}
