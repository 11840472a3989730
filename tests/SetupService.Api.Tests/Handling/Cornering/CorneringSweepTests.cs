using System.Text.Json.Nodes;
using SetupService.Api.Tests.Drawings;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>A sweep is the single call row by row, and tells where it ends.</summary>
public sealed class CorneringSweepTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Every_row_is_what_the_single_call_answers(bool isHeld)
    {
        var body = isHeld ? CorneringCalls.Example() : CorneringCalls.Example().Without("/heldLateralG");
        var sweep = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(body.DeepClone().AsObject(), 0.1, 1.1, 0.25));
        Assert.Equal(5, sweep.GetProperty("rows").GetArrayLength());
        foreach (var row in sweep.GetProperty("rows").EnumerateArray())
        {
            var single = await fixture.Client.AnswerOf(CorneringCalls.Turn, body.With("/lateralG", row.Number("lateralG")));
            foreach (var member in row.EnumerateObject())
                Agrees(JsonNode.Parse(member.Value.GetRawText()), JsonNode.Parse(single.GetProperty(member.Name).GetRawText()), member.Name);
        }
    }

    [Fact]
    public async Task Turns_in_which_the_car_would_roll_over_are_listed_with_the_limit()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Plain().Without("/heldLateralG"), 1, 2, 0.1));
        var missed = answer.GetProperty("unreachable").EnumerateArray().ToArray();

        Assert.Equal(11, missed.Length + answer.GetProperty("rows").GetArrayLength());
        Assert.NotEmpty(missed);
        Assert.All(missed, one => Assert.InRange(one.Number("limitG"), answer.GetProperty("rows").EnumerateArray().Max(row => row.Number("lateralG")), missed[0].Number("lateralG")));
        Assert.Contains("roll over", missed[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Contains("nearRollOver", answer.Codes());
    }

    [Fact]
    public async Task Turns_beyond_the_limit_are_answered_with_more_than_all_grip_and_no_gradient()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Example(), 0.9, 1.3, 0.1));
        var rows = answer.GetProperty("rows").EnumerateArray().ToArray();

        Assert.Equal(5, rows.Length);
        Assert.Contains("beyondLimit", answer.Codes());
        Assert.All(rows, row =>
        {
            var used = Math.Max(row.GetProperty("axles").Number("front", "gripUsedPct"), row.GetProperty("axles").Number("rear", "gripUsedPct"));
            Assert.Equal(row.Number("lateralG") > 1.101, used > 100.001);
            Assert.Equal(used > 90, row.GetProperty("balance").GetProperty("understeerDegPerG").ValueKind == System.Text.Json.JsonValueKind.Null);
        });
    }

    [Fact]
    public async Task A_sweep_downwards_has_the_rows_of_one_upwards()
    {
        var up = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Plain().Without("/heldLateralG"), 0.5, 1.5, 0.25));
        var down = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Plain().Without("/heldLateralG"), 1.5, 0.5, -0.25));
        var rising = up.GetProperty("rows").EnumerateArray().ToArray();
        var falling = down.GetProperty("rows").EnumerateArray().Reverse().ToArray();

        Assert.Equal(rising.Length, falling.Length);
        for (var i = 0; i < rising.Length; i++)
            Assert.Equal(rising[i].Number("rollDeg"), falling[i].Number("rollDeg"), 1e-7);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?units=us")]
    public async Task The_picture_is_harmless_and_names_its_panels(string query)
    {
        using var response = await fixture.Client.PostAsync(
            CorneringCalls.Sweep + "/chart" + query, CorneringCalls.Swept(CorneringCalls.Plain().Without("/heldLateralG"), 0, 2, 0.1).ToJsonString());
        var svg = await Calls.Text(response);

        SvgPicture picture = new(svg);
        Harmlessness.Holds(picture);
        Harmlessness.IsDescribed(picture);
        Harmlessness.IdsAreSingle(picture);
        Assert.All(
            ["roll", "mean steer", "wheel load", "inclination to the road", "wheel travel", "front share", "front right (outer)", query.Length > 0 ? "lbf" : "N"],
            words => Assert.Contains(words, svg, StringComparison.Ordinal));
    }

    private static void Agrees(JsonNode? row, JsonNode? single, string place)
    {
        switch (row)
        {
            case JsonObject group:
                foreach (var (name, member) in group)
                    Agrees(member, single![name], $"{place}/{name}");
                break;
            case JsonValue number when number.GetValueKind() == System.Text.Json.JsonValueKind.Number:
                var (one, other) = (number.GetValue<double>(), single!.GetValue<double>());
                Assert.True(Math.Abs(one - other) <= 1e-6 * (1 + Math.Abs(one)), $"{place}: {one:R}, alone {other:R}");
                break;
            default:
                Assert.Equal(row?.ToJsonString(), single?.ToJsonString());
                break;
        }
    }
}
