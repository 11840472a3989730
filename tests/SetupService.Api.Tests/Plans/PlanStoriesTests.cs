using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>
/// Whole cases: a car, its use and parts on offer, which packages a careful shop would choose from and which it would refuse. What it would do is common practice, no source.
/// </summary>
public sealed class PlanStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Nothing = [];

    // The outer front shoulders are worn; the car's own adjuster ends at −1.3°.
    [Fact]
    public async Task The_demo_car_gets_what_lets_its_camber_be_set()
    {
        var answer = await Answer(Demo());

        // Mounts for 470 EUR more go further, but the first step is the same, and what it leaves only the treads can tell.
        Recommends(answer, ["eccentric-bolts"]);
        Assert.Contains("costs 470 EUR more, and its first step is the same: the treads then tell whether the rest is wanted.", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).SequenceEqual(["top-mounts"]));
        Assert.Contains("−2.2°", answer.GetProperty("recommended").GetProperty("firstStep").GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal(-1.5, answer.GetProperty("recommended").GetProperty("firstStep").GetProperty("settings")[0].Number("changeDeg"), 0.02);
        Rejects(answer, "track-springs", "damperOverwhelmed");
        Rejects(answer, "wheels-9", "doesNotFit");
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "springsUnderLoad");
        Assert.Contains(answer.GetProperty("packages").EnumerateArray(), one => one.GetProperty("whileApart").EnumerateArray().Any(part => part.GetProperty("part").GetString() == "arm-bushes"));
    }

    [Fact]
    public async Task Where_the_cars_own_adjusters_do_it_nothing_is_bought()
    {
        var body = Demo();
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -3.2;
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.StartsWith("Buy nothing for now: set the front camber to", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Equal(-2.2, answer.GetProperty("recommended").GetProperty("firstStep").GetProperty("settings")[0].Number("camberDeg"), 1e-9);
    }

    // Both fronts even at −0.7°: the treads say the camber is right, whatever the model says.
    [Fact]
    public async Task Even_treads_are_not_set_against_a_measurement()
    {
        var body = Demo();
        foreach (var tyre in body["wear"]!["tyres"]!.AsArray().Take(2)) tyre!["depthMm"] = JsonNode.Parse("""{"outer":5.3,"centre":5.4,"inner":5.3}""");
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -3.2;
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.DoesNotContain(answer.GetProperty("packages")[0].GetProperty("settings").EnumerateArray(), one => one.GetProperty("axle").GetString() == "front");
    }

    [Fact]
    public async Task A_car_for_the_road_alone_is_not_sold_springs()
    {
        var body = Demo();
        body.Remove("wear");
        body["use"] = JsonNode.Parse("""{"roadKmPerYear":15000,"trackDaysPerYear":0}""");
        body["goals"] = JsonNode.Parse("""[{"goal":"comfort","weight":2},{"goal":"cost"}]""");
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.Equal(0, answer.Number("trackSharePct"));
        Assert.Empty(answer.GetProperty("packages")[0].GetProperty("settings").EnumerateArray());
        Assert.StartsWith("Buy nothing and leave the settings as they are.", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    // Springs that the present dampers cannot hold, and dampers that can: the springs never without them.
    [Fact]
    public async Task Springs_beyond_the_dampers_are_never_recommended_without_the_dampers_for_them()
    {
        var body = Demo().WithParts(
            Part("firm-springs", "spring", 300, """{"front":{"spring":{"rateNPerMm":58}}}"""),
            Part("front-dampers", "damper", 500, """{"front":{"damper":{"bumpNsPerM":2900,"reboundNsPerM":5200}}}"""));
        body["parts"]![0]!["change"]!["keepRideHeight"] = true;
        body["vehicle"]!["front"]!["damper"] = JsonNode.Parse("""{"bumpNsPerM":1000,"reboundNsPerM":2300}""");
        var answer = await Answer(body);

        Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual(["firm-springs"]) && one.GetProperty("code").GetString() == "damperOverwhelmed");
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).SequenceEqual(["firm-springs"]));
    }

    [Fact]
    public async Task A_tyre_that_cannot_carry_the_car_is_refused()
    {
        var body = Demo().WithParts(Part("light-tyres", "tyre", 400, """{"front":{"tyre":{"marking":"205/45R17 84W"}}}"""));
        body["vehicle"]!["front"]!["maximumAxleLoadKg"] = 1100;
        body["vehicle"]!["topSpeedKmh"] = 228;
        var answer = await Answer(body);

        Rejects(answer, "light-tyres", "overloaded");
        Recommends(answer, Nothing);
    }

    [Fact]
    public async Task A_slick_is_not_for_the_road()
    {
        var body = Demo().WithParts(
            Part("slicks", "tyre", 900, """{"front":{"tyre":{"category":"slick"}},"rear":{"tyre":{"category":"slick"}}}"""),
            Part("race-mounts", "topMount", 300, """{"front":{"adjustable":{"camberDeg":{"from":-3.2}}}}""", "\"isRoadLegal\":false"));
        body["limits"] = JsonNode.Parse("""{"roadLegalOnly":true}""");
        var answer = await Answer(body);

        Rejects(answer, "slicks", "notRoadLegal");
        Rejects(answer, "race-mounts", "notRoadLegal");
        Recommends(answer, Nothing);
    }

    [Fact]
    public async Task Much_stiffer_springs_on_dampers_nobody_knows_are_not_recommended()
    {
        var body = Demo().WithParts(Part("springs", "spring", 300, """{"front":{"spring":{"rateNPerMm":38}},"rear":{"spring":{"rateNPerMm":62}}}"""));
        body["parts"]![0]!["change"]!["keepRideHeight"] = true;
        foreach (var axle in (string[])["front", "rear"]) body["vehicle"]![axle]!.AsObject().Remove("damper");
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.Contains(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).SequenceEqual(["springs"]) && one.GetProperty("doubts")[0].GetProperty("code").GetString() == "damperUnknown");
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/before/road/frontDampingRatio");
    }

    [Fact]
    public async Task A_rear_bar_that_makes_the_rear_let_go_first_is_not_recommended()
    {
        var body = Demo().WithParts(Part("huge-bar", "antiRollBar", 50, """{"rear":{"antiRollBar":{"rollRateNmPerDeg":700}}}"""));
        body["goals"] = JsonNode.Parse("""[{"goal":"grip"}]""");
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.All(answer.GetProperty("packages").EnumerateArray().Where(one => Ids(one).Length > 0), one => Assert.Contains(one.GetProperty("doubts").EnumerateArray(), doubt => doubt.GetProperty("code").GetString() == "rearFirst"));
    }

    [Fact]
    public async Task Wheels_whose_room_nobody_measured_are_not_recommended()
    {
        var body = Demo().WithParts(Part("wide-wheels", "wheel", 200, """{"front":{"wheel":{"marking":"8.5Jx17 ET30"},"tyre":{"marking":"245/40R17 95W XL"}}}"""));
        body["vehicle"]!["front"]!.AsObject().Remove("clearance");
        var answer = await Answer(body);

        Recommends(answer, Nothing);
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).Contains("wide-wheels") && !one.GetProperty("doubts").EnumerateArray().Any(doubt => doubt.GetProperty("code").GetString() == "fitUnknown"));
    }

    // Two top mounts that reach alike: who wants it quiet gets rubber, though it costs more; who does not tell how loud a part is, is told so.
    [Fact]
    public async Task Who_wants_it_quiet_is_not_sold_metal_joints()
    {
        const string Reach = """{"front":{"adjustable":{"camberDeg":{"from":-3.2,"to":-0.8}}}}""";
        var body = Demo().WithParts(
            Part("metal-mounts", "topMount", 300, Reach, "\"joint\":\"solid\""), Part("rubber-mounts", "topMount", 380, Reach, "\"joint\":\"rubber\""), Part("bolts", "eccentricBolt", 60, """{"front":{"adjustable":{"camberDeg":{"from":-1.5}}}}"""));
        Recommends(await Answer(body), ["metal-mounts"]);
        body["goals"] = JsonNode.Parse("""[{"goal":"wear","weight":2},{"goal":"grip"},{"goal":"noise","weight":2}]""");
        var quiet = await Answer(body);
        Recommends(quiet, ["rubber-mounts"]);
        body["parts"]![1]!.AsObject().Remove("joint");
        var untold = await Answer(body);

        Assert.DoesNotContain(quiet.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "noise");
        Assert.Contains(untold.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "noise" && one.GetProperty("needs")[0].GetString() == "/parts/1/joint");
    }

    // Pushes wide, its camber cannot be set: a rear bar that still lets the front give up first, and nothing that needs the wheels aligned.
    [Fact]
    public async Task A_car_that_pushes_wide_gets_the_rear_bar_that_leaves_the_rear_its_grip()
    {
        var body = Demo().WithParts(
            Part("rear-bar", "antiRollBar", 180, """{"rear":{"antiRollBar":{"rollRateNmPerDeg":190}}}"""),
            Part("huge-rear-bar", "antiRollBar", 120, """{"rear":{"antiRollBar":{"rollRateNmPerDeg":600}}}"""),
            Part("front-bar", "antiRollBar", 160, """{"front":{"antiRollBar":{"rollRateNmPerDeg":450}}}"""));
        body.Remove("wear");
        body["goals"] = JsonNode.Parse("""[{"goal":"grip"}]""");
        foreach (var axle in (string[])["front", "rear"]) body["vehicle"]![axle]!["adjustable"] = JsonNode.Parse("""{"camberDeg":null}""");
        var answer = await Answer(body);

        Recommends(answer, ["rear-bar"]);
        Assert.DoesNotContain("alignment", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_track_car_on_soft_worn_dampers_gets_springs_and_dampers_together()
    {
        var body = Demo().WithParts(
            Part("firm-springs", "spring", 420, """{"front":{"spring":{"rateNPerMm":58}},"rear":{"spring":{"rateNPerMm":72}}}"""),
            Part("dampers", "damper", 900, """{"front":{"damper":{"bumpNsPerM":2600,"reboundNsPerM":5200}},"rear":{"damper":{"bumpNsPerM":2600,"reboundNsPerM":5200}}}"""));
        body["parts"]![0]!["change"]!["keepRideHeight"] = true;
        body["vehicle"]!["front"]!["damper"] = JsonNode.Parse("""{"bumpNsPerM":900,"reboundNsPerM":2100}""");
        body["vehicle"]!["rear"]!["damper"] = JsonNode.Parse("""{"bumpNsPerM":1000,"reboundNsPerM":2200}""");
        body["vehicle"]!["front"]!["adjustable"] = JsonNode.Parse("""{"camberDeg":null}""");
        body["goals"] = JsonNode.Parse("""[{"goal":"grip"},{"goal":"wear"}]""");
        body["use"] = JsonNode.Parse("""{"roadKmPerYear":1000,"trackDaysPerYear":12,"lapsPerDay":30,"lapKm":3.2}""");
        body.Remove("limits");
        var answer = await Answer(body);

        Recommends(answer, ["firm-springs", "dampers"]);
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).SequenceEqual(["firm-springs"]));
    }

    // The same size in another rubber needs no room measured; whether it is worth its wet grip is a matter of the use.
    [Theory]
    [InlineData(4000, 5, 2, 1, "track-day-tyres")]
    [InlineData(15000, 2, 1, 2, null)]
    public async Task Track_day_tyres_are_for_who_is_on_the_track_and_slicks_for_nobody_on_the_road(int roadKm, int days, int grip, int wet, string? bought)
    {
        var body = Demo().WithParts(
            Part("track-day-tyres", "tyre", 620, """{"front":{"tyre":{"category":"trackDay"}},"rear":{"tyre":{"category":"trackDay"}}}"""),
            Part("slicks", "tyre", 700, """{"front":{"tyre":{"category":"slick"}},"rear":{"tyre":{"category":"slick"}}}"""));
        body.Remove("wear");
        body["use"] = new JsonObject { ["roadKmPerYear"] = roadKm, ["trackDaysPerYear"] = days };
        body["goals"] = new JsonArray(new JsonObject { ["goal"] = "grip", ["weight"] = grip }, new JsonObject { ["goal"] = "wet", ["weight"] = wet });
        body["limits"] = JsonNode.Parse("""{"roadLegalOnly":true}""");
        var answer = await Answer(body);

        Recommends(answer, bought is null ? Nothing : [bought]);
        Rejects(answer, "slicks", "notRoadLegal");
    }

    [Fact]
    public async Task A_car_sprung_too_hard_for_its_owner_gets_the_softer_springs()
    {
        var body = Demo().WithParts(
            Part("softer-springs", "spring", 260, """{"front":{"spring":{"rateNPerMm":30}},"rear":{"spring":{"rateNPerMm":48}}}"""),
            Part("sport-springs", "spring", 240, """{"front":{"spring":{"rateNPerMm":60}},"rear":{"spring":{"rateNPerMm":90}}}"""));
        body.Remove("wear");
        body["use"] = JsonNode.Parse("""{"roadKmPerYear":15000,"trackDaysPerYear":0}""");
        body["goals"] = JsonNode.Parse("""[{"goal":"comfort","weight":2},{"goal":"cost"}]""");
        foreach (var part in body["parts"]!.AsArray()) part!["change"]!["keepRideHeight"] = true;
        foreach (var (axle, rate) in ((string, int)[])[("front", 52), ("rear", 80)])
        {
            body["vehicle"]![axle]!["spring"]!["rateNPerMm"] = rate;
            body["vehicle"]![axle]!["damper"] = JsonNode.Parse("""{"bumpNsPerM":2000,"reboundNsPerM":4200}""");
        }

        var answer = await Answer(body);

        Recommends(answer, ["softer-springs"]);
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).Contains("sport-springs"));
    }

    // Worn outside at the rear, whose camber nothing but a shim sets.
    [Fact]
    public async Task A_rear_worn_outside_that_cannot_be_set_gets_shims_and_no_springs()
    {
        var body = Demo().WithParts(
            Part("rear-shims", "shim", 45, """{"rear":{"adjustable":{"camberDeg":{"from":-2.4,"to":-2.0}}}}""", "\"labourHours\":2"),
            Part("rear-springs", "spring", 220, """{"rear":{"spring":{"rateNPerMm":75}}}"""));
        body["parts"]![1]!["change"]!["keepRideHeight"] = true;
        body["vehicle"]!["rear"]!["alignment"]!["camberDeg"] = -0.6;
        foreach (var axle in (string[])["front", "rear"]) body["vehicle"]![axle]!["adjustable"] = JsonNode.Parse("""{"camberDeg":null}""");
        foreach (var tyre in body["wear"]!["tyres"]!.AsArray().Take(2)) tyre!["depthMm"] = JsonNode.Parse("""{"outer":5.4,"centre":5.5,"inner":5.4}""");
        body["wear"]!["tyres"]![2]!["depthMm"] = JsonNode.Parse("""{"outer":3.4,"centre":5.0,"inner":5.6}""");
        var answer = await Answer(body);

        Recommends(answer, ["rear-shims"]);
        Rejects(answer, "rear-springs", "damperOverwhelmed");
    }

    // A little cannot be had for the price of an alignment.
    [Fact]
    public async Task Nobody_is_sent_to_have_a_tenth_set()
    {
        var body = Demo().WithParts();
        foreach (var axle in (string[])["front", "rear"]) body["vehicle"]![axle]!["adjustable"]!["camberDeg"] = JsonNode.Parse("""{"from":-0.9,"to":-0.2}""");
        body["vehicle"]!["rear"]!["alignment"]!["camberDeg"] = -0.8;
        var answer = await Answer(body);

        Assert.Empty(answer.GetProperty("packages")[0].GetProperty("settings").EnumerateArray());
    }

    // The cars of docs/demo.
    [Theory]
    [InlineData("further/plan-rear-driven.request.json", "rear-camber-arms", "solid-rear-arms", "wheels-7.5")]
    [InlineData("further/plan-jack-and-ruler.request.json", "camber-bolts", "lowering-springs", "lowering-springs")]
    public async Task The_cars_of_the_demos_get_what_lets_them_be_set(string file, string sensible, string refused, string other)
    {
        var answer = await Answer(JsonNode.Parse(File.ReadAllText(Examples.ExampleCall.FileOf(file)))!.AsObject());

        Recommends(answer, [sensible]);
        Assert.All((string[])[refused, other], part => Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual([part])));
    }

    // The choice goes with the money: never more is recommended than there is.
    [Fact]
    public async Task The_choice_goes_with_the_budget()
    {
        var answer = await Answer(Demo());
        double[] from = [.. answer.GetProperty("byBudget").EnumerateArray().Select(one => one.Number("amount"))];

        Assert.Equal(0, from[0]);
        Assert.Equal(from.Order(), from);
        Assert.True(from[^1] <= 1500);
        var body = Demo();
        body["limits"]!["budget"]!["amount"] = from[1] - 1;
        Assert.Equal(Ids(answer.GetProperty("byBudget")[0]), Ids((await Answer(body)).GetProperty("recommended")));
    }

    private static string[] Ids(JsonElement one) => [.. one.GetProperty("parts").EnumerateArray().Select(id => id.GetString()!)];

    private static void Recommends(JsonElement answer, params string[][] sensible)
    {
        var parts = Ids(answer.GetProperty("recommended"));
        Assert.True(Array.Exists(sensible, one => one.SequenceEqual(parts)), $"[{string.Join(", ", parts)}]: {answer.GetProperty("summary").GetString()}");
        Assert.InRange(answer.GetProperty("summary").GetString()!.Split(". ").Length, 1, 6);
    }

    private static void Rejects(JsonElement answer, string part, string code)
    {
        Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual([part]) && one.GetProperty("code").GetString() == code);
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).Contains(part));
    }

    private Task<JsonElement> Answer(JsonObject body) => fixture.Client.AnswerOf(PlansPath, body);
}
