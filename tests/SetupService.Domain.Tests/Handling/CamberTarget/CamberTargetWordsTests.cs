using System.Globalization;
using System.Text.RegularExpressions;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>The sentence about a step of an input tells the step that was reckoned with, and which way camber goes.</summary>
public sealed partial class CamberTargetWordsTests
{
    // The units' sizes: NIST, SP 811 (2008), appendix B; from memory.
    private static readonly Dictionary<string, double> InOwnUnit = new()
    {
        ["in"] = 25.4,
        ["lb"] = 0.45359237,
        ["lb/in"] = 0.1751268,
        ["lb ft/deg"] = 1.3558179,
        ["ft"] = 0.3048,
        ["mph"] = 1.609344,
        ["lb of force"] = 4.448222,
        ["%"] = 0.01,
    };

    public static TheoryData<string> Places() =>
        [.. HandlingInputs.All.Select(input => "/vehicle" + input.Place), "/vehicle/rear/suspension", "/corners/0/lateralG", "/corners/0/cornerRadiusM", "/speedKmh"];

    // So much per unit that the step told makes ten degrees.
    [Theory]
    [MemberData(nameof(Places))]
    public void The_step_told_is_the_step_reckoned(string place)
    {
        foreach (var units in (UnitSystem[])[UnitSystem.Metric, UnitSystem.Us])
        {
            var step = Step().Match(CamberTargetWords.Explain(place, 1, units));
            Assert.True(step.Success);
            var unit = step.Groups["unit"].Value.Trim();

            // A tyre's load is a force, an axle's is told as a mass.
            if (unit == "lb" && place.EndsWith("/tyre", StringComparison.Ordinal)) unit = "lb of force";
            var size = double.Parse(step.Groups["size"].Value, CultureInfo.InvariantCulture) * InOwnUnit.GetValueOrDefault(unit, 1);

            Assert.Contains("10.00° less negative", CamberTargetWords.Explain(place, 10 / size, units), StringComparison.Ordinal);
            Assert.Contains("10.00° more negative", CamberTargetWords.Explain(place, -10 / size, units), StringComparison.Ordinal);
            Assert.Contains("0.01° less negative", CamberTargetWords.Explain(place, 0.0051 / size, units), StringComparison.Ordinal);
            Assert.Contains("by less than 0.01°", CamberTargetWords.Explain(place, -0.0049 / size, units), StringComparison.Ordinal);
            if (place.StartsWith("/vehicle/rear", StringComparison.Ordinal) && !place.Contains("/alignment/caster", StringComparison.Ordinal) && !place.Contains("Inclination", StringComparison.Ordinal))
                Assert.Contains("rear", CamberTargetWords.Explain(place, 1, units), StringComparison.Ordinal);
        }
    }

    // Decided on the figures, not on how they are written: 0.1249 and 0.1251 read 0.12° and 0.13° and are one to every gauge.
    [Theory]
    [InlineData(0.1249, 0.1251, "saves 0.12° of static camber.")]
    [InlineData(0.12, 0.18, "saves 0.12° of static camber, 0.18° in the tightest bend.")]
    [InlineData(-0.12, -0.18, "costs 0.12° of static camber, 0.18° in the tightest bend.")]
    [InlineData(0.12, -0.18, "saves 0.12° of static camber.")]
    [InlineData(0.004, 0.18, null)]
    public void Caster_is_told_for_the_tightest_bend_where_it_differs_there(double saved, double inTightest, string? expected)
    {
        var result = CamberTargetSearch.Solve(new(WorkedCar.Make(), [], []), AnyDemand.Of([AnyDemand.Corner(0.7, 60)]), [], default, out _)!;

        var text = CamberTargetWords.Summarize(result with { SavedPerCasterDeg = saved, SavedPerCasterInTightestDeg = inTightest }, 0, CarAxle.Front);

        if (expected is null) Assert.DoesNotContain("caster", text, StringComparison.Ordinal);
        else Assert.EndsWith("Each further degree of caster " + expected, text, StringComparison.Ordinal);
    }

    [GeneratedRegex("^(?<size>[0-9.]+)°?(?<unit>[^m]*?|.*?) more ")]
    private static partial Regex Step();
}
