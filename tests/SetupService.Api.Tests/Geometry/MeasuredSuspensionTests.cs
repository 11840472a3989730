using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>A corner known by a jack, a ruler and gauges takes the place of one with points, and says what it cannot know.</summary>
public sealed class MeasuredSuspensionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Camber −0.7° − 0.02° a mm and toe 0.1°, read without error; a strut 600 mm high between ball joint and top mount and leaning by
    // 13°, whose mount was moved 10 mm: −(atan(tan 13° + 10/600) − 13°) (a rigid strut turning about its ball joint).
    private const double HeightMm = 600;

    private static readonly double MovedDeg = -0.7 - Lean(10);

    [Fact]
    public async Task A_sweep_gives_the_curve_its_slope_and_its_range()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Corner().With("/travelMm", GeometryRequests.Range(-40, 40, 20)).With("/vehicle/front/trackMm", 1500));

        foreach (var row in answer.GetProperty("rows").EnumerateArray())
        {
            var travelMm = row.Number("travelMm");
            GeometryCalls.Near(-0.7 - (0.02 * travelMm), row.Number("camberDeg"), 1e-9, "camber");
            GeometryCalls.Near(0.1, row.Number("toeDeg"), 1e-9, "toe");
            GeometryCalls.Near(-0.02, row.Number("camberGainDegPerMm"), 1e-9, "gain");
            GeometryCalls.Near(-0.02 * 750 * Math.PI / 180, row.Number("camberGainPerRoll"), 1e-9, "gain per roll");
            Assert.True(row.Number("ranges", "camberDeg", "lower") < row.Number("camberDeg") && row.Number("camberDeg") < row.Number("ranges", "camberDeg", "upper"));
            Assert.Equal(JsonValueKind.Null, row.GetProperty("rollCentreHeightMm").ValueKind);
        }

        var unknown = answer.GetProperty("unknown").EnumerateArray().ToDictionary(one => one.GetProperty("id").GetString()!, one => one.GetProperty("reason").GetString()!);
        Assert.Contains("points", unknown["rollCentreHeightMm"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_curve_goes_on_for_20_mm_and_no_further()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Corner().With("/travelMm", GeometryRequests.Range(40, 65, 5)));

        Assert.Equal(5, answer.GetProperty("rows").GetArrayLength());
        Assert.Equal(65, Assert.Single(answer.GetProperty("unreachable").EnumerateArray()).Number("travelMm"));
        Assert.Equal((-60, 60), (answer.Number("reachableTravelMm", "from"), answer.Number("reachableTravelMm", "to")));
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/vehicle/front/suspension/readings");

        var problem = await fixture.Client.NotComputableOf(GeometryCalls.Sweep, Corner().With("/travelMm", GeometryRequests.Range(70, 80, 5)).ToJsonString());
        Assert.Equal("/travelMm", problem.OnlyFault().GetProperty("pointer").GetString());
    }

    [Fact]
    public async Task What_a_rack_does_is_not_told()
    {
        var answer = await fixture.Client.AnswerOf(
            GeometryCalls.Sweep, Corner().With("/travelMm", GeometryRequests.Range(0, 0, 1)).With("/rackMm", GeometryRequests.Range(-10, 10, 10)));

        Assert.Equal(0, Assert.Single(answer.GetProperty("rows").EnumerateArray()).Number("rackMm"));
        Assert.Equal(2, answer.GetProperty("unreachable").GetArrayLength());
    }

    [Fact]
    public async Task Camber_stated_for_ride_height_is_one_reading_more()
    {
        var travel = GeometryRequests.Range(-40, 40, 20);
        var beside = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Corner().With("/vehicle/front/alignment/camberDeg", -0.9).With("/travelMm", travel));
        var more = Corner();
        more["vehicle"]!["front"]!["suspension"]!["readings"]!.AsArray().Add((JsonNode)new JsonObject { ["travelMm"] = 0, ["camberDeg"] = -0.9 });
        var among = await fixture.Client.AnswerOf(GeometryCalls.Sweep, more.With("/travelMm", travel.DeepClone()));

        for (var i = 0; i < 5; i++) GeometryCalls.Near(among.GetProperty("rows")[i].Number("camberDeg"), beside.GetProperty("rows")[i].Number("camberDeg"), 1e-9, "camber");
        Assert.InRange(beside.GetProperty("rows")[2].Number("camberDeg"), -0.85, -0.72);
    }

    [Fact]
    public async Task Camber_stated_far_from_the_readings_is_not_used_and_both_are_named()
    {
        var answer = await fixture.Client.AnswerOf(
            GeometryCalls.Sweep, Corner().With("/vehicle/front/alignment/camberDeg", -1.5).With("/travelMm", GeometryRequests.Range(20, 20, 1)));

        GeometryCalls.Near(-1.1, answer.GetProperty("rows")[0].Number("camberDeg"), 1e-9, "camber");
        var said = answer.GetProperty("assumptions").EnumerateArray().Single(one => one.GetProperty("input").GetString() == "/vehicle/front/alignment/camberDeg");
        Assert.Equal((-1.5, "not used"), (said.Number("value"), said.GetProperty("text").GetString()));
        Assert.Contains("−0.70°", said.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_gauge_error_the_curve_goes_through_every_reading()
    {
        var body = Corner().With("/vehicle/front/suspension/gaugeErrorDeg", 0).With("/vehicle/front/suspension/readings/1/camberDeg", -0.9).With("/travelMm", GeometryRequests.Range(-40, 40, 40));
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, body);

        Assert.Equal([0.1, -0.9, -1.5], answer.GetProperty("rows").EnumerateArray().Select(row => Math.Round(row.Number("camberDeg"), 9)));
    }

    [Fact]
    public async Task A_top_mount_moves_camber_and_caster_by_the_height_that_acts()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, Corner().With("/adjustments", GeometryRequests.Moved(8, 5)));

        GeometryCalls.Near(-Lean(8), answer.Number("change", "camberDeg"), 1e-6, "camber");
        GeometryCalls.Near(Degrees(Math.Atan(Math.Tan(Radians(6)) + (5 / HeightMm))) - 6, answer.Number("change", "casterDeg"), 1e-6, "caster");
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("after").GetProperty("toeDeg").ValueKind);
        Assert.Equal("measured-corner", answer.GetProperty("method").GetString());
    }

    [Fact]
    public async Task The_movement_for_a_target_gives_the_target()
    {
        var asked = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, Corner().With("/target", new JsonObject { ["camberDeg"] = -1.4, ["casterDeg"] = 6.5 }).With("/adjusters", Mount()));
        Assert.True(asked.GetProperty("isReached").GetBoolean());

        var (inboardMm, rearwardMm) = (asked.AmountOf("strutTopInboard"), asked.AmountOf("strutTopRearward"));
        var moved = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, Corner().With("/adjustments", GeometryRequests.Moved(inboardMm, rearwardMm)));
        GeometryCalls.Near(-1.4, moved.Number("after", "camberDeg"), 1e-6, "camber");
        GeometryCalls.Near(6.5, moved.Number("after", "casterDeg"), 1e-6, "caster");
    }

    [Fact]
    public async Task Ride_height_goes_along_the_curve_and_what_needs_points_is_refused()
    {
        var lowered = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, Corner().With("/adjustments", JsonNode.Parse("""[{ "adjuster": "rideHeight", "amountMm": -25 }]""")));
        GeometryCalls.Near(-0.5, lowered.Number("change", "camberDeg"), 1e-6, "camber");

        await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, Corner().With("/adjustments", JsonNode.Parse("""[{ "adjuster": "tieRodLength", "amountMm": 1 }]""")).ToJsonString());
        await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, Corner().Without("/vehicle/front/suspension/topMountReadings").With("/adjustments", GeometryRequests.Moved(5, 0)).ToJsonString());
    }

    [Fact]
    public async Task Camber_that_rises_with_the_mount_moved_inboard_is_not_believed()
    {
        var problem = await fixture.Client.NotComputableOf(
            GeometryCalls.Adjustment, Corner().With("/vehicle/front/suspension/topMountReadings/1/camberDeg", 0.5).With("/target", new JsonObject { ["camberDeg"] = -2 }).With("/adjusters", Mount()).ToJsonString());

        Assert.Contains("signs", problem.OnlyFault().Message(), StringComparison.Ordinal);
    }

    // The eccentric turns the wheel by the angle whose sine is the throw by the distance of the bolts: asin(1.6/58) = 1.58077°.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task An_eccentric_with_its_bolt_spacing_needs_no_points(bool isMeasured)
    {
        var body = Corner().With("/vehicle/front/alignment/camberDeg", -0.7).With("/adjustments", JsonNode.Parse("""[{ "adjuster": "knuckleEccentric", "amountMm": 1.6, "boltSpacingMm": 58 }]"""));
        if (!isMeasured) body.Without("/vehicle/front/suspension").Without("/vehicle/front/loadedRadiusMm");
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);

        GeometryCalls.Near(-1.58077, answer.Number("change", "camberDeg"), 1e-5, "camber");
        GeometryCalls.Near(-1.58077, answer.Number("change", "includedAngleDeg"), 1e-5, "included angle");
        GeometryCalls.Near(6, answer.Number("after", "casterDeg"), 1e-9, "caster");
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "toeDeg");
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/vehicle/front/suspension/points");
    }

    // The least throw for a change is the one whose sine it is.
    [Fact]
    public async Task A_change_wanted_of_an_eccentric_alone_gives_its_throw()
    {
        var body = Corner().With("/vehicle/front/alignment/camberDeg", -0.7).Without("/vehicle/front/suspension")
            .With("/change", new JsonObject { ["camberDeg"] = -1.5 }).With("/adjusters", JsonNode.Parse("""[{ "adjuster": "knuckleEccentric", "boltSpacingMm": 58, "rangeMm": { "from": 0, "to": 4 } }]"""));
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);

        Assert.True(answer.GetProperty("isReached").GetBoolean());
        GeometryCalls.Near(58 * Math.Sin(Radians(1.5)), answer.AmountOf("knuckleEccentric"), 1e-5, "throw");
    }

    [Fact]
    public async Task Without_a_suspension_another_adjuster_is_refused_for_the_lack_of_it()
    {
        var body = Corner().With("/vehicle/front/alignment/camberDeg", -0.7).Without("/vehicle/front/suspension").With("/adjustments", GeometryRequests.Moved(5, 0));

        Assert.Contains("/vehicle/front/suspension required", (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body.ToJsonString())).FaultsOf());
    }

    private static JsonNode Mount() => JsonNode.Parse("""[{ "adjuster": "strutTopInboard" }, { "adjuster": "strutTopRearward" }]""")!;

    private static JsonObject Corner() => Requests.Object(FormattableString.Invariant($$"""
        {
          "axle": "front",
          "vehicle": { "front": {
          "suspension": {
            "kind": "measured",
            "readings": [
              { "travelMm": -40, "camberDeg": 0.1, "toeDeg": 0.1 }, { "travelMm": 0, "camberDeg": -0.7, "toeDeg": 0.1 }, { "travelMm": 40, "camberDeg": -1.5, "toeDeg": 0.1 }
            ],
            "topMountReadings": [{ "inboardMm": 0, "camberDeg": -0.7 }, { "inboardMm": 10, "camberDeg": {{MovedDeg}} }]
          },
          "alignment": { "casterDeg": 6, "steeringAxisInclinationDeg": 13 },
          "loadedRadiusMm": 305 } }
        }
        """));

    private static double Lean(double inboardMm) => Degrees(Math.Atan(Math.Tan(Radians(13)) + (inboardMm / HeightMm))) - 13;

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
