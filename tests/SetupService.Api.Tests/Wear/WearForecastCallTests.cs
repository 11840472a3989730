using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Drawings;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>The forecast over HTTP.</summary>
public sealed class WearForecastCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/wear/forecast";

    private static readonly string[] Zones = ["outer", "centre", "inner"];

    [Fact]
    public async Task The_example_is_estimated_in_every_zone_with_ranges_in_order()
    {
        var answer = await Answer(Example().With("/treadwearGrade", 240).With("/otherTreadwearGrade", 300));

        Assert.Equal(["frontLeft", "frontRight", "rearLeft", "rearRight"], answer.GetProperty("tyres").EnumerateArray().Select(tyre => tyre.GetProperty("position").GetString()!));
        foreach (var tyre in answer.GetProperty("tyres").EnumerateArray())
        {
            foreach (var name in Zones)
            {
                var zone = tyre.GetProperty("zones").GetProperty(name);
                Assert.Equal("estimated", zone.GetProperty("status").GetString());
                foreach (var member in (string[])["ratePer1000KmMm", "ratePerLapMm", "kmLeft", "lapsLeft"])
                {
                    var range = zone.GetProperty(member);
                    Assert.True(range.GetProperty("lower").GetDouble() >= 0);
                    Assert.True(range.GetProperty("lower").GetDouble() < range.GetProperty("value").GetDouble());
                    if (range.GetProperty("upper").ValueKind != JsonValueKind.Null) Assert.True(range.GetProperty("value").GetDouble() < range.GetProperty("upper").GetDouble());
                    Assert.Equal(90, range.GetProperty("levelPct").GetDouble());
                }
            }
        }

        var first = answer.GetProperty("tyres")[0];
        Assert.Equal("outer", first.GetProperty("endsFirst").GetProperty("zone").GetString());
        Assert.True(first.GetProperty("turning").GetProperty("change").GetProperty("gainedLaps").GetDouble() >= 0);
        Assert.True(answer.GetProperty("swaps")[0].GetProperty("change").GetProperty("gainedLaps").GetDouble() > 0);
        Assert.Equal(1.25, answer.GetProperty("treadwear").GetProperty("lifeRatio").GetProperty("value").GetDouble(), 1e-6);
        var perLap = first.GetProperty("zones").GetProperty("outer").GetProperty("ratePerLapMm").GetProperty("value").GetDouble();
        Assert.Equal(perLap / 6.4 * 148, first.GetProperty("cost").GetProperty("perLapAmount").GetProperty("value").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task Two_or_three_readings_are_rough_and_one_is_unknown_with_the_wear_so_far()
    {
        foreach (var count in (int[])[2, 3])
        {
            var answer = await Answer(First(count));
            var zone = answer.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer");
            Assert.Equal("rough", zone.GetProperty("status").GetString());
            var member = count == 2 ? zone.GetProperty("sameMix").GetProperty("lapsLeft") : zone.GetProperty("lapsLeft");
            Assert.True(member.GetProperty("lower").GetDouble() < member.GetProperty("upper").GetDouble());
            Assert.Contains("Roughly", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
            Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("value").ValueKind == JsonValueKind.Number && one.GetProperty("value").GetDouble() == 0.015);
        }

        var one = (await Answer(First(1))).GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer");
        Assert.Equal("unknown", one.GetProperty("status").GetString());
        Assert.Equal(0.1, one.GetProperty("wornMm").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, one.GetProperty("lapsLeft").ValueKind);
        Assert.Contains("One reading", one.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clock_that_stands_still_or_is_not_given_is_null_with_the_reason()
    {
        var body = Example();
        for (var i = 0; i < 6; i++) body.With($"/tyres/0/readings/{i}/trackLaps", 7).With($"/tyres/0/readings/{i}/roadKm", 1000 * i).Without($"/tyres/1/readings/{i}/trackLaps");

        var answer = await Answer(body);

        foreach (var (tyre, words) in ((int, string)[])[(0, "stood still"), (1, "not given")])
        {
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("tyres")[tyre].GetProperty("zones").GetProperty("inner").GetProperty("ratePerLapMm").ValueKind);
            Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one =>
                one.GetProperty("id").GetString() == $"/tyres/{tyre}/zones/inner/lapsLeft" && one.GetProperty("reason").GetString()!.Contains(words, StringComparison.Ordinal));
        }

        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/tyres/1/readings/0/trackLaps");
    }

    // Depths at any places across: the parabola through them at the three usual ones.
    [Fact]
    public async Task Zones_serve_as_the_three_depths_do()
    {
        var body = Example();
        for (var i = 0; i < 6; i++)
        {
            var depth = body["tyres"]![0]!["readings"]![i]!["depthMm"]!;
            var zones = new JsonArray(new JsonObject { ["acrossPct"] = 15, ["depthMm"] = depth["outer"]!.GetValue<double>() }, new JsonObject { ["acrossPct"] = 50, ["depthMm"] = depth["centre"]!.GetValue<double>() }, new JsonObject { ["acrossPct"] = 85, ["depthMm"] = depth["inner"]!.GetValue<double>() });
            body.Without($"/tyres/0/readings/{i}/depthMm").With($"/tyres/0/readings/{i}/zones", zones);
        }

        var (zoned, plain) = ((await Answer(body)).GetProperty("tyres")[0], (await Answer(Example())).GetProperty("tyres")[0]);
        foreach (var name in Zones)
            Assert.Equal(plain.GetProperty("zones").GetProperty(name).GetProperty("ratePerLapMm").GetProperty("value").GetDouble(), zoned.GetProperty("zones").GetProperty(name).GetProperty("ratePerLapMm").GetProperty("value").GetDouble(), 1e-8);
    }

    [Theory]
    [InlineData("/tyres/0/readings/3/roadKm", 2000, "/tyres/0/readings/3/roadKm")]
    [InlineData("/tyres/0/readings/3/trackLaps", 21, "/tyres/0/readings/3/trackLaps")]
    [InlineData("/tyres/0/readings/3/depthMm/centre", 8.1, "/tyres/0/readings/3/depthMm/centre")]
    [InlineData("/tyres/0/newDepthMm", 7.4, "/tyres/0/readings/0/depthMm/centre")]
    [InlineData("/limitDepthMm", 8.0, "/limitDepthMm")]
    [InlineData("/tyrePrice/currency", "€", "/tyrePrice/currency")]
    [InlineData("/tyres/2/readings/4/roadKm", 10, "/tyres/2/readings/4/roadKm")]
    [InlineData("/tyres/3/position", "rearLeft", "/tyres/3/position")]
    public async Task What_contradicts_itself_is_named_in_its_place(string place, object value, string named)
    {
        var body = value is string text ? Example().With(place, text) : Example().With(place, Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Contains(named, await Pointers(body));
    }

    [Fact]
    public async Task Every_fault_is_in_one_answer()
    {
        var body = Example().With("/tyres/1/readings/1/roadKm", 20).With("/tyres/0/readings/2/depthMm/inner", 25).With("/treadwearGrade", "many").Without("/tyres/2/readings/3/trackLaps").Without("/tyres/3/readings/0/depthMm");

        var pointers = await Pointers(body);

        Assert.Contains("/tyres/1/readings/1/roadKm", pointers);
        Assert.Contains("/tyres/0/readings/2/depthMm/inner", pointers);
        Assert.Contains("/tyres/2/readings/3/trackLaps", pointers);
        Assert.Contains("/tyres/3/readings/0/depthMm", pointers);
        Assert.Contains("/treadwearGrade", pointers);
    }

    [Fact]
    public async Task No_reading_is_too_few_and_none_may_lack_both_clocks()
    {
        Assert.Contains("/tyres/0/readings", await Pointers(First(0)));
        Assert.Contains("/tyres/0/readings/1/roadKm", await Pointers(First(2).Without("/tyres/0/readings/1/roadKm").Without("/tyres/0/readings/1/trackLaps")));
    }

    // What a metre or a kilometre is does not stand in a text for somebody who drives miles.
    [Fact]
    public async Task With_us_units_no_text_speaks_of_kilometres()
    {
        foreach (var body in (JsonObject[])[Example(), First(3), First(1)])
        {
            using var response = await fixture.Client.PostAsync(Path + "?units=us", body.ToJsonString());
            var answer = JsonDocument.Parse(await Calls.Text(response)).RootElement;
            foreach (var text in Texts(answer)) Assert.DoesNotMatch(@"\d ?km\b|kilomet", text.Replace("mm per 1000 km", "", StringComparison.Ordinal));
        }

        static IEnumerable<string> Texts(JsonElement node) => node.ValueKind switch
        {
            JsonValueKind.Object => node.EnumerateObject().Where(one => one.Name != "source").SelectMany(one => Texts(one.Value)),
            JsonValueKind.Array => node.EnumerateArray().SelectMany(Texts),
            JsonValueKind.String => [node.GetString()!],
            _ => [],
        };
    }

    // The legal limit, where nobody gave one: the answer warns first.
    [Fact]
    public async Task A_worn_tyre_is_answered_with_the_warning_first()
    {
        var body = First(6).Without("/tyres/0/newDepthMm");
        for (var i = 0; i < 6; i++)
            foreach (var zone in Zones) body.With($"/tyres/0/readings/{i}/depthMm/{zone}", 2.2 - (0.2 * i));

        var answer = await Answer(body);

        Assert.Equal("wornOut", answer.GetProperty("cautions")[0].GetProperty("code").GetString());
        Assert.Equal(0, answer.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer").GetProperty("lapsLeft").GetProperty("value").GetDouble());
    }

    [Fact]
    public async Task Sentences_follow_the_units_asked_for()
    {
        using var response = await fixture.Client.PostAsync(Path + "?units=us", Example().ToJsonString());
        var summary = JsonDocument.Parse(await Calls.Text(response)).RootElement.GetProperty("summary").GetString()!;

        Assert.Contains("miles", summary, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", summary, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task The_picture_can_be_read_and_does_nothing(string units)
    {
        using var response = await fixture.Client.PostAsync($"{Path}/chart?units={units}", Example().ToJsonString());
        var picture = new SvgPicture(await Calls.Text(response));

        Harmlessness.Holds(picture);
        Legibility.TextsKeepClear(picture);
        Legibility.LettersHaveAtLeast(12, picture);
        Assert.NotNull(picture.Find("panel-3"));
    }

    [Fact]
    public async Task A_picture_without_a_forecast_shows_the_readings()
    {
        var body = First(3);
        using var response = await fixture.Client.PostAsync(Path + "/chart", body.ToJsonString());

        Assert.Contains("readings", await Calls.Text(response), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason()
    {
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf("wear-forecast.request.json"));
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Path, Gen.Const(text).Select(sound => JsonNode.Parse(sound)!.AsObject()), 300);
    }

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("wear-forecast.request.json")))!.AsObject();

    /// <summary>The example's first tyre alone, with its first readings only.</summary>
    private static JsonObject First(int count)
    {
        var body = Example();
        var tyre = body["tyres"]![0]!.DeepClone();
        tyre["readings"] = new JsonArray([.. tyre["readings"]!.AsArray().Take(count).Select(one => one!.DeepClone())]);
        body["tyres"] = new JsonArray(tyre);
        return body;
    }

    private async Task<JsonElement> Answer(JsonObject body) => await fixture.Client.AnswerOf(Path, body);

    private async Task<string[]> Pointers(JsonObject body)
    {
        using var response = await fixture.Client.PostAsync(Path, body.ToJsonString());
        Assert.Equal(400, (int)response.StatusCode);
        return [.. JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()!)];
    }
}
