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
        var answer = await Answer(Example());

        foreach (var name in Zones)
        {
            var zone = answer.GetProperty("zones").GetProperty(name);
            Assert.Equal("estimated", zone.GetProperty("status").GetString());
            foreach (var member in (string[])["ratePer1000KmMm", "ratePerLapMm", "kmLeft", "lapsLeft"])
            {
                var range = zone.GetProperty(member);
                Assert.True(range.GetProperty("lower").GetDouble() < range.GetProperty("value").GetDouble());
                Assert.True(range.GetProperty("value").GetDouble() < range.GetProperty("upper").GetDouble());
                Assert.Equal(90, range.GetProperty("levelPct").GetDouble());
            }
        }

        Assert.Equal("outer", answer.GetProperty("endsFirst").GetProperty("zone").GetString());
        Assert.True(answer.GetProperty("turning").GetProperty("change").GetProperty("gainedLaps").GetDouble() >= 0);
        Assert.True(answer.GetProperty("swapping").GetProperty("change").GetProperty("gainedLaps").GetDouble() > 0);
        Assert.Equal(1.25, answer.GetProperty("treadwear").GetProperty("lifeRatio").GetProperty("value").GetDouble(), 1e-6);
        var perLap = answer.GetProperty("zones").GetProperty("outer").GetProperty("ratePerLapMm").GetProperty("value").GetDouble();
        Assert.Equal(perLap / 6.4 * 148, answer.GetProperty("cost").GetProperty("perLapAmount").GetProperty("value").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task Three_readings_are_unknown_with_the_reason_and_the_wear_so_far()
    {
        var body = First(3);

        var zone = (await Answer(body)).GetProperty("zones").GetProperty("outer");

        Assert.Equal("unknown", zone.GetProperty("status").GetString());
        Assert.Equal(1.1, zone.GetProperty("wornMm").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, zone.GetProperty("lapsLeft").ValueKind);
        Assert.Contains("there are 3", zone.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_clock_that_stands_still_is_null_with_the_reason()
    {
        var body = Example().Without("/otherTyre");
        for (var i = 0; i < 6; i++) body.With($"/readings/{i}/trackLaps", 7).With($"/readings/{i}/roadKm", 1000 * i);

        var answer = await Answer(body);

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("zones").GetProperty("inner").GetProperty("ratePerLapMm").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one =>
            one.GetProperty("id").GetString() == "/zones/inner/lapsLeft" && one.GetProperty("reason").GetString()!.Contains("stood still", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/readings/3/roadKm", 2000, "/readings/3/roadKm")]
    [InlineData("/readings/3/trackLaps", 21, "/readings/3/trackLaps")]
    [InlineData("/readings/3/depthMm/centre", 8.1, "/readings/3/depthMm/centre")]
    [InlineData("/newDepthMm", 7.4, "/readings/0/depthMm/centre")]
    [InlineData("/limitDepthMm", 8.0, "/limitDepthMm")]
    [InlineData("/tyrePrice/currency", "€", "/tyrePrice/currency")]
    [InlineData("/otherTyre/readings/4/roadKm", 10, "/otherTyre/readings/4/roadKm")]
    public async Task What_contradicts_itself_is_named_in_its_place(string place, object value, string named)
    {
        var body = value is string text ? Example().With(place, text) : Example().With(place, Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Contains(named, await Pointers(body));
    }

    [Fact]
    public async Task Every_fault_is_in_one_answer()
    {
        var body = Example().With("/readings/1/roadKm", 20).With("/readings/2/depthMm/inner", 25).With("/treadwearGrade", "many");

        var pointers = await Pointers(body);

        Assert.Contains("/readings/2/depthMm/inner", pointers);
        Assert.Contains("/treadwearGrade", pointers);
    }

    [Fact]
    public async Task One_reading_is_too_few()
    {
        Assert.Contains("/readings", await Pointers(First(1)));
    }

    // The legal limit, where nobody gave one: the answer warns first.
    [Fact]
    public async Task A_worn_tyre_is_answered_with_the_warning_first()
    {
        var body = Example().Without("/newDepthMm").Without("/otherTyre");
        for (var i = 0; i < 6; i++)
            foreach (var zone in Zones) body.With($"/readings/{i}/depthMm/{zone}", 2.2 - (0.2 * i));

        var answer = await Answer(body);

        Assert.Equal("wornOut", answer.GetProperty("cautions")[0].GetProperty("code").GetString());
        Assert.Equal(0, answer.GetProperty("zones").GetProperty("outer").GetProperty("lapsLeft").GetProperty("value").GetDouble());
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

    /// <summary>The example with its first readings only.</summary>
    private static JsonObject First(int count)
    {
        var body = Example();
        body["readings"] = new JsonArray([.. body["readings"]!.AsArray().Take(count).Select(one => one!.DeepClone())]);
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
