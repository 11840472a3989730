using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Adjustments, a change or a target, never both, and with each only what goes with it.</summary>
public sealed class ChangeOrTargetTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Room = """{ "adjuster": "strutTopInboard", "rangeMm": { "from": -10, "to": 10 } }""";

    public static TheoryData<string, string, string[]> Adjustment() => new()
    {
        { "neither", Bare().ToJsonString(), ["/adjustments required"] },
        { "neither, with adjusters", Bare().With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/adjustments required", "/adjusters inconsistent"] },
        { "both", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, Room).With("/adjustments", Json($"[{GeometryRequests.Lowered}]")).ToJsonString(), ["/target inconsistent"] },
        { "a target alone", Bare().With("/target", Json("""{ "camberDeg": -2 }""")).ToJsonString(), ["/adjusters required"] },
        { "an empty target", GeometryRequests.AdjustedFor(GeometryRequests.Strut, null, null, Room).ToJsonString(), ["/target required"] },
        { "adjusters of given adjustments", GeometryRequests.Adjusted(GeometryRequests.Strut, GeometryRequests.Lowered).With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/adjusters inconsistent"] },
        { "an arch for given adjustments", GeometryRequests.Adjusted(GeometryRequests.Strut, GeometryRequests.Lowered).With("/archGapMm", 5).ToJsonString(), ["/archGapMm inconsistent"] },
        { "limits upside down", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": 1, "to": -1 } }""").ToJsonString(), ["/adjusters/0/rangeMm inconsistent"] },
        { "limits of a shim upside down", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "hubShimCamber", "rangeDeg": { "from": 1, "to": 0 } }""").ToJsonString(), ["/adjusters/0/rangeDeg inconsistent"] },
        { "a target and a change", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, Room).With("/change", Json("""{ "camberDeg": -1 }""")).ToJsonString(), ["/change inconsistent"] },
        { "a change and adjustments", GeometryRequests.Move(5).With("/change", Json("""{ "camberDeg": -1 }""")).With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/change inconsistent"] },
        { "a change alone", Bare().With("/change", Json("""{ "camberDeg": -1 }""")).ToJsonString(), ["/adjusters required"] },
        { "an empty change", Bare().With("/change", Json("{}")).With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/change required"] },
        { "a toe that is reset", Bare().With("/target", Json("""{ "toeDeg": 0.1 }""")).With("/adjusters", Json($"[{Room}]")).With("/resetToe", true).ToJsonString(), ["/target/toeDeg inconsistent"] },
    };

    [Theory]
    [MemberData(nameof(Adjustment))]
    public async Task An_adjustment_is_given_or_looked_for(string what, string body, string[] faults)
    {
        Assert.NotEmpty(what);
        Assert.Equal(faults, (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body)).FaultsOf());
    }

    [Fact]
    public async Task Ranges_upside_down_are_quoted()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": 5, "to": -5.5 } }""");
        var fault = (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body.ToJsonString())).OnlyFault();

        Assert.Equal("from, 5 mm, is above to, -5.5 mm.", fault.Message());
    }

    [Fact]
    public async Task A_range_of_one_place_is_a_range()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": 4, "to": 4 } }""");

        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);

        Assert.Equal(4, answer.AmountOf("strutTopInboard"));
        Assert.False(answer.GetProperty("isReached").GetBoolean());
        Assert.Contains("strutTopInboard is at its limit of 4.0 mm", answer.GetProperty("blockedBy")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    // A change of the present angles is the target they lead to.
    [Fact]
    public async Task A_change_is_a_target_from_the_present_angles()
    {
        var target = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.TopMountFor(-1.75, 4));
        var before = target.Number("before", "casterDeg");
        var change = GeometryRequests.TopMountFor(-1.75, 4).Without("/target").With("/change", new JsonObject { ["camberDeg"] = -1, ["casterDeg"] = 4 - before });
        var changed = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, change);

        foreach (var adjuster in new[] { "strutTopInboard", "strutTopRearward" })
            GeometryCalls.Near(target.AmountOf(adjuster), changed.AmountOf(adjuster), 1e-5, adjuster);
    }

    // A tie rod 1 mm longer changes toe by 0.4085126° (Domain.Tests/TestData/kinematics_cases.json, two independent methods).
    [Fact]
    public async Task A_toe_wanted_is_set_by_the_tie_rod()
    {
        var body = Bare().With("/change", Json("""{ "toeDeg": 0.4085126 }""")).With("/adjusters", Json("""[{ "adjuster": "tieRodLength" }]"""));

        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);

        Assert.True(answer.GetProperty("isReached").GetBoolean());
        GeometryCalls.Near(1, answer.AmountOf("tieRodLength"), 1e-5, "tie rod");
    }

    private static JsonObject Bare() => Corners.Of(GeometryRequests.Strut);

    private static JsonNode Json(string text) => JsonNode.Parse(text)!;
}
