using BenchmarkDotNet.Attributes;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Forecast;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Benchmarks.Wear;

/// <summary>A forecast from eight readings over two clocks, alone and with a tyre to swap with, and a comparison that plans a session.</summary>
[MemoryDiagnoser]
public class ForecastBenchmark
{
    private static readonly DepthReading[] Readings = Tyre(0.03);
    private static readonly DepthReading[] Others = Tyre(0.02);

    private readonly ForecastQuestion _alone = new() { Readings = Readings, GaugeErrorMm = 0.15 };
    private readonly ForecastQuestion _withOther = new() { Readings = Readings, GaugeErrorMm = 0.15, OtherReadings = Others };
    private readonly ComparisonQuestion _comparison = new() { Before = Readings, After = Others, ExpectedRatio = 0.5 };

    /// <summary>One tyre.</summary>
    [Benchmark]
    public double Forecast() => TreadForecast.Compute(_alone).Ending?.Probability ?? throw new InvalidOperationException();

    /// <summary>With turning and swapping against another.</summary>
    [Benchmark]
    public double WithOther() => TreadForecast.Compute(_withOther).Swapping?.Change.Gain ?? throw new InvalidOperationException();

    /// <summary>Before and after, with the further laps of three zones.</summary>
    [Benchmark]
    public double Comparison() => WearComparison.Compute(_comparison).Zones?.Outer.LeastUse ?? throw new InvalidOperationException();

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
