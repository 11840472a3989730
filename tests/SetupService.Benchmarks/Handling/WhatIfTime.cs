using System.Diagnostics;

namespace SetupService.Benchmarks.Handling;

/// <summary>A car and twelve changes of it, by a stopwatch: least and median of many, since a shared machine only ever slows.</summary>
internal static class WhatIfTime
{
    private const int Rounds = 400;

    public static int Run()
    {
        var benchmark = new HandlingBenchmark();
        var times = new double[Rounds];
        for (var i = 0; i < Rounds; i++)
        {
            var began = Stopwatch.GetTimestamp();
            benchmark.WhatIf();
            times[i] = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }

        Array.Sort(times);
        Console.WriteLine(FormattableString.Invariant($"what-if with 12 changes, limits and ranges included: least {times[0]:0.00} ms, median {times[Rounds / 2]:0.00} ms"));
        return 0;
    }
}
