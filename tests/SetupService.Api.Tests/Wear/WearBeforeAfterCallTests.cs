using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>Before and after over HTTP.</summary>
public sealed class WearBeforeAfterCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/wear/before-after";

    // The example: the outer shoulder wears 0.037 mm a lap before and 0.024 after, the centre 0.018 and 0.020.
    [Fact]
    public async Task A_change_is_shown_where_the_range_leaves_one_out()
    {
        var answer = await fixture.Client.AnswerOf(Path, Example());

        var outer = answer.GetProperty("zones").GetProperty("outer").GetProperty("rate");
        Assert.Equal("track", answer.GetProperty("clock").GetString());
        Assert.True(outer.GetProperty("isShown").GetBoolean());
        Assert.True(outer.GetProperty("ratio").GetProperty("upper").GetDouble() < 1);
        Assert.False(answer.GetProperty("zones").GetProperty("centre").GetProperty("rate").GetProperty("isShown").GetBoolean());
        Assert.True(answer.GetProperty("outerToCentre").GetProperty("isShown").GetBoolean());
    }

    [Fact]
    public async Task Without_readings_after_it_plans_the_session()
    {
        var body = Example().Without("/after").With("/expectedRatio", 0.7).With("/plannedLaps", 60);

        var answer = await fixture.Client.AnswerOf(Path, body);

        var outer = answer.GetProperty("zones").GetProperty("outer");
        Assert.True(outer.GetProperty("lapsToShow").GetDouble() > 1);
        Assert.InRange(outer.GetProperty("plannedPower").GetDouble(), 0.1, 1);
        Assert.Equal(JsonValueKind.Null, outer.GetProperty("rate").GetProperty("ratio").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/zones/outer/rate/ratio");
    }

    [Fact]
    public async Task Too_few_readings_are_unknown_and_not_refused()
    {
        var body = Example();
        body["before"] = new JsonArray([.. body["before"]!.AsArray().Take(2).Select(one => one!.DeepClone())]);

        var answer = await fixture.Client.AnswerOf(Path, body);

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("zones").ValueKind);
        Assert.Equal("none", answer.GetProperty("clock").GetString());
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/zones");
    }

    [Fact]
    public async Task The_season_and_the_track_are_an_assumption() =>
        Assert.Contains(
            (await fixture.Client.AnswerOf(Path, Example())).GetProperty("assumptions").EnumerateArray(),
            one => one.GetProperty("input").GetString() == "/after" && one.GetProperty("source").GetString()!.Contains("30 %", StringComparison.Ordinal));

    [Fact]
    public async Task Readings_that_contradict_themselves_are_named_in_their_place()
    {
        using var response = await fixture.Client.PostAsync(Path, Example().With("/after/2/trackLaps", 3).With("/before/1/depthMm/inner", 9.5).ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        var pointers = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()).ToArray();
        Assert.Contains("/after/2/trackLaps", pointers);
        Assert.Contains("/before/1/depthMm/inner", pointers);
    }

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason()
    {
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf("wear-before-after.request.json"));
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Path, Gen.Const(text).Select(sound => JsonNode.Parse(sound)!.AsObject()), 300);
    }

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("wear-before-after.request.json")))!.AsObject();
}
