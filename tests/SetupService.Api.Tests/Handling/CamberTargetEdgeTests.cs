using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Handling.Cornering;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>The camber target where requests are at an edge: hardly any cornering, tables as loggers write them, forms that contradict, figures told by where they stand.</summary>
public sealed class CamberTargetEdgeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/handling/camber-target";

    // So little cornering leaves figures that no double holds; it is refused, at any place it may stand.
    [Theory]
    [InlineData(0)]
    [InlineData(5e-324)]
    [InlineData(1e-300)]
    [InlineData(1e-6)]
    [InlineData(0.0499)]
    public async Task Hardly_any_cornering_is_refused_in_each_form(double lateralG)
    {
        Assert.Equal(["/lateralG inconsistent"], (await fixture.Client.RefusalOf(Path, Single(lateralG).ToJsonString())).FaultsOf());
        Assert.Equal(["/corners inconsistent"], (await fixture.Client.RefusalOf(Path, Listed((lateralG, 1), (0.9, 0)).ToJsonString())).FaultsOf());
        Assert.Equal(["/histogramCsv inconsistent"], (await fixture.Client.RefusalOf(Path, Table(FormattableString.Invariant($"lateralG,count\n{lateralG:R},1\n")).ToJsonString())).FaultsOf());
    }

    [Theory]
    [InlineData("/lateralG", "5", "/lateralG outOfRange")]
    [InlineData("/lateralG", "\"much\"", "/lateralG wrongType")]
    [InlineData("/lateralG", "1e999", "/lateralG notFinite")]
    public async Task A_lateral_acceleration_refused_for_itself_is_one_fault(string place, string raw, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Path, Single(0.9).WithRaw(place, raw))).FaultsOf());

    [Theory]
    [InlineData("\"all\"", "/corners wrongType")]
    [InlineData("[]", "/corners tooFew")]
    [InlineData("""[{ "lateralG": 0.9 }]""", "/corners/0/sharePct required")]
    [InlineData("""[{ "lateralG": 0.9, "sharePct": 100, "cornerRadiusM": 50, "speedKmh": 70 }]""", "/corners/0/speedKmh inconsistent")]
    public async Task A_list_refused_for_itself_is_one_fault(string raw, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Path, Listed((0.9, 1)).WithRaw("/corners", raw))).FaultsOf());

    [Theory]
    [InlineData("lateralG,count\r\n0.9,5\r\n")]
    [InlineData("\ufefflateralG,count\n0.9,5\n\n\n")]
    [InlineData("lateralG;count\n0.9;5\n")]
    [InlineData("\"lateralG\",\"count\"\n\"0.9\",\"5\"")]
    [InlineData("count , lateralG\n 5 , 0.9 \n")]
    public async Task Tables_as_loggers_write_them_are_read(string csv) =>
        Assert.Equal((await Answer(Single(0.9))).Number("staticCamberDeg", "value"), (await Answer(Table(csv))).Number("staticCamberDeg", "value"), 1e-6);

    [Theory]
    [InlineData("lateralG,sharePct,count\n0.9,5,100\n", "line 1: sharePct and count")]
    [InlineData("lateralG,count,tag\n0.9,5,x\n", "line 1: the column")]
    [InlineData("lateralG,count\n0.5,1\nNaN,1\n", "line 3: lateralG")]
    [InlineData("lateralG,count,speedKmh\n0.5,1,60\n0.9,1,5\n", "line 3: at 5 km/h")]
    [InlineData("lateralG,count,turn\n-0.9,1,left\n", "line 2: lateralG is negative")]
    public async Task A_table_is_refused_with_the_line(string csv, string words) =>
        Assert.Contains(words, (await fixture.Client.RefusalOf(Path, Table(csv).ToJsonString())).OnlyFault().Message(), StringComparison.Ordinal);

    [Fact]
    public async Task A_table_may_have_a_hundred_rows_and_no_more()
    {
        static string Rows(int count) => "lateralG,count\n" + string.Concat(Enumerable.Repeat("0.9,1\n", count));

        Assert.Equal((await Answer(Single(0.9))).Number("staticCamberDeg", "value"), (await Answer(Table(Rows(100)))).Number("staticCamberDeg", "value"), 1e-6);
        Assert.Contains("line 102", (await fixture.Client.RefusalOf(Path, Table(Rows(101)).ToJsonString())).OnlyFault().Message(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("left")]
    [InlineData("right")]
    public async Task Signs_tell_the_way_where_any_is_negative_whatever_the_request_says_of_corners_that_do_not(string? turn)
    {
        var body = Table("lateralG,count\n0.9,5\n-0.8,5\n");
        if (turn is not null) body["turn"] = turn;
        var answer = await Answer(body);

        Assert.Equal(["left", "right"], answer.GetProperty("corners").EnumerateArray().Select(one => one.GetProperty("turn").GetString()));
        Assert.Empty(answer.Assumed("/turn"));
    }

    [Fact]
    public async Task A_table_without_signs_turns_as_the_request_says()
    {
        var body = Table("lateralG,count\n0.9,5\n0.8,5\n");
        body["turn"] = "right";

        Assert.All((await Answer(body)).GetProperty("corners").EnumerateArray(), one => Assert.Equal("right", one.GetProperty("turn").GetString()));
    }

    [Fact]
    public async Task That_corners_are_taken_as_left_ones_is_said_only_where_nobody_said_it()
    {
        var said = Listed((0.9, 1));
        said["corners"]![0]!["turn"] = "left";

        Assert.Empty((await Answer(said)).Assumed("/turn"));
        Assert.Single((await Answer(Listed((0.9, 1)))).Assumed("/turn"));
    }

    [Fact]
    public async Task A_table_is_the_list_of_its_rows() =>
        await (from lateralG in Gen.Double[0.06, 0.95]
               from radiusM in Gen.Double[10, 250]
               from share in Gen.Double[0.1, 60]
               from isLeft in Gen.Bool
               select (lateralG, radiusM, share, turn: isLeft ? "left" : "right")).Array[1, 6].SampleAsync(async rows =>
        {
            var list = Single(0.9);
            list.Remove("lateralG");
            list["corners"] = new JsonArray([.. rows.Select(row => new JsonObject { ["lateralG"] = row.lateralG, ["cornerRadiusM"] = row.radiusM, ["sharePct"] = row.share, ["turn"] = row.turn })]);
            var csv = "turn,lateralG,sharePct,cornerRadiusM\n" + string.Concat(rows.Select(row => FormattableString.Invariant($"{row.turn},{row.lateralG:R},{row.share:R},{row.radiusM:R}\n")));
            var (ofList, ofTable) = (await Answer(list), await Answer(Table(csv)));

            Assert.Equal(ofList.Number("staticCamberDeg", "value"), ofTable.Number("staticCamberDeg", "value"));
            Assert.Equal(ofList.GetProperty("corners").GetRawText(), ofTable.GetProperty("corners").GetRawText());
        }, iter: 25);

    [Fact]
    public async Task Each_sensitivity_has_the_value_that_stands_at_its_place()
    {
        foreach (var body in (JsonObject[])[Single(0.9), BySpeed()])
        {
            var found = 0;
            var places = BodyPlaces.Of(body).ToHashSet();
            foreach (var one in (await Answer(body)).GetProperty("sensitivities").EnumerateArray())
            {
                var place = one.GetProperty("input").GetString()!;
                if (!places.Contains(place) || BodyPlaces.At(body, place) is not JsonValue value || !value.TryGetValue<double>(out var number)) continue;
                Assert.Equal(number, one.Number("value"), 1e-6 * (1 + Math.Abs(number)));
                found++;
            }

            Assert.True(found > 10, $"{found}");
        }
    }

    // v² = a r: with the acceleration as it is the radius goes with the square of the speed.
    [Fact]
    public async Task A_speed_counts_per_kmh()
    {
        var slope = (await Answer(BySpeed())).GetProperty("sensitivities").EnumerateArray().Single(one => one.GetProperty("input").GetString() == "/speedKmh");
        var moved = ((await Answer(BySpeed(80.4))).Number("staticCamberDeg", "value") - (await Answer(BySpeed(79.6))).Number("staticCamberDeg", "value")) / 0.8;

        Assert.Equal("Kmh", slope.GetProperty("unit").GetString());
        Assert.Equal(moved, slope.Number("degPerUnit"), 0.05 * Math.Abs(moved));
    }

    [Fact]
    public async Task A_list_tells_its_lateral_acceleration_from_its_radius_by_the_unit()
    {
        var units = (await Answer(Listed((0.9, 1), (0.6, 2)))).GetProperty("sensitivities").EnumerateArray()
            .Where(one => one.GetProperty("input").GetString() == "/corners").Select(one => one.GetProperty("unit").GetString());

        Assert.Equal(["G", "M"], units.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_camber_beyond_what_the_contract_knows_is_refused()
    {
        var body = Single(1).With("/targetInclinationDeg", -10).Without("/vehicle/front/suspension").Without("/vehicle/rear/antiRollBar").Without("/vehicle/front/bumpStop")
            .Without("/vehicle/front/bumpTravelMm").Without("/vehicle/front/reboundTravelMm").Without("/vehicle/rear/bumpTravelMm").Without("/vehicle/rear/reboundTravelMm")
            .With("/vehicle/front/spring/rateNPerMm", 12).With("/vehicle/rear/spring/rateNPerMm", 14).With("/vehicle/front/antiRollBar/rollRateNmPerDeg", 0);
        var fault = (await fixture.Client.NotComputableOf(Path, body.ToJsonString())).OnlyFault();

        Assert.Equal("/lateralG", fault.GetProperty("pointer").GetString());
        Assert.Contains("15°", fault.Message(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_car_said_to_hold_more_than_it_stands_is_answered_and_told_so() =>
        Assert.Contains((await Answer(Single(0.9).With("/heldLateralG", 2.8))).GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/heldLateralG");

    [Fact]
    public async Task Casters_keep_to_the_range_given()
    {
        var within = await Answer(Single(0.9).With("/vehicle/front/adjustable", JsonNode.Parse("""{ "casterDeg": { "from": 5, "to": 8 } }""")));
        Assert.All(within.GetProperty("withCaster").EnumerateArray(), one => Assert.InRange(one.Number("casterDeg"), 5, 8));

        var outside = Single(0.9).With("/vehicle/front/adjustable", JsonNode.Parse("""{ "casterDeg": { "from": 5, "to": 8 } }""")).With("/castersDeg", JsonNode.Parse("[7, 15]"));
        Assert.Equal(["/castersDeg/1 inconsistent"], (await fixture.Client.RefusalOf(Path, outside.ToJsonString())).FaultsOf());
    }

    [Fact]
    public async Task What_remains_at_the_nearest_setting_is_what_the_car_does_with_it()
    {
        var answer = await Answer(Single(0.9).With("/vehicle/front/adjustable", JsonNode.Parse("""{ "camberDeg": { "from": -2.5, "to": -0.5 } }""")));
        var set = await Answer(Single(0.9).With("/vehicle/front/alignment/camberDeg", answer.GetProperty("nearest").Number("staticCamberDeg")));

        Assert.Equal((-2.5, false), (answer.GetProperty("nearest").Number("staticCamberDeg"), answer.GetProperty("isReachable").GetBoolean()));
        Assert.Equal(set.GetProperty("before").Number("meanInclinationDeg"), answer.GetProperty("nearest").Number("meanInclinationDeg"), 1e-6);
    }

    private static JsonObject Single(double lateralG)
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("camber-target.request.json")))!.AsObject();
        body.Remove("corners");

        // On a car changed the scale of grip would be found anew.
        body.Remove("heldLateralG");
        body["vehicle"]!["front"]!.AsObject().Remove("adjustable");
        body["lateralG"] = lateralG;
        body["cornerRadiusM"] = 60;
        return body;
    }

    private static JsonObject BySpeed(double speedKmh = 80)
    {
        var body = Single(0.9);
        body.Remove("cornerRadiusM");
        body["speedKmh"] = speedKmh;
        return body;
    }

    private static JsonObject Listed(params (double LateralG, double SharePct)[] corners)
    {
        var body = Single(0.9);
        body.Remove("lateralG");
        body["corners"] = new JsonArray([.. corners.Select(one => new JsonObject { ["lateralG"] = one.LateralG, ["sharePct"] = one.SharePct })]);
        return body;
    }

    private static JsonObject Table(string csv)
    {
        var body = Single(0.9);
        body.Remove("lateralG");
        body["histogramCsv"] = csv;
        return body;
    }

    private Task<JsonElement> Answer(JsonObject body) => fixture.Client.AnswerOf(Path, body);
}
