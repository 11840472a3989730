using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Forecast;

/// <summary>A tyre whose wear is known, read with a gauge that errs by chance.</summary>
internal sealed class SimulatedTyre
{
    public SimulatedTyre(Random random, int count, Driven driven)
    {
        GaugeErrorMm = 0.05 + (0.25 * random.NextDouble());
        NewMm = 7 + (2 * random.NextDouble());
        PerKmMm = (0.1 + (0.3 * random.NextDouble())) / 1000;
        PerLapMm = 0.01 + (0.03 * random.NextDouble());
        var readings = new DepthReading[count];
        var (km, laps) = (200 * random.NextDouble(), 5 * random.NextDouble());
        var (kmStep, lapStep) = (12_000.0 / count, 120.0 / count);
        for (var i = 0; i < count; i++)
        {
            var far = 0.4 + random.NextDouble();
            if (i > 0 && driven != Driven.Track) km += kmStep * far;
            if (i > 0 && driven != Driven.Road) laps += lapStep * (driven == Driven.InProportion ? far : 0.1 + (1.5 * random.NextDouble()));
            readings[i] = new(km, laps, new(Read(), Read(), Read()));
            double Read() => DepthMm(km, laps) + (GaugeErrorMm * Chance(random));
        }

        Readings = readings;
    }

    public double GaugeErrorMm { get; }

    public double NewMm { get; }

    public double PerKmMm { get; }

    public double PerLapMm { get; }

    public DepthReading[] Readings { get; }

    public double DepthMm(double roadKm, double laps) => NewMm - (PerKmMm * roadKm) - (PerLapMm * laps);

    /// <summary>A normal deviate, by the polar method's plain form (Box and Muller).</summary>
    public static double Chance(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
