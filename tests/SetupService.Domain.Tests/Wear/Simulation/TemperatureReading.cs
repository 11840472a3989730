using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Tread temperatures as read after a lap: later is cooler, and an infrared thermometer sees the surface, which cools first. Rates are judgement, no source.</summary>
internal sealed class TemperatureReading(SeededDraw draw, TrueCar car, WornTyre[] tyres)
{
    private readonly bool _reads = draw.Chance(0.35) && car.Use.HasTrack;
    private readonly bool _knowsWindow = draw.Chance(0.25) && car.Use.HasTrack;
    private readonly bool _tellsSeconds = draw.Chance(0.6);
    private readonly Thermometer _by = draw.Chance(0.6) ? Thermometer.Probe : Thermometer.Infrared;
    private double _seconds = draw.Between(15, 70);

    public TyreReading Of(TyreReading reading, TrueAxle axle, WornTyre tyre)
    {
        if (_knowsWindow) reading = reading with { TemperatureWindowC = (Math.Round(axle.Tyre.WindowC.FromC), Math.Round(axle.Tyre.WindowC.ToC)) };
        if (!_reads) return reading;
        var stripsC = TreadHeat.StripsC(car, axle, tyres, tyre);
        var atC = TreadZone.UsualPct.Select(pct => Read(Strips.At(stripsC, pct)));
        reading = reading with { TemperatureC = atC, TemperatureBy = _by, SecondsAfterLap = _tellsSeconds ? Math.Round(_seconds) : null };
        _seconds += draw.Between(8, 20);
        return reading;
    }

    private double Read(double trueC)
    {
        var (lastsSeconds, errorC) = _by == Thermometer.Probe ? (700.0, 1.3) : (260.0, 2.5);
        var cooledC = car.Use.AmbientC + ((trueC - car.Use.AmbientC) * Math.Exp(-_seconds / lastsSeconds));
        return Math.Round(Math.Clamp(cooledC + draw.Normal(0, errorC), -40, 250), 1);
    }
}
