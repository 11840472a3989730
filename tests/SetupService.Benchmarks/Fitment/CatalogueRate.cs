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
        List<double> single = [], few = [], fewOnTwo = [], all = [], allOnTwo = [];
        for (var round = 0; round <= Rounds; round++)
        {
            var (one, two, three, four, five) = (Single(), Pairs(1, Circles), Pairs(2, Circles), Pairs(1, 1), Pairs(2, 1));

            // The first round warms up.
            if (round == 0) continue;
            single.Add(one);
            few.Add(two);
            fewOnTwo.Add(three);
            all.Add(four);
            allOnTwo.Add(five);
        }

        Figures.Print("single check, one thread, checks/s", single);
        Figures.Print($"pairs/s, {FailingPct(Circles):0.0} % fail on the first look, one thread", few);
        Figures.Print($"pairs/s, {FailingPct(Circles):0.0} % fail on the first look, two threads", fewOnTwo);
        Figures.Print($"pairs/s, {FailingPct(1):0.0} % fail on the first look, one thread", all);
        Figures.Print($"pairs/s, {FailingPct(1):0.0} % fail on the first look, two threads", allOnTwo);
        Figures.Print("pairs with none failing against single checks, one thread", [.. all.Zip(single, static (a, b) => a / b)], "N3");
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

    private static double Single()
    {
        var car = BenchmarkCar.Front();
        var candidates = BenchmarkCar.Candidates();
        var sheet = new CheckSheet();
        return Rate(candidates.Length, () =>
        {
            foreach (var candidate in candidates) FitmentCheck.Evaluate(car, candidate, sheet);
        });
    }

    private static double Pairs(int threads, int circles)
    {
        var rates = new double[threads];
        using Barrier start = new(threads);
        var workers = Enumerable.Range(0, threads).Select(number => new Thread(() =>
        {
            var check = new CatalogueCheck(CarsWith(circles));
            var candidates = CandidatesWith(circles);
            var found = new PairVerdict[Cars];
            check.Evaluate(candidates[0], found);
            start.SignalAndWait();
            rates[number] = Rate(candidates.Length * Cars, () =>
            {
                foreach (var candidate in candidates) check.Evaluate(candidate, found);
            });
        })).ToArray();
        Array.ForEach(workers, static worker => worker.Start());
        Array.ForEach(workers, static worker => worker.Join());
        return rates.Sum();
    }

    private static double Rate(int count, Action work)
    {
        var watch = Stopwatch.StartNew();
        long done = 0;
        for (; watch.Elapsed < Window; done += count) work();
        return done / watch.Elapsed.TotalSeconds;
    }

    private static FitmentCar[] CarsWith(int circles) => [.. Enumerable.Range(0, Cars).Select(i => BenchmarkCar.Car(Circle(i % circles)))];

    /// <summary>Candidates whose tyre suits their rim, so that nothing but the bolt circle fails on the first look.</summary>
    private static CarCandidate[] CandidatesWith(int circles) =>
        [.. BenchmarkCar.Candidates().Where(static candidate => RimChecks.Width(candidate).Status != CheckStatus.Fail)
            .Select((candidate, i) => new CarCandidate(candidate with { Wheel = candidate.Wheel with { BoltCircle = Circle(i % circles) } }))];

    private static BoltCircle Circle(int number) => new(5, 108 + number);
}
