using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Vehicles;

/// <summary>One car sent to check, travel-sweep and cornering: the wheel centre stands equally high in each.</summary>
public sealed class SameLoadedRadiusTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Place = "/vehicle/front/loadedRadiusMm";

    // With the tyre's vertical rate and without, the load by the axle and by its scales.
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, false)]
    [InlineData(true, true)]
    [InlineData(false, true)]
    public async Task Tyre_and_load_give_the_same_height_in_every_call(bool hasRate, bool hasScales)
    {
        var vehicle = Vehicle(hasRate, hasScales);
        var cornering = Example("cornering").With("/vehicle", vehicle.DeepClone());
        var sweep = new JsonObject
        {
            ["vehicle"] = vehicle.DeepClone(),
            ["axle"] = "front",
            ["travelMm"] = JsonNode.Parse("""{ "from": 0, "to": 10, "step": 10 }"""),
        };
        var check = new JsonObject { ["vehicle"] = vehicle.DeepClone(), ["axle"] = "front", ["candidate"] = Requests.Check()["candidate"]!.DeepClone() };

        var inTurn = Assumed(await fixture.Client.AnswerOf("/v1/handling/cornering", cornering));

        Assert.Equal(Assumed(await fixture.Client.AnswerOf(GeometryCalls.Sweep, sweep)), inTurn);
        Assert.Equal(Assumed(await fixture.Client.AnswerOf(Calls.Check, check)), inTurn);
    }

    // The unsprung masses move load across an axle by their height: m a R / track (handbooks of vehicle dynamics; here only the proportion is held).
    [Fact]
    public async Task A_height_that_was_measured_is_used_in_a_turn()
    {
        var low = await fixture.Client.AnswerOf("/v1/handling/cornering", Example("cornering").With("/vehicle/front/loadedRadiusMm", 290));
        var high = await fixture.Client.AnswerOf("/v1/handling/cornering", Example("cornering").With("/vehicle/front/loadedRadiusMm", 319));

        Assert.Equal(1.1, high.Number("axles", "front", "unsprungN") / low.Number("axles", "front", "unsprungN"), 1e-6);
        Assert.DoesNotContain(low.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == Place);
    }

    // 3,400 N on 30 N/mm would press the tyre 113 mm in, through its 101 mm of sidewall: the rim of code 17 has half of 436.6 mm (ETRTO, from memory).
    [Fact]
    public async Task A_tyre_is_never_pressed_onto_its_rim()
    {
        var body = Example("cornering").With("/vehicle", Vehicle(hasRate: true, hasScales: true)).With("/vehicle/front/tyre/verticalRateNPerMm", 30);

        Assert.InRange(Assumed(await fixture.Client.AnswerOf("/v1/handling/cornering", body)), 215, 219);
    }

    private static double Assumed(JsonElement answer) =>
        answer.GetProperty("assumptions").EnumerateArray()
        .Single(one => one.GetProperty("input").GetString() == Place && one.GetProperty("value").ValueKind == JsonValueKind.Number).Number("value");

    private static JsonObject Example(string call) => Requests.Object(File.ReadAllText(ExampleCall.FileOf(call + ".request.json")));

    private static JsonObject Vehicle(bool hasRate, bool hasScales)
    {
        var vehicle = Example("cornering")["vehicle"]!.DeepClone().AsObject();
        var front = vehicle["front"]!.AsObject();
        front.Remove("loadedRadiusMm");
        front["tyre"] = JsonNode.Parse("""{ "marking": "225/45R17 91W", "pressureKpa": 230 }""");
        if (hasRate) front["tyre"]!["verticalRateNPerMm"] = 210;
        front["wheel"] = JsonNode.Parse("""{ "rimDiameterIn": 17, "rimWidthIn": 7.5, "offsetMm": 45 }""");
        front["bumpTravelMm"] = 60;
        front["clearance"] = JsonNode.Parse("""{ "inboardMm": 40, "outboardMm": 30, "radialMm": 50, "measuredAt": "rideHeight", "inboardTo": "body", "inboardHeightMm": 380 }""");
        vehicle.Remove("cornerWeightsKg");
        if (!hasScales) return vehicle;
        vehicle.Remove("frontAxleLoadKg");
        vehicle["cornerWeightsKg"] = JsonNode.Parse("""{ "frontLeft": 350, "frontRight": 330 }""");
        return vehicle;
    }
}
