using System.Diagnostics;
using System.Globalization;
using SetupService.Benchmarks.Service;

namespace SetupService.Benchmarks.Geometry;

/// <summary>
/// A position of a sweep against a plain C++ solve and against SciPy, turn by turn in one run: the same corners, the same 61
/// positions, warm-started by each in its own way.
/// </summary>
internal static class CornerRatio
{
    private const int Rounds = 9;
    private const int SciPyRounds = 3;
    private const int Sweeps = 4000;
    private const double SameDeg = 1e-8;

    public static int Run(string cpp, string python, string script)
    {
        foreach (var kind in new[] { "doubleWishbone", "macPhersonStrut" })
        {
            SweptCorner corner = new(kind);
            for (var i = 0; i < 3; i++) Time(corner);
            List<double> own = [];
            List<double> plain = [];
            for (var i = 0; i < Rounds; i++)
            {
                own.Add(Time(corner));
                var peer = Peer(cpp, $"1 {Sweeps}");
                Hold(corner, peer, $"cpp.{kind}");
                plain.Add(peer[$"cpp.{kind}.position"]);
            }

            Figures.Print($"{kind}, service, ns a position", own, "N1");
            Figures.Print($"{kind}, plain C++, ns a position", plain, "N1");
            Figures.Print($"{kind}, C++ / service", [.. plain.Zip(own, static (a, b) => a / b)], "N3");
            PrintSciPy(kind, corner, Figures.Median(own), python, script);
        }

        return 0;
    }

    private static void PrintSciPy(string kind, SweptCorner corner, double ownNs, string python, string script)
    {
        var rounds = Enumerable.Range(0, SciPyRounds).Select(_ => Peer(python, $"{script} 1 1")).ToList();
        foreach (var way in new[] { "rootNumericJacobian", "rootAnalyticJacobian", "leastSquaresNumericJacobian", "leastSquaresAnalyticJacobian" })
        {
            foreach (var round in rounds) Hold(corner, round, $"scipy.{kind}.{way}");
            List<double> times = [.. rounds.Select(round => round[$"scipy.{kind}.{way}.position"])];
            Figures.Print($"{kind}, SciPy {way}, µs a position", times, "N1");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  SciPy / service: {Figures.Median(times) * 1000 / ownNs:N0}"));
        }
    }

    private static double Time(SweptCorner corner)
    {
        var kept = 0.0;
        var watch = Stopwatch.StartNew();
        for (var i = 0; i < Sweeps; i++) kept += corner.Angles();
        var ns = watch.Elapsed.TotalNanoseconds / Sweeps / SweptCorner.Positions;
        return double.IsNaN(kept) ? throw new InvalidOperationException("A sweep gave no number.") : ns;
    }

    /// <summary>A peer that solves something else is no peer.</summary>
    private static void Hold(SweptCorner corner, Dictionary<string, double> peer, string name)
    {
        var (droop, bump) = corner.Ends;
        if (Math.Abs(peer[name + ".camberInDroop"] - droop) > SameDeg || Math.Abs(peer[name + ".camberInBump"] - bump) > SameDeg)
            throw new InvalidOperationException($"{name} does not agree with the service.");
    }

    private static Dictionary<string, double> Peer(string program, string arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{program} does not start.");
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(' '))
            .ToDictionary(words => words[0], words => double.Parse(words[1], CultureInfo.InvariantCulture));
    }
}
