using System.Reflection;
using System.Security.Cryptography;
using System.Text;

namespace SetupService.Mutants;

/// <summary>Draws the mutants and asks the unchanged code which tests come by each.</summary>
internal static class Plan
{
    /// <summary>A test that takes longer than this is not asked: the calibrations over simulated cars, and the like.</summary>
    private const double SlowSeconds = 5;

    /// <summary>A sample of each room. Where code changes, a mutant elsewhere stays in the sample or out of it: each is drawn by its own text and the seed.</summary>
    public static IReadOnlyList<Mutant> Draw(DomainCode code, IEnumerable<string> rooms, int count, int seed) =>
        [.. rooms.SelectMany(room => code.Mutants(room).OrderBy(mutant => Lot(mutant, seed), StringComparer.Ordinal).Where(code.Compiles).Take(count))];

    private static string Lot(Mutant mutant, int seed) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes($"{seed} {mutant.Key}")));

    public static IReadOnlyList<Trial> Make(DomainCode code, IReadOnlyList<Mutant> mutants, IReadOnlySet<int> held, Action<string> tell)
    {
        var probes = new Probes(code, mutants);
        var assembly = probes.Assembly();
        var seen = new Dictionary<TimedTest, bool[]>();
        foreach (var name in new TestHost(assembly).Classes)
        {
            foreach (var (test, places) in Watch(new TestHost(assembly), name, probes.Count, tell))
                seen[test] = places;
        }

        var tests = seen.Keys.OrderBy(test => test.Seconds).ToArray();
        return [.. mutants.Select((mutant, at) => new Trial(mutant, held.Contains(at), [.. tests.Where(test => probes.Of[at].Count == 0 || probes.Of[at].Any(place => seen[test][place]))]))];
    }

    /// <summary>The tests of a class that pass, each with its places; a place seen at the start of a type or between tests is every test's.</summary>
    private static IEnumerable<(TimedTest, bool[])> Watch(TestHost host, string name, int count, Action<string> tell)
    {
        var cases = host.Find(name);
        var probe = host.Domain.GetType("SetupService.Mutants.Probe")!;
        var atStart = Places(probe, "SeenAtStart", count);
        var now = Places(probe, "Seen", count);
        var of = new Dictionary<string, (bool[] Places, double Seconds)>();
        var between = new bool[count];
        var begunAt = TimeSpan.Zero;
        var watcher = new Watcher(
            _ =>
            {
                Or(between, now);
                Array.Clear(now);
                begunAt = Environment.CpuUsage.TotalTime;
            },
            method =>
            {
                of[method] = ([.. now], (Environment.CpuUsage.TotalTime - begunAt).TotalSeconds);
                Array.Clear(now);
            });
        host.Run(cases, watcher);
        Or(between, now);
        Or(between, atStart);
        foreach (var method in watcher.Failed)
            tell($"not asked, fails here over unchanged code: {name}.{method}");
        foreach (var (method, (places, seconds)) in of)
        {
            Or(places, between);
            if (seconds > SlowSeconds)
                tell($"not asked, takes {seconds:0} s: {name}.{method}");
            else if (!watcher.Failed.Contains(method) && !watcher.Failed.Contains(""))
                yield return (new TimedTest(name, method, seconds), places);
        }
    }

    private static bool[] Places(Type probe, string field, int count)
    {
        var places = new bool[count];
        probe.GetField(field, BindingFlags.Public | BindingFlags.Static)!.SetValue(null, places);
        return places;
    }

    private static void Or(bool[] into, bool[] from)
    {
        for (var place = 0; place < into.Length; place++)
            into[place] |= from[place];
    }
}
