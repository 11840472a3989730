using System.Diagnostics;
using SetupService.Benchmarks.Service;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Wheels;

namespace SetupService.Benchmarks.Fitment;

/// <summary>
/// Pairs a second of a catalogue against 20 cars in the domain, on one thread and on two, with few pairs whose bolt circle is the hub's and with all; and in turn
/// with them the single check's rate of the same pairs.
/// </summary>
internal static class CatalogueRate
{
    private const int Cars = 20;
    private const int Circles = 17;
    private const int Rounds = 7;
    private static readonly TimeSpan Window = TimeSpan.FromSeconds(0.4);

    public static void Run()
    {
        (string What, Func<Measured> Measure)[] kinds =
        [
            ("single checks, one thread", Single),
            ($"pairs, {FailingPct(Circles):0.0} % fail on the first look, one thread", () => Pairs(1, Circles)),
            ($"pairs, {FailingPct(Circles):0.0} % fail on the first look, two threads", () => Pairs(2, Circles)),
            ($"pairs, {FailingPct(1):0.0} % fail on the first look, one thread", () => Pairs(1, 1)),
            ($"pairs, {FailingPct(1):0.0} % fail on the first look, two threads", () => Pairs(2, 1)),
        ];
        var found = kinds.Select(static _ => new List<Measured>()).ToArray();
        for (var round = 0; round <= Rounds; round++)
        {
            for (var kind = 0; kind < kinds.Length; kind++)
            {
                // The first round warms up.
                var measured = kinds[kind].Measure();
                if (round > 0) found[kind].Add(measured);
            }
        }

        for (var kind = 0; kind < kinds.Length; kind++)
        {
            Figures.Print(kinds[kind].What + ", a second", [.. found[kind].Select(static one => one.PerSecond)]);
            Figures.Print("  a second of processor time", [.. found[kind].Select(static one => one.PerProcessorSecond)]);
        }
    }

    private static double FailingPct(int circles)
    {
        var check = new CatalogueCheck(CarsWith(circles));
        var found = new PairVerdict[Cars];
        int failed = 0, pairs = 0;
        foreach (var candidate in CandidatesWith(circles))
        {
            check.Evaluate(candidate, found);
            failed += found.Count(static pair => pair.Verdict == CheckStatus.Fail && (pair.DecidedBy.Bits & CatalogueCheck.FirstLookChecks.Bits) != 0);
            pairs += Cars;
        }

        return 100.0 * failed / pairs;
    }

    private static Measured Single()
    {
        var car = BenchmarkCar.Front();
        var candidates = BenchmarkCar.Candidates();
        var sheet = new CheckSheet();
        return Measure([() =>
        {
            foreach (var candidate in candidates) FitmentCheck.Evaluate(car, candidate, sheet);
            return candidates.Length;
        }]);
    }

    private static Measured Pairs(int threads, int circles)
    {
        var candidates = CandidatesWith(circles);
        return Measure([.. Enumerable.Range(0, threads).Select(_ =>
        {
            var check = new CatalogueCheck(CarsWith(circles));
            var found = new PairVerdict[Cars];
            check.Evaluate(candidates[0], found);
            return (Func<int>)(() =>
            {
                foreach (var candidate in candidates) check.Evaluate(candidate, found);
                return candidates.Length * Cars;
            });
        })]);
    }

    /// <summary>Repeats each work on a thread of its own for the same time.</summary>
    private static Measured Measure(Func<int>[] works)
    {
        long done = 0;
        var processor = Environment.CpuUsage.TotalTime;
        var watch = Stopwatch.StartNew();
        var workers = works.Select(work => new Thread(() =>
        {
            for (long count; watch.Elapsed < Window; Interlocked.Add(ref done, count)) count = work();
        })).ToArray();
        Array.ForEach(workers, static worker => worker.Start());
        Array.ForEach(workers, static worker => worker.Join());
        return new(done / watch.Elapsed.TotalSeconds, done / (Environment.CpuUsage.TotalTime - processor).TotalSeconds);
    }

    private static FitmentCar[] CarsWith(int circles) => [.. Enumerable.Range(0, Cars).Select(i => BenchmarkCar.Car(Circle(i % circles)))];

    /// <summary>Candidates whose tyre suits their rim, so that nothing but the bolt circle fails on the first look.</summary>
    private static CarCandidate[] CandidatesWith(int circles) =>
        [.. BenchmarkCar.Candidates().Where(static candidate => RimChecks.Width(candidate).Status != CheckStatus.Fail)
            .Select((candidate, i) => new CarCandidate(candidate with { Wheel = candidate.Wheel with { BoltCircle = Circle(i % circles) } }))];

    private static BoltCircle Circle(int number) => new(5, 108 + number);

    /// <summary>A rate by the clock and by the time the processor worked, which does not depend on who else wants it.</summary>
    private readonly record struct Measured(double PerSecond, double PerProcessorSecond);
}
