using System.Globalization;
using System.Text.Json;
using SetupService.Domain.Numerics.Smoothing;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// Smoothing splines against a general-purpose library's, its smoothing found by bisection on the same sum of residuals. See README.md
/// beside this file.
/// </summary>
public sealed class SmoothingOracleTests
{
    // The bisection ends where the library's rounding hides the sum.
    private const double Share = 1e-7;

    private static readonly JsonElement[] Cases = ReadCases();

    public static TheoryData<string> Names => [.. Cases.Select(Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Values_slopes_and_standard_errors_agree(string name)
    {
        var expected = Cases.Single(one => Name(one) == name);
        var spline = SmoothingSpline.Fit(Numbers(expected, "x"), Numbers(expected, "y"), Numbers(expected, "errors"))!;
        var rows = expected.GetProperty("rows").EnumerateArray().ToArray();

        Assert.Equal(expected.GetProperty("lambda").ValueKind == JsonValueKind.Null, spline.IsStraight);
        Assert.Equal(expected.GetProperty("misfit").GetDouble(), spline.SumOfSquares, 1e-6);
        Assert.True(rows.Length >= 20);
        Assert.All(rows, row =>
        {
            var (place, value, slope, variance) = (row[0].GetDouble(), row[1].GetDouble(), row[2].GetDouble(), row[3].GetDouble());
            Near(value, spline.ValueAt(place));
            Near(slope, spline.SlopeAt(place));
            Near(Math.Sqrt(variance), spline.StandardErrorAt(place));

            void Near(double wanted, double actual) => Assert.True(
                Math.Abs(wanted - actual) <= Share * Math.Max(0.01, Math.Abs(wanted)),
                string.Create(CultureInfo.InvariantCulture, $"{name} at {place}: {actual:R} instead of {wanted:R}"));
        });
    }

    [Fact]
    public void There_are_curved_cases_and_a_straight_one() =>
        Assert.Equal((10, 1), (
            Cases.Count(one => one.GetProperty("lambda").ValueKind == JsonValueKind.Number),
            Cases.Count(one => one.GetProperty("lambda").ValueKind == JsonValueKind.Null)));

    private static string Name(JsonElement one) => one.GetProperty("name").GetString()!;

    private static double[] Numbers(JsonElement parent, string member) => [.. parent.GetProperty(member).EnumerateArray().Select(number => number.GetDouble())];

    private static JsonElement[] ReadCases()
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Oracle", "geometry_cases.json"));
        using var document = JsonDocument.Parse(file);
        return [.. document.RootElement.GetProperty("smoothingSplines").EnumerateArray().Select(one => one.Clone())];
    }
}
