using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>Ride and what-if over HTTP.</summary>
public sealed class RideAndWhatIfCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // handling by hand: 28 N/mm at the wheel on 317.69 kg: 5965 N s/m critical, 1.4942 Hz, with 220 N/mm of tyre 24.8387 N/mm and 1.4073 Hz.
    [Fact]
    public async Task A_plain_axle_has_the_figures_worked_by_hand()
    {
        var axle = JsonNode.Parse("""{"trackMm":1500,"unsprungMassKg":40,"tyre":{"marking":"225/45R17 91W","verticalRateNPerMm":220},"spring":{"rateNPerMm":28,"motionRatio":1},"damper":{"bumpNsPerM":1500,"reboundNsPerM":3000,"motionRatio":1}}""")!;
        var body = new JsonObject { ["vehicle"] = new JsonObject { ["frontAxleLoadKg"] = 715.38, ["rearAxleLoadKg"] = 715.38, ["front"] = axle, ["rear"] = axle.DeepClone() } };

        var front = (await Answer("/v1/handling/ride", body)).GetProperty("front");

        Assert.Equal(317.69, front.GetProperty("sprungMassKg").GetDouble(), 0.001);
        Assert.Equal(28, front.GetProperty("wheelRateNPerMm").GetDouble(), 1e-6);
        Assert.Equal(24.8387, front.GetProperty("rideRateNPerMm").GetDouble(), 1e-4);
        Assert.Equal(1.4073, front.GetProperty("rideFrequencyHz").GetDouble(), 1e-4);
        Assert.Equal(1.4942, front.GetProperty("springFrequencyHz").GetDouble(), 1e-4);
        Assert.Equal(5965, front.GetProperty("criticalDampingNsPerM").GetDouble(), 0.5);
        Assert.Equal(1500 / 5965.0, front.GetProperty("dampingRatio").GetProperty("bump").GetDouble(), 1e-4);
    }

    // Barton and Fieldhouse, Automotive Chassis Engineering, 2018, p. 213: 20.63 kN/m, 300 kN/m, 40 kg: 14.25 Hz.
    [Fact]
    public async Task A_wheel_hops_as_the_textbook_has_it()
    {
        var axle = JsonNode.Parse("""{"trackMm":1500,"unsprungMassKg":40,"tyre":{"marking":"225/45R17 91W","verticalRateNPerMm":300},"spring":{"rateNPerMm":20.63,"motionRatio":1}}""")!;
        var body = new JsonObject { ["vehicle"] = new JsonObject { ["frontAxleLoadKg"] = 480, ["rearAxleLoadKg"] = 600, ["front"] = axle, ["rear"] = axle.DeepClone() } };

        Assert.Equal(14.25, (await Answer("/v1/handling/ride", body)).GetProperty("front").GetProperty("wheelHopFrequencyHz").GetDouble(), 0.005);
    }

    [Fact]
    public async Task Stiffer_springs_at_the_same_dampers_lower_the_ratio_by_the_root_of_their_rates()
    {
        var body = Example("ride.request.json");
        body["change"] = JsonNode.Parse("""{"vehicle":{"rear":{"spring":{"rateNPerMm":69}}}}""");

        var answer = await Answer("/v1/handling/ride", body);

        var before = answer.GetProperty("before").GetProperty("rear").GetProperty("dampingRatio").GetProperty("mean").GetDouble();
        Assert.Equal(before * Math.Sqrt(46 / 69.0), answer.GetProperty("rear").GetProperty("dampingRatio").GetProperty("mean").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task A_longer_spring_in_the_same_seats_raises_the_car_by_its_length_over_the_motion_ratio()
    {
        var body = Example("ride.request.json");
        body["change"] = JsonNode.Parse("""{"vehicle":{"rear":{"spring":{"freeLengthMm":297.8}}}}""");

        Assert.Equal(10, (await Answer("/v1/handling/ride", body)).GetProperty("rear").GetProperty("rideHeightChangeMm").GetDouble(), 1e-6);
    }

    // A strut laid over until its leverage falls faster than the spring's force grows: found by drawn requests.
    [Fact]
    public async Task A_spring_that_holds_nothing_up_is_refused()
    {
        var body = Example("ride.request.json");
        body["vehicle"]!["front"]!["suspension"]!["points"]!["strutTop"]!["yMm"] = 1900;
        using var response = await fixture.Client.PostAsync("/v1/handling/ride", body.ToJsonString());

        Assert.Equal(422, (int)response.StatusCode);
    }

    [Fact]
    public async Task Without_a_damper_its_ratio_is_unknown_and_no_verdict_is_given()
    {
        var body = Example("ride.request.json");
        body["vehicle"]!["front"]!.AsObject().Remove("damper");

        var answer = await Answer("/v1/handling/ride", body);

        Assert.Equal("unknown", answer.GetProperty("front").GetProperty("dampers").GetProperty("verdict").GetString());
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/front/dampingRatio/mean");
    }

    [Theory]
    [InlineData("/v1/handling/ride", "ride.request.json", """{"vehicle":{"front":{"spring":{"freeLengthMm":90}}}}""", "/vehicle/front/spring/solidLengthMm")]
    [InlineData("/v1/handling/ride", "ride.request.json", """{"vehicle":{"front":{"spring":{"rateNPerMm":0}}}}""", "/change/vehicle/front/spring/rateNPerMm")]
    [InlineData("/v1/handling/ride", "ride.request.json", """{"vehicle":{"front":{"sprung":{}}}}""", "/change/vehicle/front/sprung")]
    public async Task A_change_that_makes_no_car_is_refused_in_its_own_place(string path, string example, string change, string place)
    {
        var body = Example(example);
        body["change"] = JsonNode.Parse(change);

        using var response = await fixture.Client.PostAsync(path, body.ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        var errors = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()!);
        Assert.Contains(errors, one => one.StartsWith(place[..place.LastIndexOf('/')], StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_change_alone_and_together_with_nothing_else_is_the_same_and_is_what_cornering_says_of_the_changed_car()
    {
        var body = Example("what-if.request.json");
        body["changes"] = JsonNode.Parse("""[{"label":"bar","vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":450}}}}]""");
        body.Remove("heldLateralG");
        var answer = await Answer("/v1/handling/what-if", body);
        var turn = new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone(), ["lateralG"] = 0.9, ["turn"] = "left", ["cornerRadiusM"] = 60 };
        turn["vehicle"]!["front"]!["antiRollBar"]!["rollRateNmPerDeg"] = 450;

        var stands = await Answer("/v1/handling/cornering", turn);

        var alone = answer.GetProperty("changes")[0].GetProperty("after");
        Assert.Equal(alone.GetRawText(), answer.GetProperty("together").GetProperty("after").GetRawText());
        Assert.Equal(stands.GetProperty("rollDeg").GetDouble(), alone.GetProperty("rollDeg").GetDouble(), 1e-7);
        Assert.Equal(stands.GetProperty("wheels").GetProperty("frontRight").GetProperty("inclinationDeg").GetDouble(), alone.GetProperty("frontInclinationDeg").GetDouble(), 1e-7);
        Assert.Equal(stands.GetProperty("limit").GetProperty("front").GetProperty("value").GetDouble(), alone.GetProperty("frontLimitG").GetDouble(), 1e-7);
    }

    [Fact]
    public async Task A_lowered_car_stands_lower_by_what_is_said()
    {
        var body = Example("what-if.request.json");
        body["changes"] = JsonNode.Parse("""[{"label":"lower","vehicle":{"front":{"rideHeightChangeMm":-15}}}]""");

        var change = (await Answer("/v1/handling/what-if", body)).GetProperty("changes")[0].GetProperty("change");

        Assert.Equal(-15, change.GetProperty("frontRideHeightChangeMm").GetDouble(), 1e-6);
        Assert.Equal(0, change.GetProperty("rearRideHeightChangeMm").GetDouble(), 1e-6);
    }

    // Readings in place of points tell no motion ratio: what the change leaves open is listed under its number.
    [Fact]
    public async Task What_a_change_leaves_open_is_assumed_and_listed_under_it()
    {
        var body = Example("what-if.request.json");
        body["changes"] = JsonNode.Parse("""[{"label":" ","vehicle":{"front":{"suspension":{"kind":"measured","readings":[{"travelMm":-80,"camberDeg":0},{"travelMm":0,"camberDeg":-0.7},{"travelMm":80,"camberDeg":-1.6}]}}}}]""");

        var answer = await Answer("/v1/handling/what-if", body);

        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/changes/0/vehicle/front/spring/motionRatio");
        Assert.Equal("change 1", answer.GetProperty("changes")[0].GetProperty("label").GetString());
    }

    // What was measured of the spring before is not the length of the one after.
    [Fact]
    public async Task The_old_springs_length_does_not_stand_for_the_new_ones()
    {
        var body = Example("ride.request.json");
        body["vehicle"]!["rear"]!["spring"]!["installedLengthMm"] = 213;
        body["change"] = JsonNode.Parse("""{"vehicle":{"rear":{"spring":{"freeLengthMm":262,"rateNPerMm":62}}}}""");

        var rear = (await Answer("/v1/handling/ride", body)).GetProperty("rear");

        Assert.Equal(262 - (rear.GetProperty("springForceN").GetDouble() / 62), rear.GetProperty("springLengthMm").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task The_table_has_a_line_for_every_change_in_either_units()
    {
        var body = Example("what-if.request.json").ToJsonString();
        foreach (var units in (string[])["metric", "us"])
        {
            var table = JsonDocument.Parse(await Calls.Text(await fixture.Client.PostAsync("/v1/handling/what-if?units=" + units, body))).RootElement.GetProperty("table").GetString()!;
            Assert.Equal(14, table.Split('\n').Length);
            Assert.Contains(units == "us" ? " in " : " mm ", table.Split('\n')[1] + " ", StringComparison.Ordinal);
        }
    }

    // The demo car's front spring is short of its seats at full droop; 1 in is 25.4 mm.
    [Theory]
    [InlineData("metric", " mm")]
    [InlineData("us", " in")]
    public async Task What_a_person_reads_of_a_loose_spring_is_in_the_units_asked_for(string units, string unit)
    {
        var answer = await Answer("/v1/handling/ride?units=" + units, Example("ride.request.json"));

        var text = answer.GetProperty("cautions").EnumerateArray().First(one => one.GetProperty("code").GetString() == "springLooseAtDroop").GetProperty("text").GetString()!;
        var looseMm = -answer.GetProperty("front").GetProperty("seatedAtDroopMm").GetDouble();
        var shown = units == "us" ? Math.Round(looseMm / 25.4, 2, MidpointRounding.AwayFromZero) : Math.Round(looseMm, 1, MidpointRounding.AwayFromZero);
        Assert.Contains(FormattableString.Invariant($"is {shown}{unit} too short"), text, StringComparison.Ordinal);
        Assert.DoesNotContain(units == "us" ? " mm" : " in ", text, StringComparison.Ordinal);
    }

    // The range is the caller's own: the text must not say that it is what suits road cars.
    [Fact]
    public async Task A_range_asked_for_is_called_that()
    {
        var body = Example("ride.request.json");
        body["dampingRatioRange"] = JsonNode.Parse("""{"from":0.3,"to":0.6}""");

        var dampers = (await Answer("/v1/handling/ride", body)).GetProperty("front").GetProperty("dampers");

        Assert.Contains("0.30 to 0.60 is the range asked for", dampers.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal((0.3, 0.6, "the request"), (dampers.GetProperty("dampingRatioRange").GetProperty("from").GetDouble(), dampers.GetProperty("dampingRatioRange").GetProperty("to").GetDouble(), dampers.GetProperty("rangeSource").GetString()!));
    }

    private static JsonObject Example(string file) => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf(file)))!.AsObject();

    private async Task<JsonElement> Answer(string path, JsonObject body)
    {
        using var response = await fixture.Client.PostAsync(path, body.ToJsonString());
        return JsonDocument.Parse(await Calls.Text(response)).RootElement;
    }
}
