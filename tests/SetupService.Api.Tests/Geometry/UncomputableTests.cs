using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>What is well-formed and has no answer: each with the reason, and the figures that help.</summary>
public sealed class UncomputableTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // All five outer joints on one line: the wheel turns about it whatever the links hold.
    [Theory]
    [InlineData(GeometryCalls.Sweep)]
    [InlineData(GeometryCalls.Adjustment)]
    public async Task Five_links_that_all_meet_one_axis_hold_no_wheel(string path)
    {
        var body = path == GeometryCalls.Sweep ? GeometryRequests.Sweep(GeometryRequests.FiveLink) : GeometryRequests.Adjusted(GeometryRequests.FiveLink, GeometryRequests.Lowered);
        for (var link = 0; link < 5; link++)
            body.With($"/vehicle/front/suspension/points/links/{link}/upright", Corners.Point(0, 650, 200 + (50 * link)));

        CheckHoldsNothing(await fixture.Client.NotComputableOf(path, body.ToJsonString()));
    }

    // The rod has a lever, but points straight at the steering axis.
    [Fact]
    public async Task A_tie_rod_that_points_at_the_steering_axis_holds_no_wheel()
    {
        CheckHoldsNothing(await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, Pointing(GeometryRequests.Move(5)).ToJsonString()));
    }

    [Fact]
    public async Task A_sweep_of_which_no_position_is_reached_gives_the_travel_that_is()
    {
        var fault = (await fixture.Client.NotComputableOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, 300, 400, 50).ToJsonString())).OnlyFault();

        Assert.Equal("/travelMm", Pointer(fault));
        var (fromMm, toMm) = (fault.Number("limits", "minimum"), fault.Number("limits", "maximum"));
        Assert.Equal("mm", fault.GetProperty("limits").GetProperty("unit").GetString());
        Assert.InRange(fault.Number("residualMm"), 1, 500);
        Assert.Contains($"{fault.Number("residualMm"):F1} mm too", fault.Message(), StringComparison.Ordinal);

        // The limits are the corner's: just inside them there are rows, just outside there are none.
        var inside = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, fromMm, toMm, toMm - fromMm));
        Assert.Equal(2, inside.GetProperty("rows").GetArrayLength());
        await fixture.Client.NotComputableOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, toMm + 0.1, toMm + 0.1, 1).ToJsonString());
        await fixture.Client.NotComputableOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Wishbone, fromMm - 0.1, fromMm - 0.1, 1).ToJsonString());
    }

    [Theory]
    [InlineData(GeometryRequests.Wishbone, """{ "adjuster": "tieRodLength", "amountMm": -100 }""")]
    [InlineData(GeometryRequests.Strut, """{ "adjuster": "tieRodLength", "amountMm": -100 }""")]
    [InlineData(GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 1, "amountMm": 100 }""", """{ "adjuster": "linkLength", "link": 2, "amountMm": -100 }""")]
    public async Task Adjusted_parts_that_do_not_meet_say_by_how_much(string kind, params string[] adjustments)
    {
        var problem = await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(kind, adjustments).ToJsonString());

        var fault = problem.OnlyFault();
        Assert.Equal("", Pointer(fault));
        Assert.InRange(fault.Number("residualMm"), 0.1, 200);
        Assert.Contains($"{fault.Number("residualMm"):F1} mm too", fault.Message(), StringComparison.Ordinal);
        Assert.Contains($"{fault.Number("residualMm"):F1} mm too", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    // The rod's line passes the steering axis by a hundredth of a millimetre or so: it all but fails to hold the wheel.
    [Fact]
    public async Task Parts_that_meet_only_at_a_dead_point_are_not_told_to_lack_nothing()
    {
        var body = Pointing(GeometryRequests.Adjusted(GeometryRequests.Strut, """{ "adjuster": "tieRodLength", "amountMm": 0.01 }"""), innerXMm: 0.05);

        var fault = (await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, body.ToJsonString())).OnlyFault();

        Assert.Contains("dead point", fault.Message(), StringComparison.Ordinal);
        Assert.DoesNotContain(" 0.0 mm", fault.Message(), StringComparison.Ordinal);
        Assert.InRange(fault.Number("residualMm"), 0, 1e-6);
    }

    [Theory]
    [InlineData(GeometryRequests.Arm, null)]
    [InlineData(GeometryRequests.Arm, -2.0)]
    [InlineData(GeometryRequests.Beam, null)]
    [InlineData(GeometryRequests.Beam, -2.0)]
    public async Task A_caster_wanted_of_an_arm_cannot_be_had(string kind, double? camberDeg)
    {
        var body = GeometryRequests.AdjustedFor(kind, camberDeg, 5, """{ "adjuster": "hubShimCamber" }""", """{ "adjuster": "rideHeight" }""");

        var fault = (await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, body.ToJsonString())).OnlyFault();

        Assert.Equal("/target/casterDeg", Pointer(fault));
    }

    [Fact]
    public async Task A_target_that_no_adjuster_moves_cannot_be_had()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Strut, null, 5, """{ "adjuster": "hubShimCamber" }""");

        Assert.Equal("/target", Pointer((await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, body.ToJsonString())).OnlyFault()));
    }

    [Fact]
    public async Task Limits_that_begin_where_nothing_meets_cannot_be_kept()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Wishbone, -1, null, """{ "adjuster": "tieRodLength", "rangeMm": { "from": -100, "to": -99 } }""");

        Assert.Contains("limits", (await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, body.ToJsonString())).OnlyFault().Message(), StringComparison.Ordinal);
    }

    /// <summary>The strut with an upright steering axis and a tie rod that points at it.</summary>
    private static JsonObject Pointing(JsonObject body, double innerXMm = 0) => body
        .With("/vehicle/front/suspension/points/lowerBallJoint", Corners.Point(0, 700, 175)).With("/vehicle/front/suspension/points/strutTop", Corners.Point(0, 700, 840))
        .With("/vehicle/front/suspension/points/strutLower", Corners.Point(0, 700, 400))
        .With("/vehicle/front/suspension/points/tieRodInner", Corners.Point(innerXMm, 300, 225)).With("/vehicle/front/suspension/points/tieRodOuter", Corners.Point(0, 690, 225));

    private static void CheckHoldsNothing(JsonElement problem)
    {
        var fault = problem.OnlyFault();
        Assert.Equal(("/vehicle/front/suspension/points", "unreachable"), (Pointer(fault), fault.GetProperty("code").GetString()));
        Assert.Contains("free movement", fault.Message(), StringComparison.Ordinal);
    }

    private static string? Pointer(JsonElement fault) => fault.GetProperty("pointer").GetString();
}
