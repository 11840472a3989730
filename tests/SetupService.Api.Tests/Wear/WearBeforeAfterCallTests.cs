using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Drawings;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>Before and after over HTTP.</summary>
public sealed class WearBeforeAfterCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/wear/before-after";

    // The example, three track days a side: the outer shoulder of the front left wears 0.036 mm a lap before and 0.024 after, the centre 0.0185 both.
    [Fact]
    public async Task The_example_says_first_that_it_worked_and_where()
    {
        var answer = await fixture.Client.AnswerOf(Path, Example());

        Assert.Equal("better", answer.GetProperty("outcome").GetString());
        Assert.StartsWith("It worked.", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        var tyre = answer.GetProperty("tyres")[0];
        Assert.Equal("track", tyre.GetProperty("clock").GetString());
        Assert.Equal("better", tyre.GetProperty("outcome").GetString());
        Assert.True(tyre.GetProperty("outerToCentre").GetProperty("isShown").GetBoolean());
        Assert.Equal(0, tyre.GetProperty("outerToCentre").GetProperty("furtherSessionCount").GetInt32());
        Assert.False(tyre.GetProperty("zones").GetProperty("centre").GetProperty("rate").GetProperty("isShown").GetBoolean());
        foreach (var rear in (int[])[2, 3]) Assert.Equal("notShown", answer.GetProperty("tyres")[rear].GetProperty("outcome").GetString());
    }

    // The same readings as one session a side: the front left's shoulder is still beyond what sessions vary, its rate alone is not.
    [Fact]
    public async Task One_session_a_side_leaves_a_rate_open_and_says_how_many_sessions_would_do()
    {
        var body = Example();
        foreach (var tyre in ((string[])["before", "after"]).SelectMany(side => body[side]!["tyres"]!.AsArray()))
            foreach (var reading in tyre!["readings"]!.AsArray()) reading!.AsObject().Remove("session");

        var answer = await fixture.Client.AnswerOf(Path, body);

        var outer = answer.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer");
        Assert.False(outer.GetProperty("rate").GetProperty("isShown").GetBoolean());
        Assert.InRange(outer.GetProperty("furtherSessionCount").GetInt32(), 1, 5);
        Assert.Equal(JsonValueKind.Null, outer.GetProperty("lapsToShow").ValueKind);
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/betweenSessionsPct" && one.GetProperty("value").GetDouble() == 20);
    }

    [Fact]
    public async Task Without_readings_after_it_plans_the_session()
    {
        var body = Example().Without("/after").With("/expectedRatio", 0.3).With("/plannedLaps", 60);

        var answer = await fixture.Client.AnswerOf(Path, body);

        var outer = answer.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer");
        Assert.True(outer.GetProperty("lapsToShow").GetDouble() > 1);
        Assert.InRange(outer.GetProperty("plannedPower").GetDouble(), 0.1, 1);
        Assert.Equal(JsonValueKind.Null, outer.GetProperty("rate").GetProperty("ratio").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/tyres/0/zones/outer/rate/ratio");
    }

    [Fact]
    public async Task Too_few_readings_are_unknown_and_not_refused()
    {
        var body = Example();
        body["before"]!["tyres"]![1]!["readings"] = new JsonArray([.. body["before"]!["tyres"]![1]!["readings"]!.AsArray().Take(2).Select(one => one!.DeepClone())]);

        var answer = await fixture.Client.AnswerOf(Path, body);

        var tyre = answer.GetProperty("tyres")[1];
        Assert.Equal(JsonValueKind.Null, tyre.GetProperty("zones").ValueKind);
        Assert.Equal("none", tyre.GetProperty("clock").GetString());
        Assert.Equal("unknown", tyre.GetProperty("outcome").GetString());
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/tyres/1/zones");
        Assert.Equal("better", answer.GetProperty("tyres")[0].GetProperty("outcome").GetString());
    }

    [Theory]
    [InlineData("", 400)]
    [InlineData("&widthPx=900", 900)]
    public async Task The_picture_can_be_read_and_does_nothing(string width, int widthPx)
    {
        foreach (var units in (string[])["metric", "us"])
        {
            using var response = await fixture.Client.PostAsync($"{Path}/chart?units={units}{(width.Length > 0 ? width : $"&widthPx={widthPx}")}", Example().ToJsonString());
            var picture = new SvgPicture(await Calls.Text(response));

            Harmlessness.Holds(picture);
            Legibility.TextsKeepClear(picture);
            if (widthPx <= 400) Legibility.LettersHaveAtLeast(12, picture);
            Assert.NotNull(picture.Find("panel-4"));
        }
    }

    [Fact]
    public async Task A_picture_of_what_cannot_be_compared_names_it()
    {
        using var response = await fixture.Client.PostAsync(Path + "/chart", """{"before":{"tyres":[{"position":"rearLeft","readings":[{"trackLaps":3,"depthMm":{"outer":5,"centre":5,"inner":5}}]}]}}""");

        Assert.Contains("rear left", await Calls.Text(response), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task The_season_and_the_track_are_an_assumption() =>
        Assert.Contains(
            (await fixture.Client.AnswerOf(Path, Example())).GetProperty("assumptions").EnumerateArray(),
            one => one.GetProperty("input").GetString() == "/after" && one.GetProperty("source").GetString()!.Contains("30 %", StringComparison.Ordinal));

    [Fact]
    public async Task Readings_that_contradict_themselves_are_named_in_their_place()
    {
        using var response = await fixture.Client.PostAsync(Path, Example().With("/after/tyres/0/readings/2/trackLaps", 3).With("/before/tyres/3/readings/1/depthMm/inner", 9.5).ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        var pointers = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()).ToArray();
        Assert.Contains("/after/tyres/0/readings/2/trackLaps", pointers);
        Assert.Contains("/before/tyres/3/readings/1/depthMm/inner", pointers);
    }

    [Fact]
    public async Task A_tyre_after_without_its_like_before_is_refused()
    {
        var body = Example();
        body["before"]!["tyres"]!.AsArray().RemoveAt(3);
        using var response = await fixture.Client.PostAsync(Path, body.ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains("/after/tyres", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason()
    {
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf("wear-before-after.request.json"));
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Path, Gen.Const(text).Select(sound => JsonNode.Parse(sound)!.AsObject()), 300);
    }

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("wear-before-after.request.json")))!.AsObject();
}
