using System.Diagnostics;

namespace SetupService.Mutants;

/// <summary>Tries mutants one after the other and writes a line for each as it begins and ends. Where one runs over its time, the process ends with it.</summary>
internal static class Worker
{
    public const string Begins = "begins";
    public const string Killed = "killed";
    public const string Lives = "lives";
    public const string Invalid = "invalid";
    public const string OutOfTime = "time";

    /// <summary>Tests are run in bundles of this much time, the quickest first.</summary>
    private const double BundleSeconds = 1;

    /// <param name="root">The checkout.</param>
    /// <param name="together">The build of <see cref="Switches"/>.</param>
    /// <param name="trials">All mutants of the plan; a mutant's number is its place here.</param>
    /// <param name="from">The first to try.</param>
    /// <param name="end">The first not to try.</param>
    public static int Run(string root, byte[] together, IReadOnlyList<Trial> trials, int from, int end)
    {
        var code = new Lazy<DomainCode>(() => new DomainCode(root));
        using var guard = new Guard();
        for (var at = from; at < end; at++)
        {
            Tell(Begins, at);
            guard.At = at;
            var trial = trials[at];
            var host = trial.Tests.Count == 0 ? null : trial.IsHeld ? Chosen(together, at) : code.Value.Assembly(trial.Mutant) is { } own ? new TestHost(own) : null;
            Tell(trial.Tests.Count == 0 ? Lives : host is null ? Invalid : Try(host, trial.Tests, guard), at);
            guard.Rest();
        }

        return 0;
    }

    private static TestHost Chosen(byte[] together, int number)
    {
        var host = new TestHost(together);
        host.Domain.GetType("SetupService.Mutants.Choice")!.GetField("Chosen")!.SetValue(null, number);
        return host;
    }

    private static string Try(TestHost host, IReadOnlyList<TimedTest> tests, Guard guard)
    {
        var known = new Dictionary<string, ILookup<string, Xunit.Sdk.IXunitTestCase>>();
        foreach (var bundle in Bundles(tests))
        {
            guard.Allow(5 + 5 * bundle.Sum(test => test.Seconds));
            var cases = bundle.SelectMany(test =>
            {
                if (!known.TryGetValue(test.Class, out var found))
                    known[test.Class] = found = host.Find(test.Class).ToLookup(each => each.TestMethod.Method.Name);
                return found[test.Method];
            }).ToArray();
            if (!host.Pass(cases))
                return Killed;
        }

        return Lives;
    }

    private static IEnumerable<List<TimedTest>> Bundles(IEnumerable<TimedTest> tests)
    {
        var bundle = new List<TimedTest>();
        foreach (var test in tests)
        {
            bundle.Add(test);
            if (bundle.Sum(each => each.Seconds) < BundleSeconds && bundle.Count < 60)
                continue;
            yield return bundle;
            bundle = [];
        }

        if (bundle.Count > 0)
            yield return bundle;
    }

    private static void Tell(string what, int at)
    {
        Console.Out.WriteLine($"{what} {at}");
        Console.Out.Flush();
    }

    /// <summary>Ends the process where a mutant uses more processor time than it may: a loop without end cannot be stopped otherwise.</summary>
    private sealed class Guard : IDisposable
    {
        private readonly Timer _timer;
        private long _limitTicks = long.MaxValue;
        private long _wallTicks = long.MaxValue;

        public Guard() => _timer = new Timer(_ => Look(), null, 250, 250);

        public int At { get; set; }

        public void Allow(double seconds)
        {
            Interlocked.Exchange(ref _limitTicks, (Environment.CpuUsage.TotalTime + TimeSpan.FromSeconds(seconds)).Ticks);
            Interlocked.Exchange(ref _wallTicks, Stopwatch.GetTimestamp() + (long)(20 * seconds * Stopwatch.Frequency));
        }

        public void Rest()
        {
            Interlocked.Exchange(ref _limitTicks, long.MaxValue);
            Interlocked.Exchange(ref _wallTicks, long.MaxValue);
        }

        public void Dispose() => _timer.Dispose();

        private void Look()
        {
            if (Environment.CpuUsage.TotalTime.Ticks < Interlocked.Read(ref _limitTicks) && Stopwatch.GetTimestamp() < Interlocked.Read(ref _wallTicks))
                return;
            Tell(OutOfTime, At);
            Environment.Exit(3);
        }
    }
}
