using System.Globalization;
using SetupService.Domain.Tests.Wear.Simulation;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>How often causes told with some probability are there, over simulated cars.</summary>
internal sealed class Reliability
{
    private const int Bins = 10;

    private readonly Dictionary<(WearCause Cause, CarAxle Axle), Bin[]> _bins = [];

    /// <summary>Diagnoses cars, each axle looked at and each cause counted.</summary>
    public static Reliability Of(IReadOnlyList<SimulatedCar> cars)
    {
        var reliability = new Reliability();
        foreach (var car in cars) reliability.Count(car);
        return reliability;
    }

    /// <summary>The bins of all causes together, of those a filter takes.</summary>
    public IReadOnlyList<Bin> All(Func<WearCause, CarAxle, bool>? takes = null)
    {
        var all = new Bin[Bins];
        foreach (var (key, bins) in _bins)
        {
            if (takes is not null && !takes(key.Cause, key.Axle)) continue;
            for (var i = 0; i < Bins; i++) all[i] = all[i].Plus(bins[i]);
        }

        return all;
    }

    /// <summary>A table a person reads: for each cause and bin how many, the mean told and the share found.</summary>
    public string Table()
    {
        var lines = new List<string> { "all: " + Row(All()) };
        foreach (var key in _bins.Keys.OrderBy(key => key)) lines.Add(string.Create(CultureInfo.InvariantCulture, $"{key.Cause} {key.Axle}: {Row(_bins[key])}"));
        return string.Join('\n', lines);
    }

    private static string Row(IEnumerable<Bin> bins) => string.Join("  ", bins.Where(bin => bin.Count >= 30)
        .Select(bin => string.Create(CultureInfo.InvariantCulture, $"{100 * bin.Told:0}->{100 * bin.Found:0} ({bin.Count})")));

    private void Count(SimulatedCar car)
    {
        var diagnosis = WearDiagnosis.Of(car.Case);
        foreach (var axle in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
        {
            for (var cause = WearCause.LowNegativeCamber; cause < WearCause.Normal; cause++)
            {
                if (diagnosis.Probability(cause, axle) is not { } told) continue;
                if (!_bins.TryGetValue((cause, axle), out var bins)) _bins[(cause, axle)] = bins = new Bin[Bins];
                ref var bin = ref bins[Math.Min(Bins - 1, (int)(told * Bins))];
                bin = new(bin.Count + 1, bin.Sum + told, bin.Hits + (car.Faults.Contains((cause, axle)) ? 1 : 0));
            }
        }
    }

    /// <summary>Diagnoses told with about the same probability.</summary>
    /// <param name="Count">How many.</param>
    /// <param name="Sum">Sum of the probabilities told.</param>
    /// <param name="Hits">How many were there.</param>
    internal readonly record struct Bin(int Count, double Sum, int Hits)
    {
        public double Told => Count > 0 ? Sum / Count : 0;

        public double Found => Count > 0 ? (double)Hits / Count : 0;

        public Bin Plus(in Bin other) => new(Count + other.Count, Sum + other.Sum, Hits + other.Hits);
    }
}
