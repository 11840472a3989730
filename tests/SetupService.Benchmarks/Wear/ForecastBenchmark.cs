using BenchmarkDotNet.Attributes;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Benchmarks.Wear;

/// <summary>A forecast from eight readings over two clocks, of one tyre and of four, a rough one of four, and a comparison that plans a session.</summary>
[MemoryDiagnoser]
public class ForecastBenchmark
{
    private static readonly DepthReading[] Readings = Tyre(0.03);
    private static readonly DepthReading[] Others = Tyre(0.02);

    private readonly ForecastQuestion _alone = new() { Readings = Readings, GaugeErrorMm = 0.15 };
    private readonly (WheelPosition, ForecastQuestion)[] _car = Car(8);
    private readonly (WheelPosition, ForecastQuestion)[] _rough = Car(3);
    private readonly ComparisonQuestion _comparison = new() { Before = Readings, After = Others, ExpectedRatio = 0.5 };

    /// <summary>One tyre.</summary>
    [Benchmark]
    public double Forecast() => TreadForecast.Compute(_alone).Ending?.Probability ?? throw new InvalidOperationException();

    /// <summary>Four tyres, with turning and swapping.</summary>
    [Benchmark]
    public double FourTyres() => CarForecast.Compute(_car).Swaps[0].Swapping.Change.Gain;

    /// <summary>Four tyres read three times.</summary>
    [Benchmark]
    public double FourRough() => CarForecast.Compute(_rough).Tyres[0].Tread.Ending?.Probability ?? throw new InvalidOperationException();

    /// <summary>Before and after, with what would show it in three zones.</summary>
    [Benchmark]
    public double Comparison() => WearComparison.Compute(_comparison).Zones?.Outer.FurtherSessions ?? throw new InvalidOperationException();

    private static (WheelPosition, ForecastQuestion)[] Car(int readings) =>
    [
        (WheelPosition.FrontLeft, new() { Readings = Readings.AsMemory(0, readings), GaugeErrorMm = 0.15 }),
        (WheelPosition.FrontRight, new() { Readings = Readings.AsMemory(0, readings), GaugeErrorMm = 0.15 }),
        (WheelPosition.RearLeft, new() { Readings = Others.AsMemory(0, readings), GaugeErrorMm = 0.15 }),
        (WheelPosition.RearRight, new() { Readings = Others.AsMemory(0, readings), GaugeErrorMm = 0.15 }),
    ];

    private static DepthReading[] Tyre(double perLapMm)
    {
        ReadOnlySpan<double> road = [0, 520, 2230, 2780, 5080, 5580, 6100, 8000];
        ReadOnlySpan<double> laps = [0, 22, 22, 47, 55, 81, 100, 104];
        ReadOnlySpan<double> missMm = [0.1, -0.1, 0.05, 0, -0.05, 0.1, -0.1, 0.05];
        var readings = new DepthReading[road.Length];
        for (var i = 0; i < readings.Length; i++)
        {
            var lostMm = (0.0002 * road[i]) + (perLapMm * laps[i]);
            readings[i] = new(road[i], laps[i], new(8 - lostMm + missMm[i], 8 - (0.7 * lostMm) - missMm[i], 8 - (0.85 * lostMm) + missMm[7 - i]));
        }

        return readings;
    }
}
