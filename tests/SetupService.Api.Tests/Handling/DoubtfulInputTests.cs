using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Handling.Cornering;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>What is asked about before anything is advised by it: a camber without its minus, springs that lift the car, a car lowered onto stops nobody measured, two limits too close to tell.</summary>
public sealed class DoubtfulInputTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task A_positive_camber_is_asked_about_and_no_step_is_told()
    {
        var answer = await Asked("camber-target", body => body.With("/vehicle/front/alignment/camberDeg", 1.5));

        var recommended = answer.GetProperty("recommended");
        Assert.Equal(JsonValueKind.Null, recommended.GetProperty("stepDeg").ValueKind);
        Assert.StartsWith("Look first which way the front wheels lean: +1.5°", recommended.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Set the front camber", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("camberSign", Codes(answer));
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/recommended/camberDeg" && one.GetProperty("reason").GetString()!.Contains("sign", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cornering")]
    [InlineData("ride")]
    [InlineData("envelope")]
    public async Task Every_call_about_the_car_asks_about_it(string call)
    {
        Assert.Contains("camberSign", Codes(await Asked(call, body => body.With("/vehicle/rear/alignment/camberDeg", 0.8))));
        Assert.DoesNotContain("camberSign", Codes(await Asked(call, body => body.With("/vehicle/rear/alignment/camberDeg", 0.5))));
    }

    [Fact]
    public async Task An_alignment_with_one_wheel_leaning_out_asks_which_way_it_leans()
    {
        var body = Example("alignment").With("/vehicle/front/alignment/camberDeg", 1.5).With("/vehicle/front/alignment/right", new JsonObject { ["camberDeg"] = -1.5 });

        var answer = await fixture.Client.AnswerOf("/v1/geometry/alignment", body);

        var text = answer.GetProperty("cautions").EnumerateArray().Single(one => one.GetProperty("code").GetString() == "camberSign").GetProperty("text").GetString();
        Assert.StartsWith("The camber of the front left wheel is given as +1.5°", text, StringComparison.Ordinal);
    }

    // Of the spring only the rate is told: as long as the one before it lifts the car.
    [Fact]
    public async Task Springs_that_lift_the_car_are_told_with_the_length_assumed()
    {
        var body = Example("ride").With("/vehicle/front/spring", new JsonObject { ["rateNPerMm"] = 27, ["freeLengthMm"] = 330, ["installedLengthMm"] = 215 });
        body["change"] = JsonNode.Parse("""{ "label": "stiffer", "vehicle": { "front": { "spring": { "rateNPerMm": 45 } } } }""");

        var answer = await fixture.Client.AnswerOf("/v1/handling/ride", body);

        Assert.True(answer.Number("front", "rideHeightChangeMm") > 10);
        Assert.Contains("standsHigher", Codes(answer));
        Assert.Single(answer.Assumed("/change/vehicle/front/spring/freeLengthMm"));
    }

    [Fact]
    public async Task A_car_lowered_onto_stops_nobody_measured_is_not_only_praised()
    {
        var body = Example("what-if").Without("/vehicle/front/bumpTravelMm");
        body["changes"] = JsonNode.Parse("""[{ "label": "lower", "vehicle": { "front": { "rideHeightChangeMm": -40 } } }]""");

        var text = (await fixture.Client.AnswerOf("/v1/handling/what-if", body)).GetProperty("changes")[0].GetProperty("text").GetString();

        Assert.Contains("40 mm lower in front", text, StringComparison.Ordinal);
        Assert.Contains("how much bump travel that leaves is not known", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ride_judged_on_an_assumed_motion_ratio_says_so()
    {
        var body = Example("ride").Without("/vehicle/rear/spring/motionRatio");

        Assert.Contains("The motion ratio of the rear springs is assumed", (await fixture.Client.AnswerOf("/v1/handling/ride", body)).GetProperty("flatRide").GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    // The demo car's limits lie 0.02 g apart, which cornering calls unclear.
    [Fact]
    public async Task Where_cornering_cannot_tell_the_first_axle_an_envelope_does_not_either()
    {
        var body = Example("envelope").WithRaw("/longitudinalG", """{ "from": -0.1, "to": 0, "step": 0.1 }""");

        var row = (await fixture.Client.AnswerOf("/v1/handling/envelope", body)).GetProperty("rows")[1];

        Assert.True(Math.Abs(row.Number("frontLimitG") - row.Number("rearLimitG")) < 0.03);
        Assert.Contains("too close to tell", row.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    private async Task<JsonElement> Asked(string call, Func<JsonObject, JsonObject> edit) => await fixture.Client.AnswerOf("/v1/handling/" + call, edit(Example(call)));

    private static JsonObject Example(string call) => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf(call + ".request.json")))!.AsObject();

    private static List<string?> Codes(JsonElement answer) => [.. answer.GetProperty("cautions").EnumerateArray().Select(one => one.GetProperty("code").GetString())];
}
