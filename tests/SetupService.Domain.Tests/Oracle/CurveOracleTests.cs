using System.Globalization;
using System.Text.Json;
using SetupService.Domain.Numerics.Smoothing;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// The curve through readings against a second working of the same prior: a Gaussian process by its covariance, in decimals of 60
/// digits. See README.md beside this file.
/// </summary>
public sealed class CurveOracleTests
{
    private const double Agreement = 1e-6;

    private static readonly JsonElement[] Cases = ReadCases();

    public static TheoryData<string> Names => [.. Cases.Select(Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Means_and_standard_deviations_agree(string name)
    {
        var expected = Cases.Single(one => Name(one) == name);
        var prior = expected.GetProperty("prior").GetString() == "toe" ? TravelCurve.ToePrior : TravelCurve.CamberPrior;
        var spline = BayesianSpline.Fit(Numbers(expected, "places"), Numbers(expected, "values"), expected.GetProperty("error").GetDouble(), prior)!;
        var rows = expected.GetProperty("rows").EnumerateArray().ToArray();

        Assert.True(rows.Length >= 19);
        foreach (var row in rows)
        {
            var place = row[0].GetDouble();
            var at = spline.At(place);
            Near("value", row[1], at.Value);
            Near("standard deviation", row[2], at.ValueStandardDeviation);
            Near("slope", row[3], at.Slope);
            Near("slope's standard deviation", row[4], at.SlopeStandardDeviation);
            Assert.Equal(at.Value, spline.ValueAt(place), 1e-14);

            void Near(string what, JsonElement wanted, double actual) => Assert.True(
                Math.Abs(wanted.GetDouble() - actual) <= Agreement,
                string.Create(CultureInfo.InvariantCulture, $"{what} at {place}: {actual:R} instead of {wanted.GetDouble():R}"));
        }
    }

    [Fact]
    public void There_are_cases_of_every_sort() =>
        Assert.Equal((15, 2, 2), (Cases.Length, Cases.Count(one => one.GetProperty("prior").GetString() == "toe"), Cases.Count(one => one.GetProperty("error").GetDouble() == 0)));

    private static string Name(JsonElement one) => one.GetProperty("name").GetString()!;

    private static double[] Numbers(JsonElement parent, string member) => [.. parent.GetProperty(member).EnumerateArray().Select(number => number.GetDouble())];

    private static JsonElement[] ReadCases()
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Oracle", "curve_cases.json"));
        using var document = JsonDocument.Parse(file);
        return [.. document.RootElement.EnumerateArray().Select(one => one.Clone())];
    }
}
