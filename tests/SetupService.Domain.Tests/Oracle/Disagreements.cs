using System.Globalization;
using System.Text.Json;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Compares figures and words of the domain with those of the oracle and remembers where they differ.</summary>
internal sealed class Disagreements
{
    private const double Tolerance = 1e-9;

    private readonly List<string> _found = [];

    public int Compared { get; private set; }

    public void Number(int number, string name, JsonElement expected, string member, double? actual)
    {
        var wanted = OracleCar.Number(expected, member);
        Number($"case {number}, {name}", wanted, actual, Tolerance * Math.Max(1, Math.Abs(wanted ?? 0)));
    }

    public void Number(string place, double? wanted, double? actual, double tolerance)
    {
        Compared++;
        if (wanted is null && actual is null) return;
        if (wanted is { } w && actual is { } a && Math.Abs(w - a) <= tolerance) return;
        Add(place, Text(wanted), Text(actual));
    }

    public void Word(int number, string name, string? expected, string? actual)
    {
        Compared++;
        if (!string.Equals(expected, actual, StringComparison.OrdinalIgnoreCase)) Add($"case {number}, {name}", expected, actual);
    }

    public void AssertNone(int atLeastCompared)
    {
        Assert.True(_found.Count == 0, $"{_found.Count} of {Compared} differ:\n{string.Join('\n', _found.Take(60))}");
        Assert.True(Compared >= atLeastCompared, $"Only {Compared} were compared.");
    }

    private static string? Text(double? value) => value?.ToString("R", CultureInfo.InvariantCulture);

    private void Add(string place, string? expected, string? actual) =>
        _found.Add($"{place}: the oracle says {expected ?? "nothing"}, the domain {actual ?? "nothing"}");
}
