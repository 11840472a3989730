using System.Globalization;

namespace SetupService.Benchmarks.Service;

/// <summary>Prints figures the same way everywhere.</summary>
internal static class Figures
{
    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length % 2 == 1 ? sorted[sorted.Length / 2] : (sorted[(sorted.Length / 2) - 1] + sorted[sorted.Length / 2]) / 2;
    }

    public static void Print(string what, IReadOnlyCollection<double> values, string format = "N0") => Console.WriteLine(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: median {Median(values).ToString(format, CultureInfo.InvariantCulture)} (min {values.Min().ToString(format, CultureInfo.InvariantCulture)}, max {values.Max().ToString(format, CultureInfo.InvariantCulture)}, {values.Count} rounds)"));
}
