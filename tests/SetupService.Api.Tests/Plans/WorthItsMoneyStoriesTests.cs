using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>Money is spent on what is known to be gained, one step at a time; common practice, no source.</summary>
public sealed class WorthItsMoneyStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Nobody read the treads: springs with the mounts would do most, and why the mounts alone wait is told as well.
    [Fact]
    public async Task Why_the_next_dearer_one_waits_is_told_where_another_does_most()
    {
        var body = Demo();
        body.Remove("wear");
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Equal(["eccentric-bolts"], Ids(answer.GetProperty("recommended")));
        Assert.Contains("and 'top-mounts' for 470 EUR more takes the same first step: the treads then tell whether the rest is wanted.", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    // Worn outside a little, read with a ruler: mounts would make the treads last some 5 % longer, and how they wear is not known half as closely. Read with a gauge and worn further, they are worth it.
    [Theory]
    [InlineData(5.0, 5.5, 5.9, 0.5, false)]
    [InlineData(3.4, 5.2, 5.5, 0.1, true)]
    public async Task Nobody_pays_for_a_gain_that_the_treads_as_read_do_not_show(double outer, double centre, double inner, double gaugeErrorMm, bool isBought)
    {
        var body = Demo().WithParts(Part("mounts", "topMount", 390, """{"front":{"adjustable":{"camberDeg":{"from":-3.2,"to":-0.8}}}}"""));
        body["goals"] = JsonNode.Parse("""[{"goal":"wear"}]""");
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -0.9;
        foreach (var tyre in body["wear"]!["tyres"]!.AsArray())
        {
            tyre!["gaugeErrorMm"] = gaugeErrorMm;
            if (tyre["position"]!.GetValue<string>().StartsWith("front", StringComparison.Ordinal)) tyre["depthMm"] = new JsonObject { ["outer"] = outer, ["centre"] = centre, ["inner"] = inner };
        }

        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Equal(isBought ? ["mounts"] : [], Ids(answer.GetProperty("recommended")));
        Assert.Equal(isBought, !answer.GetProperty("summary").GetString()!.Contains("What the parts on offer might do lies within what is not known of how these treads wear: read them again before buying.", StringComparison.Ordinal));
        Assert.True(answer.GetProperty("packages").EnumerateArray().Single(one => Ids(one).SequenceEqual(["mounts"])).GetProperty("after").Number("treadLifeFactor") > 1.04);
    }

    private static string[] Ids(JsonElement one) => [.. one.GetProperty("parts").EnumerateArray().Select(id => id.GetString()!)];
}
