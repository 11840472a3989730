using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>What the tyres of today ask for comes before what is bought and set, and by the diagnosis' own words; common practice, no source.</summary>
public sealed class TyresFirstStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Sheets = "/v1/plans/sheets";
    private const string Cords = "Do not drive on the front left tyre: it has visible cords. Before anything else have that tyre replaced";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_tyre_with_cords_leads_a_plan_whatever_is_on_offer(bool hasParts)
    {
        var body = WithCords(hasParts ? Demo() : Demo().WithParts());
        var answer = await fixture.Client.AnswerOf(PlansPath, body);
        var summary = answer.GetProperty("summary").GetString()!;
        var first = answer.GetProperty("recommended").GetProperty("firstStep");

        Assert.StartsWith(Cords, summary, StringComparison.Ordinal);
        Assert.StartsWith(Cords, first.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Empty(first.GetProperty("settings").EnumerateArray());
        foreach (var text in (string[])[summary, first.GetProperty("text").GetString()!, answer.GetProperty("packages")[0].GetProperty("text").GetString()!])
        {
            Assert.DoesNotContain("leave the settings", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Change nothing", text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("eccentric-bolts")]
    [InlineData(null)]
    public async Task A_tyre_with_cords_leads_the_sheets_and_their_work(string? chosen)
    {
        var body = WithCords(Demo());
        body["chosen"] = chosen is null ? new JsonArray() : new JsonArray(chosen);
        var answer = await fixture.Client.AnswerOf(Sheets, body);
        var step = answer.GetProperty("workOrder").GetProperty("steps")[0];

        Assert.StartsWith(Cords, answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.StartsWith(Cords, step.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("damagedTyre", step.GetProperty("cautionCodes").EnumerateArray().Select(one => one.GetString()));
        Assert.DoesNotContain("go on reading its tyres", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    // Two tyres of load index 75 carry 774 kg (ETRTO load index table: 75 is 387 kg); the axle has 790 kg. Nobody read a tread.
    [Fact]
    public async Task Tyres_that_cannot_carry_the_axle_lead_though_no_tread_was_read()
    {
        var body = Demo();
        body.Remove("wear");
        body["vehicle"]!["frontAxleLoadKg"] = 790;
        body["vehicle"]!["front"]!["tyre"]!["marking"] = "205/40R17 75W";
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.StartsWith("Replace the front tyres before driving: two of load index 75 carry 774 kg", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "overloadedTyres");
    }

    // Hotter inside and worn outside: the diagnosis says to measure again before anything is changed, and so does the plan.
    [Fact]
    public async Task Readings_that_contradict_each_other_are_taken_again_before_anything_is_set_or_bought()
    {
        var body = Demo();
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -3.2;
        var right = body["wear"]!["tyres"]![1]!;
        (right["temperatureC"], right["temperatureBy"], right["secondsAfterLap"]) = (JsonNode.Parse("""{"outer":70,"centre":79,"inner":88}"""), "probe", 40);
        var (diagnosis, plan) = (await Diagnosis(body), await fixture.Client.AnswerOf(PlansPath, body));
        var asked = diagnosis.GetProperty("axles").GetProperty("front").GetProperty("text").GetString()!;
        var first = plan.GetProperty("recommended").GetProperty("firstStep");

        Assert.StartsWith("Measure again at the front right wheel before changing anything", asked, StringComparison.Ordinal);
        Assert.StartsWith("Measure again at the front right wheel before changing anything", first.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("Measure again at the front right wheel before changing anything", plan.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Empty(first.GetProperty("settings").EnumerateArray());
        Assert.DoesNotContain("First set", plan.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    // Rears worn in the middle and hot above their aim: less pressure costs nothing and comes first; below the plate it is for the track.
    [Fact]
    public async Task Pressures_the_diagnosis_asks_for_come_first_for_they_are_free()
    {
        var body = OverInflated();
        var (diagnosis, plan) = (await Diagnosis(body), await fixture.Client.AnswerOf(PlansPath, body));
        var asked = diagnosis.GetProperty("axles").GetProperty("rear").GetProperty("text").GetString()!;
        var text = plan.GetProperty("recommended").GetProperty("firstStep").GetProperty("text").GetString()!;

        Assert.StartsWith("Set both rear tyres to", asked, StringComparison.Ordinal);
        Assert.StartsWith(asked[..asked.IndexOf(", and read", StringComparison.Ordinal)], text, StringComparison.Ordinal);
        Assert.Contains("on the road set the 240 kPa of the car's plate", text, StringComparison.Ordinal);
        Assert.DoesNotContain("leave the settings as they are", plan.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("for the track alone", plan.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    // Comfort is all that is wanted and no tread asks for it: nobody pays an alignment for camber that changes nothing of it.
    [Fact]
    public async Task No_alignment_is_paid_for_what_nobody_asked_for()
    {
        var body = Demo();
        body.Remove("wear");
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -3.2;
        body["alignment"] = JsonNode.Parse("""{"amount":120,"currency":"EUR"}""");
        body["goals"] = JsonNode.Parse("""[{"goal":"comfort"}]""");
        var best = (await fixture.Client.AnswerOf(PlansPath, body)).GetProperty("packages")[0];

        Assert.Empty(best.GetProperty("parts").EnumerateArray());
        Assert.Empty(best.GetProperty("settings").EnumerateArray());
        Assert.Equal(0, best.GetProperty("cost").Number("amount"));
        body["goals"] = JsonNode.Parse("""[{"goal":"wear"}]""");
        Assert.NotEmpty((await fixture.Client.AnswerOf(PlansPath, body)).GetProperty("packages")[0].GetProperty("settings").EnumerateArray());
    }

    private static JsonObject WithCords(JsonObject body)
    {
        body["wear"]!["tyres"]![0]!["damage"] = new JsonArray("cordsVisible");
        return body;
    }

    private static JsonObject OverInflated()
    {
        var body = Demo().WithParts();
        body["vehicle"]!["rear"]!["placardPressureKpa"] = 240;
        foreach (var tyre in body["wear"]!["tyres"]!.AsArray().Take(2)) tyre!["depthMm"] = JsonNode.Parse("""{"outer":5.3,"centre":5.4,"inner":5.3}""");
        body["wear"]!["tyres"]!.AsArray().RemoveAt(2);
        foreach (var at in (string[])["rearLeft", "rearRight"])
            body["wear"]!["tyres"]!.AsArray().Add(JsonNode.Parse($$$"""{"position":"{{{at}}}","newDepthMm":7.8,"depthMm":{"outer":5.6,"centre":4.2,"inner":5.6},"pressureKpa":{"cold":240,"hot":295,"aimHot":265}}"""));
        return body;
    }

    private async Task<JsonElement> Diagnosis(JsonObject body)
    {
        var asked = body["wear"]!.DeepClone().AsObject();
        asked["vehicle"] = body["vehicle"]!.DeepClone();
        return await fixture.Client.AnswerOf("/v1/wear/diagnosis", asked);
    }
}
