using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Vehicles;

/// <summary>One car sent to every call: the same camber in each, and the same word where an input of its suspension has a wrong sign.</summary>
public sealed class SameCamberTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // A front strut that flattens, read with a gauge; at 30 mm the reading lies off the others.
    private const string Outlying =
        """
        { "kind": "measured", "readings": [
            { "travelMm": -75, "camberDeg": 0.66 }, { "travelMm": -50, "camberDeg": 0.12 }, { "travelMm": -25, "camberDeg": -0.29 }, { "travelMm": 0, "camberDeg": -0.6 },
            { "travelMm": 25, "camberDeg": -0.81 }, { "travelMm": 30, "camberDeg": -1.15 }, { "travelMm": 50, "camberDeg": -0.91 }] }
        """;

    private static readonly string[] WholeCars = ["handling/cornering", "handling/cornering-sweep", "handling/ride", "handling/camber-target", "handling/what-if", "wear/diagnosis"];

    public static TheoryData<string, double> Suspensions => new()
    {
        { Outlying, 0.1 }, { Outlying, 0.03 }, { Outlying, 0 }, { DemoCar.Strut, 0 },
    };

    // The sum static + kinematic of a wheel in a turn is its camber to the body at that wheel's travel: what the sweep answers there.
    [Theory]
    [MemberData(nameof(Suspensions))]
    public async Task A_wheel_in_a_turn_has_the_camber_of_the_sweep_at_its_travel(string suspension, double gaugeErrorDeg)
    {
        var front = Suspension(suspension, gaugeErrorDeg);
        var answer = await fixture.Client.AnswerOf("/v1/handling/cornering", Whole("cornering", front).With("/lateralG", 0.5));

        foreach (var wheel in new[] { answer.GetProperty("wheels").GetProperty("frontLeft"), answer.GetProperty("wheels").GetProperty("frontRight") })
        {
            var sum = wheel.Number("contributions", "static") + wheel.Number("contributions", "kinematic");
            Assert.Equal(await SweptDeg(front, wheel.Number("travelMm")), sum, 1e-7);
        }
    }

    // The check is asked twice: with the suspension, and with what the sweep answered of it every millimetre, read without error. The lean it takes
    // off the gaps is the same.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.03)]
    [InlineData(0)]
    public async Task The_check_takes_the_lean_of_the_sweep(double gaugeErrorDeg)
    {
        var front = Suspension(Outlying, gaugeErrorDeg);
        var swept = await Sweep(front, 0, 30, 1);
        var table = new JsonObject
        {
            ["kind"] = "measured",
            ["gaugeErrorDeg"] = 0,
            ["readings"] = new JsonArray([.. swept.Select(row => (JsonNode)new JsonObject { ["travelMm"] = row.TravelMm, ["camberDeg"] = row.CamberDeg })]),
        };
        var byReadings = await fixture.Client.AnswerOf(Calls.Check, Checked(front));
        var byTable = await fixture.Client.AnswerOf(Calls.Check, Checked(table));

        foreach (var place in new[] { "inboardClearance", "outboardClearance" })
            Assert.Equal(byTable.CheckOf(place).Number("nominalMm"), byReadings.CheckOf(place).Number("nominalMm"), 1e-4);
    }

    // For one bend the mean inclination is that of the outer wheel in this bend.
    [Theory]
    [MemberData(nameof(Suspensions))]
    public async Task A_camber_target_of_one_bend_stands_on_the_inclination_of_the_turn(string suspension, double gaugeErrorDeg)
    {
        var front = Suspension(suspension, gaugeErrorDeg);
        var turn = Whole("cornering", front).With("/lateralG", 0.5).With("/turn", "left");
        var target = Whole("cornering", front).With("/lateralG", 0.5).With("/turn", "left").With("/axle", "front");
        target.Remove("heldLateralG");

        var turned = await fixture.Client.AnswerOf("/v1/handling/cornering", turn);
        var wanted = await fixture.Client.AnswerOf("/v1/handling/camber-target", target);

        Assert.Equal(turned.Number("wheels", "frontRight", "inclinationDeg"), wanted.Number("before", "meanInclinationDeg"), 0.03); // the tyres share the side force otherwise without heldLateralG
    }

    // As with the check: asked with the readings, and with the sweep's answer on them read without error. Both stand on the same camber.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0)]
    public async Task Camber_target_and_diagnosis_stand_on_the_camber_of_the_sweep(double gaugeErrorDeg)
    {
        var front = Suspension(Outlying, gaugeErrorDeg);
        front["readings"]!.AsArray().RemoveAt(5);
        var swept = await Sweep(front, -75, 50, 2.5);
        var table = new JsonObject
        {
            ["kind"] = "measured",
            ["gaugeErrorDeg"] = 0,
            ["readings"] = new JsonArray([.. swept.Select(row => (JsonNode)new JsonObject { ["travelMm"] = row.TravelMm, ["camberDeg"] = row.CamberDeg })]),
        };

        var (target, ofTable) = (await Wanted(front), await Wanted(table));
        Assert.Equal(ofTable.Number("before", "meanInclinationDeg"), target.Number("before", "meanInclinationDeg"), 2e-3);
        Assert.Equal(ofTable.Number("staticCamberDeg", "value"), target.Number("staticCamberDeg", "value"), 4e-3);
        Assert.Equal(await ShortDeg(table), await ShortDeg(front), 4e-3);

        async Task<JsonElement> Wanted(JsonObject suspension) => await fixture.Client.AnswerOf("/v1/handling/camber-target", Whole("camber-target", suspension));

        async Task<double> ShortDeg(JsonObject suspension) =>
            (await fixture.Client.AnswerOf("/v1/wear/diagnosis", Whole("wear-diagnosis", suspension))).Number("axles", "front", "camberShortDeg", "byModel", "value");
    }

    [Fact]
    public async Task Without_a_gauge_error_every_reading_is_met_and_else_within_two_and_a_half_of_them()
    {
        foreach (var gaugeErrorDeg in new[] { 0, 0.03, 0.1 })
        {
            var front = Suspension(Outlying, gaugeErrorDeg);
            foreach (var reading in front["readings"]!.AsArray())
            {
                var camberDeg = await SweptDeg(front, reading!["travelMm"]!.GetValue<double>());
                Assert.Equal(reading["camberDeg"]!.GetValue<double>(), camberDeg, (2.5 * gaugeErrorDeg) + 1e-8);
            }
        }
    }

    // The same strut without the reading that lies off: −0.04° per 10 mm between 25 and 50 mm.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0)]
    public async Task A_slope_that_flattens_is_kept(double gaugeErrorDeg)
    {
        var front = Suspension(Outlying, gaugeErrorDeg);
        front["readings"]!.AsArray().RemoveAt(5);

        Assert.Equal(-0.04, (await SweptDeg(front, 50) - await SweptDeg(front, 25)) / 2.5, 0.008);
    }

    public static TheoryData<string> EveryCallOfACar => [.. WholeCars, "fitment/check", "fitment/window"];

    [Theory]
    [MemberData(nameof(EveryCallOfACar))]
    public async Task A_camber_typed_with_the_wrong_sign_is_told_by_every_call_that_takes_the_car(string call)
    {
        var body = call.StartsWith("fitment", StringComparison.Ordinal)
            ? Requests.Object((call.EndsWith("check", StringComparison.Ordinal) ? Requests.Check() : Requests.Window()).ToJsonString())
            : Whole(call.Split('/')[1] is var name && call.StartsWith("wear", StringComparison.Ordinal) ? "wear-" + name : name, Suspension(Outlying, 0.1));
        body = body.With("/vehicle/front/suspension", Suspension(Outlying, 0.1)).With("/vehicle/front/alignment", new JsonObject { ["camberDeg"] = 0.6 });

        var answer = await fixture.Client.AnswerOf("/v1/" + call, body);

        var text = Caution(answer, "statedCamberUnlikeReadings");
        Assert.Contains("/vehicle/front/alignment/camberDeg", text, StringComparison.Ordinal);
        Assert.Contains("/vehicle/front/suspension/readings", text, StringComparison.Ordinal);
        Assert.Contains("sign of one turned", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("travel-sweep", "travelMm", """{ "from": 0, "to": 10, "step": 10 }""")]
    [InlineData("adjustment", "adjustments", """[{ "adjuster": "rideHeight", "amountMm": -10 }]""")]
    public async Task A_camber_typed_with_the_wrong_sign_is_told_by_the_calls_on_a_corner(string call, string member, string value)
    {
        var body = OnCorner(Suspension(Outlying, 0.1), 0.6).With("/" + member, JsonNode.Parse(value));

        var text = Caution(await fixture.Client.AnswerOf("/v1/geometry/" + call, body), "statedCamberUnlikeReadings");

        Assert.Contains("/vehicle/front/alignment/camberDeg", text, StringComparison.Ordinal);
        Assert.Contains("/vehicle/front/suspension/readings", text, StringComparison.Ordinal);
    }

    private static string Caution(JsonElement answer, string code) =>
        answer.GetProperty("cautions").EnumerateArray().First(one => one.GetProperty("code").GetString() == code).GetProperty("text").GetString()!;

    private static JsonObject Suspension(string text, double gaugeErrorDeg)
    {
        var suspension = Requests.Object(text);
        if (suspension["readings"] is not null) suspension["gaugeErrorDeg"] = gaugeErrorDeg;
        return suspension;
    }

    private static JsonObject OnCorner(JsonObject front, double camberDeg) => new()
    {
        ["vehicle"] = new JsonObject
        {
            ["front"] = new JsonObject
            {
                ["suspension"] = front.DeepClone(),
                ["alignment"] = new JsonObject { ["camberDeg"] = camberDeg, ["toeDeg"] = 0.08 },
                ["loadedRadiusMm"] = 305,
            },
        },
        ["axle"] = "front",
    };

    private static JsonObject Whole(string example, JsonObject front) => Requests.Object(File.ReadAllText(ExampleCall.FileOf(example + ".request.json")))
        .With("/vehicle/front/suspension", front.DeepClone()).With("/vehicle/front/alignment", new JsonObject { ["camberDeg"] = -0.6, ["toeDeg"] = 0.08 });

    private static JsonObject Checked(JsonObject front) => Requests.Check()
        .With("/vehicle/front/suspension", front.DeepClone())
        .With("/vehicle/front/alignment", new JsonObject { ["camberDeg"] = -0.6, ["toeDeg"] = 0.08 })
        .With("/vehicle/front/clearance", Requests.Object("""{ "inboardMm": 40, "outboardMm": 30, "radialMm": 500, "measuredAt": "rideHeight", "uncertaintyMm": 1 }"""))
        .With("/vehicle/front/bumpTravelMm", 30)
        .With("/vehicle/front/bumpStop", Requests.Object("""{ "lengthMm": 18, "compressedLengthMm": 18, "motionRatio": 0.94 }"""));

    private async Task<double> SweptDeg(JsonObject front, double travelMm) => Assert.Single(await Sweep(front, travelMm, travelMm, 1)).CamberDeg;

    private async Task<(double TravelMm, double CamberDeg)[]> Sweep(JsonObject front, double fromMm, double toMm, double stepMm)
    {
        var body = OnCorner(front, -0.6).With(
            "/travelMm", JsonNode.Parse(string.Create(CultureInfo.InvariantCulture, $$"""{ "from": {{fromMm}}, "to": {{toMm}}, "step": {{stepMm}} }""")));
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, body);
        return [.. answer.GetProperty("rows").EnumerateArray().Select(row => (row.Number("travelMm"), row.Number("camberDeg")))];
    }
}
