using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>Turns braked and driven through, over HTTP: what comes with longitudinalG, what is refused, what is assumed.</summary>
public sealed class BendCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double G = 9.80665;
    private const string Turn = CorneringCalls.Turn;

    [Fact]
    public async Task Braking_moves_load_forward_and_says_so_in_every_part()
    {
        var answer = await fixture.Client.AnswerOf(Turn, CorneringCalls.Example(0.5).With("/longitudinalG", -0.3));

        var moved = 1330 * 0.3 * G * 505 / 2570;
        Assert.Equal(-0.3, answer.Number("longitudinalG"));
        Assert.True(answer.Number("pitchDeg") > 0.2);
        Assert.Equal(moved, answer.Number("axles", "front", "addedLoadN"), 1e-4);
        Assert.Equal(-moved, answer.Number("axles", "rear", "addedLoadN"), 1e-4);
        Assert.Equal((690 * G) + moved, answer.Wheel("frontLeft").Number("loadN") + answer.Wheel("frontRight").Number("loadN"), 1e-4);
        Assert.Equal(-0.3 * G * 1330, answer.Number("axles", "front", "longitudinalForceN") + answer.Number("axles", "rear", "longitudinalForceN"), 1e-4);
        Assert.Equal(-0.3 * G * 1330, CorneringCalls.Wheels.Sum(name => answer.Wheel(name).Number("longitudinalForceN")), 1e-4);
        Assert.Contains("Braking takes", answer.GetProperty("balance").GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("quasiSteady", answer.Codes());
        Assert.DoesNotContain("steadyTurnOnly", answer.Codes());
        Assert.Single(answer.Assumed("/vehicle/brakeShareFrontPct"), one => one.GetProperty("value").ValueKind == JsonValueKind.Number);
        Assert.Single(answer.Assumed("/vehicle/rear/suspension"), one => one.GetProperty("reason").GetString()!.Contains("dive", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Without_it_no_member_of_it_is_there_and_zero_is_the_same_turn(bool isZero)
    {
        var plain = await fixture.Client.AnswerOf(Turn, CorneringCalls.Example());
        var body = CorneringCalls.Example();
        var answer = await fixture.Client.AnswerOf(Turn, isZero ? body.With("/longitudinalG", 0) : body);

        Assert.Equal(plain.GetRawText(), answer.GetRawText());
        Assert.False(answer.TryGetProperty("pitchDeg", out _) || answer.GetProperty("axles").GetProperty("front").TryGetProperty("longitudinalUsedPct", out _));
    }

    [Fact]
    public async Task A_sweep_keeps_it_in_every_row()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Example(), 0, 0.6, 0.3).With("/longitudinalG", -0.2));

        Assert.All(answer.GetProperty("rows").EnumerateArray(), row => Assert.Equal(-0.2, row.Number("longitudinalG")));
        Assert.All(answer.GetProperty("rows").EnumerateArray(), row => Assert.True(row.Number("axles", "rear", "longitudinalUsedPct") > 1));
    }

    [Theory]
    [InlineData("/longitudinalG", "0.2", "/vehicle/drivenAxle required")]
    [InlineData("/longitudinalG", "-2.1", "/longitudinalG outOfRange")]
    [InlineData("/vehicle/driveShareFrontPct", "40", "/vehicle/drivenAxle required")]
    [InlineData("/vehicle/differential", """{ "kind": "open" }""", "/vehicle/drivenAxle required")]
    [InlineData("/vehicle/aero", """{ "referenceSpeedKmh": 160, "frontDownforceN": 10 }""", "/vehicle/aero/rearDownforceN required")]
    [InlineData("/vehicle/aero", """{ "referenceSpeedKmh": 160, "rearDownforceN": 10 }""", "/vehicle/aero/frontDownforceN required")]
    [InlineData("/vehicle/aero", """{ "dragN": 300 }""", "/vehicle/aero/referenceSpeedKmh required")]
    [InlineData("/vehicle/aero", """{ "referenceSpeedKmh": 10 }""", "/vehicle/aero/referenceSpeedKmh outOfRange")]
    [InlineData("/vehicle/front/bumpStop/forceCurve", """[{ "compressionMm": 10, "forceN": 400 }, { "compressionMm": 20, "forceN": 300 }]""", "/vehicle/front/bumpStop/forceCurve inconsistent")]
    [InlineData("/vehicle/front/bumpStop/forceCurve", """[{ "compressionMm": 20, "forceN": 100 }, { "compressionMm": 20, "forceN": 300 }]""", "/vehicle/front/bumpStop/forceCurve inconsistent")]
    [InlineData("/vehicle/front/bumpStop/forceCurve", "[]", "/vehicle/front/bumpStop/forceCurve tooFew")]
    public async Task What_means_something_only_together_is_asked_for(string place, string raw, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Turn, CorneringCalls.Example().WithRaw(place, raw))).FaultsOf());

    [Theory]
    [InlineData("""{ "kind": "limitedSlip" }""", "/vehicle/differential/biasRatio required")]
    [InlineData("""{ "kind": "locked", "biasRatio": 2 }""", "/vehicle/differential/biasRatio inconsistent")]
    [InlineData("""{ "biasRatio": 2 }""", "/vehicle/differential/kind required")]
    [InlineData("""{ "kind": "limitedSlip", "biasRatio": 0.5 }""", "/vehicle/differential/biasRatio outOfRange")]
    public async Task A_differential_is_told_whole(string raw, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Turn, Driven().WithRaw("/vehicle/differential", raw))).FaultsOf());

    [Fact]
    public async Task A_share_of_drive_belongs_to_a_car_driven_at_both_ends()
    {
        Assert.Equal(["/vehicle/driveShareFrontPct inconsistent"], (await fixture.Client.RefusalOf(Turn, Driven().With("/vehicle/driveShareFrontPct", 40).ToJsonString())).FaultsOf());

        var both = await fixture.Client.AnswerOf(Turn, Driven().With("/vehicle/drivenAxle", "both").With("/vehicle/driveShareFrontPct", 40));
        Assert.Equal(0.4 * 0.1 * G * 1330, both.Number("axles", "front", "longitudinalForceN"), 1e-4);
        Assert.Single((await fixture.Client.AnswerOf(Turn, Driven().With("/vehicle/drivenAxle", "both"))).Assumed("/vehicle/driveShareFrontPct"));
    }

    [Fact]
    public async Task What_is_assumed_of_drive_and_air_is_listed()
    {
        var answer = await fixture.Client.AnswerOf(Turn, Driven());

        Assert.Equal("open", Assert.Single(answer.Assumed("/vehicle/differential")).GetProperty("text").GetString());
        Assert.Single(answer.Assumed("/vehicle/aero"));
        Assert.Single(answer.Assumed("/vehicle/drivenAxle"));
        Assert.Single(answer.Assumed("/tyreModel/combinedExponent").Concat(answer.Assumed("/vehicle/tyreModel/combinedExponent")));
        Assert.Empty(answer.Assumed("/vehicle/brakeShareFrontPct"));
    }

    [Fact]
    public async Task Drag_with_no_driven_axle_is_left_out_and_said_so()
    {
        var answer = await fixture.Client.AnswerOf(Turn, CorneringCalls.Example().WithRaw("/vehicle/aero", """{ "referenceSpeedKmh": 160, "dragN": 600 }"""));

        Assert.Equal(0, answer.Number("axles", "rear", "longitudinalForceN"));
        Assert.Equal("nothing is driven", Assert.Single(answer.Assumed("/vehicle/drivenAxle")).GetProperty("text").GetString());
    }

    [Fact]
    public async Task Brakes_beyond_the_tyres_are_a_caution_and_an_axle_without_load_a_refusal()
    {
        var beyond = await fixture.Client.AnswerOf(Turn, CorneringCalls.Example(0.3).With("/longitudinalG", -1.15).With("/vehicle/brakeShareFrontPct", 40).Without("/heldLateralG"));
        Assert.Contains("beyondLongitudinalGrip", beyond.Codes());

        var problem = await fixture.Client.NotComputableOf(Turn, CorneringCalls.Example(0.3).With("/longitudinalG", -2).With("/vehicle/centreOfGravityHeightMm", 800).ToJsonString());
        Assert.Equal("/longitudinalG", problem.OnlyFault().GetProperty("pointer").GetString());
    }

    [Fact]
    public async Task A_progressive_stop_is_stiffer_than_its_first_part_and_takes_the_place_of_the_rate()
    {
        var body = CorneringCalls.Example(1.0).With("/vehicle/front/bumpTravelMm", 15);
        var soft = await fixture.Client.AnswerOf(Turn, body.WithRaw("/vehicle/front/bumpStop", """{ "forceCurve": [{ "compressionMm": 60, "forceN": 1500 }] }"""));
        var hard = await fixture.Client.AnswerOf(Turn, body.WithRaw("/vehicle/front/bumpStop", """{ "forceCurve": [{ "compressionMm": 5, "forceN": 125 }, { "compressionMm": 20, "forceN": 2500 }] }"""));

        Assert.True(hard.Number("rollDeg") < soft.Number("rollDeg") - 0.05);
        Assert.Empty(soft.Assumed("/vehicle/front/bumpStop/rateNPerMm"));
    }

    private static JsonObject Driven() => CorneringCalls.Example(0.4).With("/longitudinalG", 0.1).With("/vehicle/drivenAxle", "rear");
}
