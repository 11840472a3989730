using System.Text.Json;
using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry.Steering;

public sealed class SteerSweepCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Worked from Rodrigues' rotation formula in a separate program, its turn checked by bisection (derived; no published table could
    // be read): caster, inclination, camber before, then camber at steer −30 to 30 by tens.
    public static TheoryData<double, double, double, double[]> Printed() => new()
    {
        { 4, 12, 0, [-0.3714, -0.6351, -0.5102, 0, 0.8821, 2.1121, 3.6547] },
        { 6, 13, -1.5, [-2.7278, -2.7506, -2.3381, -1.5, -0.2576, 1.3561, 3.2946] },
        { 3, 12, 0.5, [0.6305, 0.2071, 0.1632, 0.5, 1.2086, 2.2698, 3.6534] },
        { 10, 8, -3, [-6.9116, -5.9310, -4.6153, -3, -1.1319, 0.9319, 3.1250] },
    };

    [Theory]
    [MemberData(nameof(Printed))]
    public async Task The_printed_table_is_reproduced_on_either_side(double casterDeg, double inclinationDeg, double camberDeg, double[] expected)
    {
        var body = SteeringRequests.Sweep().With("/casterDeg", casterDeg).With("/steeringAxisInclinationDeg", inclinationDeg)
            .With("/camberDeg", camberDeg).With("/toeDeg", 0).With("/steerDeg/step", 10);

        var left = Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body), "camberDeg");
        var right = Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body.With("/side", "right")), "camberDeg");

        for (var i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], left[i], 5.1e-5);
            Assert.Equal(expected[i], right[^(i + 1)], 5.1e-5);
        }
    }

    // Derived beside it (radius 305, offset 60, no trail, camber −1.5, caster 6, inclination 13), printed to 0.001 mm.
    [Fact]
    public async Task The_printed_heights_of_the_contact_are_reproduced()
    {
        var body = SteeringRequests.Sweep().With("/casterDeg", 6).With("/steeringAxisInclinationDeg", 13).With("/camberDeg", -1.5).With("/toeDeg", 0)
            .With("/steerDeg/step", 10).With("/loadedRadiusMm", 305).With("/spindleOffsetMm", 60).With("/wheelCentreTrailMm", 0);

        var heights = Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body), "contactHeightChangeMm");

        double[] expected = [1.540, 1.562, 1.028, 0, -1.401, -3.005, -4.607];
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], heights[i], 6e-4);
    }

    [Fact]
    public async Task A_right_wheel_is_the_left_one_in_the_mirror() =>
        await Gen.Select(Gen.Double[-5, 20], Gen.Double[-10, 30], Gen.Double[-15, 15], Gen.Double[-5, 5]).SampleAsync(
            async (casterDeg, inclinationDeg, camberDeg, toeDeg) =>
            {
                var body = SteeringRequests.Sweep().With("/casterDeg", casterDeg).With("/steeringAxisInclinationDeg", inclinationDeg)
                    .With("/camberDeg", camberDeg).With("/toeDeg", toeDeg);
                var left = await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body);
                var right = await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body.With("/side", "right"));

                foreach (var same in new[] { "camberDeg", "camberChangeDeg", "camberApproximationDeg", "scrubRadiusMm", "mechanicalTrailMm", "contactHeightChangeMm" })
                    Assert.Equal(Figures(left, same), Figures(right, same).Reverse());
                foreach (var opposite in new[] { "steerDeg", "rotationDeg" })
                    Assert.Equal(Figures(left, opposite), Figures(right, opposite).Reverse().Select(value => 0 - value));
            },
            iter: 30);

    [Fact]
    public async Task A_sweep_of_the_axis_call_begins_at_its_scrub_radius_and_trail()
    {
        var axis = await fixture.Client.AnswerOf(SteeringRequests.AxisPath, SteeringRequests.Axis());
        var body = SteeringRequests.Sweep().With("/steerDeg/from", -0.08).With("/steerDeg/to", -0.08);
        foreach (var name in new[] { "casterDeg", "steeringAxisInclinationDeg", "spindleOffsetMm", "wheelCentreTrailMm" })
            body.With("/" + name, axis.GetProperty(name).GetDouble());

        var row = Assert.Single((await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body)).GetProperty("rows").EnumerateArray());

        Assert.Equal(axis.GetProperty("scrubRadiusMm").GetDouble(), row.GetProperty("scrubRadiusMm").GetDouble(), 1e-6);
        Assert.Equal(axis.GetProperty("mechanicalTrailMm").GetDouble(), row.GetProperty("mechanicalTrailMm").GetDouble(), 1e-6);
        Assert.Equal(0, row.GetProperty("camberChangeDeg").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task Rows_stand_at_from_and_whole_steps_up_to_the_end()
    {
        var up = Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, SteeringRequests.Sweep().With("/steerDeg/step", 0.1)), "steerDeg");
        var down = Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, SteeringRequests.Sweep().With("/steerDeg/from", 30).With("/steerDeg/to", -29).With("/steerDeg/step", -7)), "steerDeg");

        Assert.Equal(Enumerable.Range(0, 601).Select(i => Math.Round(-30 + (i * 0.1), 6)), up);
        Assert.Equal([30, 23, 16, 9, 2, -5, -12, -19, -26], down);
    }

    [Theory]
    [InlineData(-30, 30, 0, "/steerDeg/step inconsistent")]
    [InlineData(-30, 30, -1, "/steerDeg/step inconsistent")]
    [InlineData(30, -30, 1, "/steerDeg/step inconsistent")]
    [InlineData(5, 5, 0, "/steerDeg/step inconsistent")]
    [InlineData(0, 50, 0.00999, "/steerDeg/step tooMany")]
    [InlineData(-60, 60, 1e-300, "/steerDeg/step tooMany")]
    public async Task A_step_that_leads_nowhere_or_makes_too_many_rows_is_refused(double from, double to, double step, string fault)
    {
        var body = SteeringRequests.Sweep().With("/steerDeg/from", from).With("/steerDeg/to", to).With("/steerDeg/step", step);

        Assert.Equal([fault], (await fixture.Client.RefusalOf(SteeringRequests.SweepPath, body.ToJsonString())).FaultsOf());
    }

    [Fact]
    public async Task Five_thousand_rows_are_computed_and_one_more_is_refused_with_the_limit()
    {
        var body = SteeringRequests.Sweep().With("/steerDeg/from", 0).With("/steerDeg/to", 49.99).With("/steerDeg/step", 0.01);
        Assert.Equal(5000, Figures(await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body), "camberDeg").Length);

        var problem = await fixture.Client.RefusalOf(SteeringRequests.SweepPath, body.With("/steerDeg/to", 50).ToJsonString());
        Assert.Equal(5000, problem.GetProperty("errors")[0].GetProperty("limits").GetProperty("maximum").GetDouble());
    }

    [Theory]
    [InlineData("left", 60)]
    [InlineData("right", -60)]
    public async Task Headings_out_of_reach_are_listed_with_the_reason(string side, double missedDeg)
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.SweepPath, Leaning().With("/side", side));

        Assert.Equal(4, answer.GetProperty("rows").GetArrayLength());
        var missed = Assert.Single(answer.GetProperty("unreachable").EnumerateArray());
        Assert.Equal(missedDeg, missed.GetProperty("steerDeg").GetDouble());
        Assert.Contains(side == "left" ? "41.99°" : "\u221241.99°", missed.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sweep_without_a_reachable_heading_is_not_computable()
    {
        var body = Leaning().With("/steerDeg/from", 45).With("/steerDeg/step", 5).ToJsonString();
        foreach (var path in new[] { SteeringRequests.SweepPath, SteeringRequests.SweepPath + "/chart" })
        {
            using var response = await fixture.Client.PostAsync(path, body);
            var problem = await Problems.Read(response, ProblemTypes.NotComputable);

            Assert.Equal(["/steerDeg unreachable"], problem.FaultsOf());
            Assert.Equal(42, problem.GetProperty("errors")[0].GetProperty("limits").GetProperty("maximum").GetDouble(), 0.01);
            Assert.Contains("45.00°", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("loadedRadiusMm")]
    [InlineData("spindleOffsetMm")]
    [InlineData("wheelCentreTrailMm")]
    public async Task What_needs_the_wheels_place_on_its_axis_is_unknown_without_it(string member)
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.SweepPath, SteeringRequests.Sweep().Without("/" + member));

        string[] outputs = ["scrubRadiusMm", "mechanicalTrailMm", "contactHeightChangeMm"];
        Assert.Equal(outputs.Select(output => $"{output}: needs {member}"), Unknown(answer));
        Assert.All(answer.GetProperty("rows").EnumerateArray(), row => Assert.All(outputs, output => Assert.Equal(JsonValueKind.Null, row.GetProperty(output).ValueKind)));
    }

    [Fact]
    public async Task What_was_not_given_is_named_and_an_unsaid_side_is_an_assumption()
    {
        var body = SteeringRequests.Sweep().Without("/loadedRadiusMm").Without("/spindleOffsetMm").Without("/wheelCentreTrailMm").Without("/side");
        var answer = await fixture.Client.AnswerOf(SteeringRequests.SweepPath, body);

        Assert.Contains("scrubRadiusMm: needs loadedRadiusMm, spindleOffsetMm and wheelCentreTrailMm", Unknown(answer));
        Assert.Equal(["/side"], answer.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString()));
    }

    private static System.Text.Json.Nodes.JsonObject Leaning() => SteeringRequests.Sweep()
        .With("/casterDeg", 20).With("/steeringAxisInclinationDeg", 40).With("/camberDeg", 15)
        .With("/steerDeg/from", -60).With("/steerDeg/to", 60).With("/steerDeg/step", 30);

    private static double[] Figures(JsonElement answer, string name) =>
        [.. answer.GetProperty("rows").EnumerateArray().Select(row => row.GetProperty(name).GetDouble())];

    private static string[] Unknown(JsonElement answer) =>
        [.. answer.GetProperty("unknown").EnumerateArray().Select(one => $"{one.GetProperty("id").GetString()}: {one.GetProperty("reason").GetString()}")];
}
