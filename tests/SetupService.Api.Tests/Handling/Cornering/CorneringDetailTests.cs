using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>What <c>detail=turn</c> leaves out of a turn, and what it leaves as it is.</summary>
public sealed class CorneringDetailTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Members in which limits or the ends of ranges are told.
    private static readonly string[] Changed = ["limit", "unknown", "assumptions", "balance"];

    [Theory]
    [InlineData(CorneringCalls.Turn)]
    [InlineData(CorneringCalls.Sweep)]
    public async Task The_turn_alone_has_the_same_figures_and_neither_limits_nor_what_assumptions_move(string path)
    {
        var body = path == CorneringCalls.Turn ? CorneringCalls.Example() : CorneringCalls.Swept(CorneringCalls.Example(), 0.2, 0.8, 0.3);
        var whole = await fixture.Client.AnswerOf(path, body);
        var turn = await fixture.Client.AnswerOf(path + "?detail=turn", body);

        Assert.Equal(Remaining(whole), Remaining(turn));
        var limit = turn.GetProperty("limit");
        Assert.All(new[] { "front", "rear", "margin", "frontFirstPct" }, name => Assert.Equal(JsonValueKind.Null, limit.GetProperty(name).ValueKind));
        Assert.Equal("unclear", limit.GetProperty("first").GetString());
        Assert.Contains("detail=full", limit.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Single(turn.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/limit");
        Assert.Equal(Inputs(whole), Inputs(turn));
        Assert.All(turn.GetProperty("assumptions").EnumerateArray(), one => Assert.False(one.TryGetProperty("moves", out _)));
        Assert.Contains(turn.GetProperty("assumptions").EnumerateArray(), one => one.TryGetProperty("plausible", out _));
    }

    [Theory]
    [InlineData(CorneringCalls.Turn)]
    [InlineData(CorneringCalls.Sweep)]
    public async Task All_of_it_is_the_default(string path)
    {
        var body = path == CorneringCalls.Turn ? CorneringCalls.Example() : CorneringCalls.Swept(CorneringCalls.Example(), 0.2, 0.8, 0.3);

        Assert.Equal((await fixture.Client.AnswerOf(path, body)).GetRawText(), (await fixture.Client.AnswerOf(path + "?detail=full", body)).GetRawText());
    }

    // The figures of the turn; of the balance its numbers only, as its text begins with the limits.
    private static string Remaining(JsonElement answer)
    {
        var rest = JsonNode.Parse(answer.GetRawText())!.AsObject();
        foreach (var row in rest["rows"]?.AsArray() ?? [])
            row!["balance"]!.AsObject().Remove("text");
        foreach (var name in Changed) rest.Remove(name);
        return rest.ToJsonString();
    }

    private static string[] Inputs(JsonElement answer) =>
        [.. answer.GetProperty("assumptions").EnumerateArray().Select(one => $"{one.GetProperty("input")} {one.GetProperty("value")} {one.GetProperty("text")} {one.GetProperty("reason")}")];
}
