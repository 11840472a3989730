using System.Text.Json;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry.Steering;

public sealed class CasterFromReadingsCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Camber at steer −20, 0 and 20 of invented axes, worked from Rodrigues' rotation formula in a separate program (derived); printed to 1e-7,
    // which inclination multiplies by twenty. The workshop's 1.5 is common practice, no source; what it gives stands beside it there.
    [Theory]
    [InlineData(4, 12, -0.6350743, 0, 2.1120887, 4.1207444, 4.0160836)]
    [InlineData(6, 13, -2.7506465, -1.5, 1.3560571, 6.1600554, 6.003599)]
    public async Task The_axes_of_the_printed_table_are_found_on_either_side(
        double casterDeg, double inclinationDeg, double outerDeg, double aheadDeg, double innerDeg, double workshopDeg, double pairDeg)
    {
        foreach (var (side, sign) in new[] { ("left", 1), ("right", -1) })
        {
            var body = SteeringRequests.Readings().With("/side", side)
                .With("/readings", SteeringRequests.Of([(-20 * sign, outerDeg), (0, aheadDeg), (20 * sign, innerDeg)]));
            var answer = await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, body);

            Assert.Equal(casterDeg, answer.GetProperty("casterDeg").GetDouble(), 1e-6);
            Assert.Equal(inclinationDeg, answer.GetProperty("steeringAxisInclinationDeg").GetDouble(), 5e-6);
            Assert.Equal(aheadDeg, answer.GetProperty("camberAheadDeg").GetDouble(), 1e-7);
            var shortCuts = answer.GetProperty("approximations");
            Assert.Equal(workshopDeg, shortCuts.GetProperty("workshopRuleCasterDeg").GetDouble(), 1e-6);
            Assert.Equal(pairDeg, shortCuts.GetProperty("pairRuleCasterDeg").GetDouble(), 1e-6);
            Assert.Equal(20, shortCuts.GetProperty("pairRuleSteerDeg").GetDouble());
            Assert.All(answer.GetProperty("readings").EnumerateArray(), reading => Assert.Equal(0, reading.GetProperty("residualDeg").GetDouble(), 1e-6));
        }
    }

    // Derived for a nearly upright axis and readings at 0 and ±20°: √2 / (2 sin 20°) and √6 / (2 (1 − cos 20°)) times the gauge's error.
    [Fact]
    public async Task The_gauges_error_is_carried_over_as_derived_and_the_ranges_are_nine_in_ten()
    {
        var body = SteeringRequests.Readings().With("/gaugeErrorDeg", 0.05).With("/readings", SteeringRequests.Of([(-20, 0), (0, 0), (20, 0)]));
        var answer = await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, body);

        var casterErrorDeg = answer.GetProperty("casterStandardErrorDeg").GetDouble();
        Assert.Equal(2.07 * 0.05, casterErrorDeg, 0.005 * 0.05);
        Assert.Equal(20.3 * 0.05, answer.GetProperty("steeringAxisInclinationStandardErrorDeg").GetDouble(), 0.05 * 0.05);
        var range = answer.GetProperty("casterRangeDeg");
        Assert.Equal(90, range.GetProperty("levelPct").GetDouble());
        Assert.Equal(1.6449 * casterErrorDeg, range.GetProperty("upper").GetDouble(), 1e-4);
        Assert.Equal(-1.6449 * casterErrorDeg, range.GetProperty("lower").GetDouble(), 1e-4);
    }

    [Fact]
    public async Task Residuals_are_readings_less_fit_and_make_the_scatter()
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, SteeringRequests.Readings());
        var readings = answer.GetProperty("readings").EnumerateArray().ToArray();

        Assert.Equal([-20, -10, 0, 10, 20], readings.Select(reading => reading.GetProperty("steerDeg").GetDouble()));
        Assert.All(readings, reading => Assert.Equal(
            reading.GetProperty("camberDeg").GetDouble() - reading.GetProperty("fittedCamberDeg").GetDouble(), reading.GetProperty("residualDeg").GetDouble(), 1e-6));
        var sum = readings.Sum(reading => Math.Pow(reading.GetProperty("residualDeg").GetDouble(), 2));
        Assert.Equal(Math.Sqrt(sum / (5 - 3)), answer.GetProperty("residualStandardDeviationDeg").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task Three_readings_leave_no_scatter_and_none_at_20_degrees_no_workshop_rule()
    {
        var answer = await fixture.Client.AnswerOf(
            SteeringRequests.ReadingsPath, SteeringRequests.Readings().With("/readings", SteeringRequests.Of([(-4, -1), (0, -0.7), (4, -0.3)])));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("residualStandardDeviationDeg").ValueKind);
        Assert.All(answer.GetProperty("approximations").EnumerateObject(), one => Assert.Equal(JsonValueKind.Null, one.Value.ValueKind));
        Assert.Equal(
            ["residualStandardDeviationDeg", "workshopRuleCasterDeg", "pairRuleCasterDeg", "pairRuleSteerDeg"],
            answer.GetProperty("unknown").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
    }

    [Fact]
    public async Task What_was_not_said_is_assumed_and_listed()
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, SteeringRequests.Readings().Without("/side").Without("/gaugeErrorDeg"));

        Assert.Equal(["/side", "/gaugeErrorDeg"], answer.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString()));
    }

    [Fact]
    public async Task Readings_of_the_wrong_side_give_a_strange_axis_and_a_caution()
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, SteeringRequests.Readings().With("/side", "right"));

        Assert.True(answer.GetProperty("casterDeg").GetDouble() < -5);
        Assert.Equal("unusualAxis", answer.GetProperty("cautions")[0].GetProperty("code").GetString());
    }

    public static TheoryData<(double, double)[], string> Untold() => new()
    {
        { [(-20, -2), (20, 2), (20.1, 2)], "3 readings at 2 steer angles" },
        { [(5, -2), (5, 2), (5.1, 2)], "3 readings at 1 steer angle " },
        { [(0, -2), (0.4, -2.1), (0.8, -2.05)], "within 0.80°" },
        { [(0, 0), (0.6, 15), (1.2, -15)], "Look at the signs" },
    };

    [Theory]
    [MemberData(nameof(Untold))]
    public async Task Readings_that_cannot_tell_are_not_computable_and_say_what_is_missing((double, double)[] readings, string words)
    {
        var body = SteeringRequests.Readings().With("/readings", SteeringRequests.Of(readings)).ToJsonString();
        using var response = await fixture.Client.PostAsync(SteeringRequests.ReadingsPath, body);
        var problem = await Problems.Read(response, ProblemTypes.NotComputable);

        Assert.Equal(["/readings undetermined"], problem.FaultsOf());
        Assert.Contains(words, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "tooFew")]
    [InlineData(201, "tooMany")]
    public async Task Three_to_two_hundred_readings_are_taken(int count, string code)
    {
        static (double, double)[] Some(int count) => [.. Enumerable.Range(0, count).Select(i => (-20 + (40.0 * i / count), -1 + (0.1 * i / count)))];
        var body = SteeringRequests.Readings();

        Assert.Equal([$"/readings {code}"], (await fixture.Client.RefusalOf(SteeringRequests.ReadingsPath, body.With("/readings", SteeringRequests.Of(Some(count))).ToJsonString())).FaultsOf());
        foreach (var taken in new[] { 3, 200 })
            Assert.Equal(taken, (await fixture.Client.AnswerOf(SteeringRequests.ReadingsPath, body.With("/readings", SteeringRequests.Of(Some(taken))))).GetProperty("readings").GetArrayLength());
    }
}
