using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Contract;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>What <c>detail=axles</c> leaves out of a ride.</summary>
public sealed class RideDetailTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Ride = "/v1/handling/ride";

    private static JsonObject Body() => JsonNode.Parse(File.ReadAllText(ContractFile.Path("examples/ride.request.json")))!.AsObject();

    [Theory]
    [InlineData(0, "hardly damp at all")]
    [InlineData(20, "hardly damp at all")]
    [InlineData(200, "need at least [0-9]+ times the damping")]
    [InlineData(700, "need at least [0-9]+ % more damping")]
    public async Task Dampers_of_next_to_nothing_are_told_so(double nsPerM, string words)
    {
        var body = Body();
        body["vehicle"]!["front"]!["damper"] = new JsonObject { ["bumpNsPerM"] = nsPerM, ["reboundNsPerM"] = nsPerM };
        body.Remove("change");
        var text = (await fixture.Client.AnswerOf(Ride, body)).GetRawText();

        Assert.Matches("These dampers are too soft for these springs: they " + words, text);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_axles_alone_lack_the_turns_in_which_stops_are_met_and_what_assumptions_move()
    {
        var whole = await fixture.Client.AnswerOf(Ride, Body());
        var axles = await fixture.Client.AnswerOf(Ride + "?detail=axles", Body());

        Assert.Equal(JsonValueKind.Number, whole.GetProperty("front").GetProperty("stopMetAtLateralG").ValueKind);
        Assert.Equal(JsonValueKind.Null, axles.GetProperty("front").GetProperty("stopMetAtLateralG").ValueKind);
        Assert.Contains(axles.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/front/stopMetAtLateralG" && one.GetProperty("reason").GetString()!.Contains("detail=full", StringComparison.Ordinal));
        Assert.Equal(whole.GetProperty("front").GetProperty("rideFrequencyHz").GetRawText(), axles.GetProperty("front").GetProperty("rideFrequencyHz").GetRawText());
        Assert.Equal(whole.GetProperty("cautions").GetRawText(), axles.GetProperty("cautions").GetRawText());
        Assert.Contains(whole.GetProperty("assumptions").EnumerateArray(), one => one.TryGetProperty("moves", out _));
        Assert.All(axles.GetProperty("assumptions").EnumerateArray(), one => Assert.False(one.TryGetProperty("moves", out _)));
        Assert.Equal(whole.GetProperty("assumptions").GetArrayLength(), axles.GetProperty("assumptions").GetArrayLength());
    }

    [Fact]
    public async Task All_of_it_is_the_default() =>
        Assert.Equal((await fixture.Client.AnswerOf(Ride, Body())).GetRawText(), (await fixture.Client.AnswerOf(Ride + "?detail=full", Body())).GetRawText());
}
