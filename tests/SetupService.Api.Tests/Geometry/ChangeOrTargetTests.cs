using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Both calls on adjusting: a change or a target, never both, and with each only what goes with it.</summary>
public sealed class ChangeOrTargetTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Room = """{ "adjuster": "strutTopInboard", "minimumMm": -10, "maximumMm": 10 }""";

    public static TheoryData<string, string, string[]> TopMount() => new()
    {
        { "neither", Bare().ToJsonString(), ["/moveMm required"] },
        { "neither, with limits", Bare().With("/limitsMm", Json("{}")).ToJsonString(), ["/moveMm required", "/limitsMm inconsistent"] },
        { "both", GeometryRequests.Move(5).With("/target", Json("""{ "camberDeg": -2 }""")).ToJsonString(), ["/target inconsistent"] },
        { "an empty target", GeometryRequests.TopMountFor().ToJsonString(), ["/target required"] },
        { "a target of nulls", GeometryRequests.TopMountFor().With("/target", Json("""{ "camberDeg": null, "casterDeg": null }""")).ToJsonString(), ["/target required"] },
        { "limits of a given move", GeometryRequests.Move(5).With("/limitsMm", Json("""{ "archGap": 5 }""")).ToJsonString(), ["/limitsMm inconsistent"] },
        { "limits upside down", Limited("inboard", 5, -5), ["/limitsMm/inboard inconsistent"] },
        { "limits upside down the other way", Limited("rearward", 0.1, 0), ["/limitsMm/rearward inconsistent"] },
        { "no such adjusters here", GeometryRequests.TopMountFor(-2).With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/adjusters unknownMember"] },
    };

    public static TheoryData<string, string, string[]> Adjustment() => new()
    {
        { "neither", Bare().ToJsonString(), ["/adjustments required"] },
        { "neither, with adjusters", Bare().With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/adjustments required", "/adjusters inconsistent"] },
        { "both", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, Room).With("/adjustments", Json($"[{GeometryRequests.Lowered}]")).ToJsonString(), ["/target inconsistent"] },
        { "a target alone", Bare().With("/target", Json("""{ "camberDeg": -2 }""")).ToJsonString(), ["/adjusters required"] },
        { "an empty target", GeometryRequests.AdjustedFor(GeometryRequests.Strut, null, null, Room).ToJsonString(), ["/target required"] },
        { "adjusters of given adjustments", GeometryRequests.Adjusted(GeometryRequests.Strut, GeometryRequests.Lowered).With("/adjusters", Json($"[{Room}]")).ToJsonString(), ["/adjusters inconsistent"] },
        { "an arch for given adjustments", GeometryRequests.Adjusted(GeometryRequests.Strut, GeometryRequests.Lowered).With("/archGapMm", 5).ToJsonString(), ["/archGapMm inconsistent"] },
        { "limits upside down", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "strutTopInboard", "minimumMm": 1, "maximumMm": -1 }""").ToJsonString(), ["/adjusters/0 inconsistent"] },
        { "limits of a shim upside down", GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "hubShimCamber", "minimumDeg": 1, "maximumDeg": 0 }""").ToJsonString(), ["/adjusters/0 inconsistent"] },
    };

    [Theory]
    [MemberData(nameof(TopMount))]
    public async Task A_top_mount_is_moved_or_looked_for(string what, string body, string[] faults)
    {
        Assert.NotEmpty(what);
        Assert.Equal(faults, (await fixture.Client.RefusalOf(GeometryCalls.TopMount, body)).FaultsOf());
    }

    [Theory]
    [MemberData(nameof(Adjustment))]
    public async Task An_adjustment_is_given_or_looked_for(string what, string body, string[] faults)
    {
        Assert.NotEmpty(what);
        Assert.Equal(faults, (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body)).FaultsOf());
    }

    [Theory]
    [InlineData(GeometryRequests.Wishbone)]
    [InlineData(GeometryRequests.FiveLink)]
    [InlineData(GeometryRequests.Arm)]
    [InlineData(GeometryRequests.Beam)]
    public async Task Only_a_strut_has_a_top_mount_to_move(string kind)
    {
        var body = Corners.Of(kind).With("/moveMm", Json("""{ "inboard": 5, "rearward": 0 }"""));

        Assert.Equal(["/suspension/kind inconsistent"], (await fixture.Client.RefusalOf(GeometryCalls.TopMount, body.ToJsonString())).FaultsOf());
    }

    [Fact]
    public async Task Limits_upside_down_are_quoted()
    {
        var fault = (await fixture.Client.RefusalOf(GeometryCalls.TopMount, Limited("inboard", 5, -5.5))).OnlyFault();

        Assert.Equal("the least amount, 5 mm, is above the greatest, -5.5 mm.", fault.Message());
    }

    [Fact]
    public async Task Limits_that_leave_one_place_are_limits()
    {
        var body = GeometryRequests.TopMountFor(-2).With("/limitsMm", Json("""{ "inboard": { "minimum": 4, "maximum": 4 }, "rearward": { "minimum": 0, "maximum": 0 } }"""));

        var answer = await fixture.Client.AnswerOf(GeometryCalls.TopMount, body);

        Assert.Equal(4, answer.Number("moveMm", "inboard"));
        Assert.False(answer.GetProperty("reached").GetBoolean());
        Assert.Contains("strutTopInboard is at its limit of 4.0 mm", answer.GetProperty("blockedBy")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    private static JsonObject Bare() => Corners.Of(GeometryRequests.Strut);

    private static JsonNode Json(string text) => JsonNode.Parse(text)!;

    private static string Limited(string direction, double minimum, double maximum) => GeometryRequests.TopMountFor(-2)
        .With("/limitsMm", new JsonObject { [direction] = new JsonObject { ["minimum"] = minimum, ["maximum"] = maximum } }).ToJsonString();
}
