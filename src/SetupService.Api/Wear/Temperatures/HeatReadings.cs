using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>A request on temperatures and pressures, mapped to domain values.</summary>
/// <param name="Request">The request.</param>
/// <param name="Vehicle">Its car; null where none is given.</param>
/// <param name="Today">The day of the readings.</param>
internal sealed record HeatReadings(TemperaturesRequest Request, Vehicle? Vehicle, DateOnly Today)
{
    // Errors of the air pressure, one standard deviation, kPa: as a station reads it, and where not even the altitude is given, since most
    // places lie within some 5 kPa of each other.
    private const double StationErrorKpa = 0.2;
    private const double AltitudeUnknownErrorKpa = 3;

    /// <summary>The thermometer assumed where none is named: the less accurate kind.</summary>
    public const Thermometer AssumedThermometer = Thermometer.Infrared;

    /// <summary>Air around the treads, °C; null where no temperature of it is given.</summary>
    public double? AirC => Request.AirTemperatureC ?? Request.ColdTemperatureC;

    /// <summary>The conditions in which the pressures were read.</summary>
    public PressureConditions Conditions { get; } = new(
        Request.ColdTemperatureC,
        Request.NextColdTemperatureC,
        Request.AirPressureKpa ?? StandardAtmosphere.PressureKpa(Request.AltitudeM ?? 0),
        new PressureErrors(
            Request.GaugeErrorKpa ?? PressureErrors.UsualGaugeErrorKpa,
            Request.AirPressureKpa is not null ? StationErrorKpa : Request.AltitudeM is not null ? StandardAtmosphere.WeatherErrorKpa : AltitudeUnknownErrorKpa,
            PressureErrors.UsualColdErrorC));

    /// <summary>The treads that were read.</summary>
    public IReadOnlyList<TreadReading> Treads { get; } = [.. Request.Tyres.Select(TreadOf).OfType<TreadReading>()];

    /// <summary>A tyre's tread; null where it was not read.</summary>
    public static TreadReading? TreadOf(TyreReadingDocument reading) => reading.TemperatureC is not { } temperatures ? null : new TreadReading(
        reading.Position,
        temperatures.ToDomain(),
        reading.TemperatureBy ?? AssumedThermometer,
        reading.SecondsAfterLap,
        reading.TemperatureWindowC is { } window ? new TemperatureRange(window.From, window.To) : null);

    /// <summary>Every tyre with its tread and pressure, those of an axle set alike where they cannot be told apart, in the order of the request.</summary>
    public TyreHeat[] Heats(UnitSystem units)
    {
        var pressures = AxlePressures.Level([.. Request.Tyres.Select(reading => (reading.Position, PressureOf(reading)))], Conditions);
        return [.. Request.Tyres.Select((reading, index) => new TyreHeat(reading.Position, TreadOf(reading), pressures[index]) { ShoulderDoubt = HeatAgainstWear.Find(TyreReadingMapper.Map(reading), units) })];
    }

    /// <summary>What follows from a tyre's pressures by itself; null where none is given.</summary>
    public TyrePressure? PressureOf(TyreReadingDocument reading) => reading.PressureKpa is not { } pressures ? null : TyrePressureBuilder.Build(
        pressures.ToDomain(), Conditions, LoadNeed.Compute(Vehicle, reading.Position), TreadOf(reading)?.MeanC);
}
