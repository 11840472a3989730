using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>The camber target over HTTP, held to the cornering call it rests on.</summary>
public sealed class CamberTargetCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/handling/camber-target";

    [Fact]
    public async Task The_camber_found_stands_the_outer_wheel_flat_in_the_corner_asked_for()
    {
        var body = Single(0.9, 60);
        var answer = await Answer(body);
        var camber = answer.GetProperty("staticCamberDeg").GetProperty("value").GetDouble();
        var turn = new JsonObject { ["vehicle"] = body["vehicle"]!.DeepClone(), ["lateralG"] = 0.9, ["turn"] = "left", ["cornerRadiusM"] = 60 };
        turn["vehicle"]!["front"]!["alignment"]!["camberDeg"] = camber;

        var stands = JsonDocument.Parse(await Calls.Text(await fixture.Client.PostAsync("/v1/handling/cornering", turn.ToJsonString()))).RootElement;

        Assert.Equal(0, stands.GetProperty("wheels").GetProperty("frontRight").GetProperty("inclinationDeg").GetDouble(), 1e-6);
    }

    // What the points leave open has no direction: it is told as that.
    [Fact]
    public async Task The_error_of_the_points_is_told_by_what_it_leaves_open()
    {
        var body = Single(0.9, 60);
        body["vehicle"]!["front"]!["suspension"]!["points"]!["pointErrorMm"] = 1;
        var sensitivity = Assert.Single((await Answer(body)).GetProperty("sensitivities").EnumerateArray(), one => one.GetProperty("input").GetString() == "/vehicle/front/suspension/points/pointErrorMm");

        Assert.Matches("^Each millimetre by which the front suspension's points err leaves [0-9.]+° of this camber open[.]$", sensitivity.GetProperty("text").GetString());
    }

    [Fact]
    public async Task One_lateral_acceleration_a_list_of_one_corner_and_a_histogram_of_one_bin_are_the_same()
    {
        var single = await Camber(Single(0.9, 60));
        var list = Single(0.9, 60);
        list.Remove("lateralG");
        list["corners"] = new JsonArray(new JsonObject { ["lateralG"] = 0.9, ["sharePct"] = 100 });
        var histogram = Single(0.9, 60);
        histogram.Remove("lateralG");
        histogram["histogramCsv"] = "lateralG,count\n0.9,17\n";

        Assert.Equal(single, await Camber(list), 1e-6);
        Assert.Equal(single, await Camber(histogram), 1e-6);
    }

    [Fact]
    public async Task A_right_turn_alone_asks_the_same_of_the_left_wheel()
    {
        var left = await Answer(Single(0.9, 60));
        var body = Single(0.9, 60);
        body["turn"] = "right";
        var right = await Answer(body);

        Assert.Equal(left.GetProperty("staticCamberDeg").GetProperty("value").GetDouble(), right.GetProperty("staticCamberDeg").GetProperty("value").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, left.GetProperty("leftStaticCamberDeg").ValueKind);
        Assert.Equal(JsonValueKind.Null, right.GetProperty("rightStaticCamberDeg").ValueKind);
    }

    [Fact]
    public async Task Stiffer_front_springs_ask_for_less_and_the_sensitivity_says_how_much_less()
    {
        var soft = await Answer(Single(0.9, 60));
        var body = Single(0.9, 60);
        body["vehicle"]!["front"]!["spring"]!["rateNPerMm"] = 28;
        var stiff = await Camber(body);
        var slope = soft.GetProperty("sensitivities").EnumerateArray()
            .Single(one => one.GetProperty("input").GetString() == "/vehicle/front/spring/rateNPerMm").GetProperty("degPerUnit").GetDouble();

        Assert.True(slope > 0);
        Assert.Equal(soft.GetProperty("staticCamberDeg").GetProperty("value").GetDouble() + slope, stiff, 0.1 * slope);
    }

    [Theory]
    [InlineData("lateralG,sharePct\n0.9\n", "/histogramCsv")]
    [InlineData("speed,sharePct\n0.9,50\n", "/histogramCsv")]
    [InlineData("lateralG,sharePct\nfast,50\n", "/histogramCsv")]
    [InlineData("lateralG,sharePct,turn\n0.9,50,north\n", "/histogramCsv")]
    [InlineData("lateralG,sharePct\n0,50\n", "/histogramCsv")]
    [InlineData("lateralG,sharePct\n3.5,50\n", "/histogramCsv")]
    [InlineData("", "/histogramCsv")]
    public async Task A_table_that_cannot_be_read_is_refused_by_its_line(string csv, string place)
    {
        var body = Single(0.9, 60);
        body.Remove("lateralG");
        body["histogramCsv"] = csv;

        using var response = await fixture.Client.PostAsync(Path, body.ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains(JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray(), one => one.GetProperty("pointer").GetString() == place);
    }

    [Fact]
    public async Task Two_forms_of_cornering_or_none_are_refused()
    {
        var both = Single(0.9, 60);
        both["histogramCsv"] = "lateralG,count\n0.9,17\n";
        var none = Single(0.9, 60);
        none.Remove("lateralG");

        Assert.Equal(400, (int)(await fixture.Client.PostAsync(Path, both.ToJsonString())).StatusCode);
        Assert.Equal(400, (int)(await fixture.Client.PostAsync(Path, none.ToJsonString())).StatusCode);
    }

    // A corner known by its speed keeps it: the radius follows the lateral acceleration.
    [Fact]
    public async Task By_speed_the_sensitivity_to_lateral_acceleration_is_that_at_the_same_speed()
    {
        var body = Single(0.9, 60);
        body.Remove("cornerRadiusM");
        body["speedKmh"] = 83;
        var slope = (await Answer(body)).GetProperty("sensitivities").EnumerateArray().Single(one => one.GetProperty("input").GetString() == "/lateralG").GetProperty("degPerUnit").GetDouble();
        var now = await Camber(body);
        body["lateralG"] = 0.909;

        Assert.Equal((await Camber(body) - now) / 0.009, slope, 0.005 * Math.Abs(slope));
    }

    [Fact]
    public async Task A_corner_beyond_what_the_car_holds_is_answered_and_warned_of()
    {
        var body = Single(0.9, 60);
        body["heldLateralG"] = 0.8;

        Assert.Contains((await Answer(body)).GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "beyondLimit");
    }

    [Fact]
    public async Task A_car_that_would_roll_over_is_refused_with_the_limit()
    {
        using var response = await fixture.Client.PostAsync(Path, Single(2.8, 60).ToJsonString());

        Assert.Equal(422, (int)response.StatusCode);
        var error = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors")[0];
        Assert.InRange(error.GetProperty("limits").GetProperty("maximum").GetDouble(), 1, 1.6);
    }

    // 1 lb/in is 0.175127 N/mm (NIST SP 811): the same slope for 10 N/mm and for 50 lb/in.
    [Theory]
    [InlineData("metric", "10 N/mm more front spring rate", 10)]
    [InlineData("us", "50 lb/in more front spring rate", 50 * 0.175127)]
    public async Task The_summary_has_at_most_five_sentences_and_a_sensitivity_is_told_in_the_units_asked_for(string units, string step, double stepNPerMm)
    {
        using var response = await fixture.Client.PostAsync(Path + "?units=" + units, File.ReadAllText(ExampleCall.FileOf("camber-target.request.json")));
        var answer = JsonDocument.Parse(await Calls.Text(response)).RootElement;
        var summary = answer.GetProperty("summary").GetString()!;
        var spring = answer.GetProperty("sensitivities").EnumerateArray().Single(one => one.GetProperty("input").GetString() == "/vehicle/front/spring/rateNPerMm");
        var changeDeg = Math.Round(spring.GetProperty("degPerUnit").GetDouble() * stepNPerMm, 2, MidpointRounding.AwayFromZero);

        Assert.InRange(summary.Split(". ").Length, 3, 5);
        Assert.True(changeDeg > 0);
        Assert.Equal(FormattableString.Invariant($"{step} makes this camber {changeDeg:0.00}° less negative."), spring.GetProperty("text").GetString());
        Assert.All(answer.GetProperty("sensitivities").EnumerateArray(), one => Assert.DoesNotContain(units == "us" ? " mm" : " in ", one.GetProperty("text").GetString(), StringComparison.Ordinal));
    }

    private static JsonObject Single(double lateralG, double radiusM)
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("camber-target.request.json")))!.AsObject();
        body.Remove("corners");

        // On a car changed the scale of grip would be found anew.
        body.Remove("heldLateralG");
        body["lateralG"] = lateralG;
        body["cornerRadiusM"] = radiusM;
        return body;
    }

    private async Task<double> Camber(JsonObject body) => (await Answer(body)).GetProperty("staticCamberDeg").GetProperty("value").GetDouble();

    private async Task<JsonElement> Answer(JsonObject body)
    {
        using var response = await fixture.Client.PostAsync(Path, body.ToJsonString());
        return JsonDocument.Parse(await Calls.Text(response)).RootElement;
    }
}
