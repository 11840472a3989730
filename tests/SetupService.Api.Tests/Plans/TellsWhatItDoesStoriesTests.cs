using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>A plan and its sheets tell what a part does to the car and the law, of every part, and of each wheel; common practice, no source.</summary>
public sealed class TellsWhatItDoesStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Sheets = "/v1/plans/sheets";

    // The only part that lets the camber be set is stated not to be allowed on the road.
    [Theory]
    [InlineData(4000, false)]
    [InlineData(0, true)]
    public async Task A_part_not_for_the_road_is_recommended_to_a_track_car_alone(double roadKm, bool isRecommended)
    {
        var body = Demo().WithParts(Part("race-mounts", "topMount", 60, """{"front":{"adjustable":{"camberDeg":{"from":-3.2}}}}""", "\"isRoadLegal\":false"));
        body["use"]!["roadKmPerYear"] = roadKm;
        var answer = await fixture.Client.AnswerOf(PlansPath, body);
        var package = answer.GetProperty("packages").EnumerateArray().Single(one => one.GetProperty("parts").GetArrayLength() == 1);
        var text = package.GetProperty("text").GetString()!;

        Assert.Equal(isRecommended, package.GetProperty("isRecommended").GetBoolean());
        Assert.Equal(!isRecommended, package.GetProperty("doubts").EnumerateArray().Any(one => one.GetProperty("code").GetString() == "notRoadLegal"));
        Assert.Equal(!isRecommended, text.StartsWith("Not recommended: by what is stated of it, 'race-mounts' is not allowed on the road, and this car is driven 4000 km a year on it", StringComparison.Ordinal));
        body["chosen"] = new JsonArray("race-mounts");
        var sheets = await fixture.Client.AnswerOf(Sheets, body);
        Assert.Equal(!isRecommended, sheets.GetProperty("summary").GetString()!.Contains("is not allowed on the road", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Slicks_on_offer_are_not_for_the_road_either()
    {
        var body = Demo().WithParts(Part("slicks", "tyre", 100, """{"front":{"tyre":{"category":"slick"}},"rear":{"tyre":{"category":"slick"}}}"""));
        body["goals"] = JsonNode.Parse("""[{"goal":"grip"}]""");
        body.Remove("heldLateralG");
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var slicks = answer.GetProperty("packages").EnumerateArray().Single(one => one.GetProperty("parts").GetArrayLength() == 1);
        Assert.Contains(slicks.GetProperty("doubts").EnumerateArray(), one => one.GetProperty("code").GetString() == "notRoadLegal");
        Assert.StartsWith("Not recommended: slicks are not allowed on the road", slicks.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Empty(answer.GetProperty("recommended").GetProperty("parts").EnumerateArray());
    }

    [Fact]
    public async Task Every_part_on_offer_is_in_a_package_or_rejected_with_its_reason()
    {
        var body = Demo();
        foreach (var part in (JsonObject[])[
            Part("heavier-wheels", "wheel", 300, """{"front":{"wheel":{"marking":"7.5Jx17 ET45","massKg":12},"unsprungMassKg":42},"rear":{"wheel":{"marking":"7.5Jx17 ET45","massKg":12},"unsprungMassKg":40}}"""),
            Part("dear-bolts", "eccentricBolt", 260, """{"front":{"adjustable":{"camberDeg":{"from":-2.4}}}}""", "\"labourHours\":1"),
            Part("rear-joints", "ballJoint", 40, null)]) body["parts"]!.AsArray().Add(part);
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var told = answer.GetProperty("packages").EnumerateArray().SelectMany(Ids)
            .Concat(answer.GetProperty("packages").EnumerateArray().SelectMany(one => one.GetProperty("whileApart").EnumerateArray()).Select(one => one.GetProperty("part").GetString()!))
            .Concat(answer.GetProperty("rejected").EnumerateArray().SelectMany(Ids)).ToHashSet();
        Assert.Equal([], body["parts"]!.AsArray().Select(part => part!["id"]!.GetValue<string>()).Where(id => !told.Contains(id)));
        Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual(["dear-bolts"]) && one.GetProperty("code").GetString() == "nothingBetter");
        Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual(["rear-joints"]) && one.GetProperty("code").GetString() == "changesNothing");
    }

    // In the same seats a stiffer spring is pressed together less: the car stands higher by what the lengths say (ride).
    [Theory]
    [InlineData("""{"front":{"spring":{"rateNPerMm":34}}}""", true)]
    [InlineData("""{"front":{"spring":{"rateNPerMm":34,"freeLengthMm":280}}}""", false)]
    public async Task Springs_that_lift_the_car_say_so_and_on_what_length_that_rests(string change, bool isAssumed)
    {
        var body = Demo().WithParts(Part("front-springs", "spring", 100, change));
        body["vehicle"]!["front"]!["spring"]!["freeLengthMm"] = 300;
        var package = (await fixture.Client.AnswerOf(PlansPath, body)).GetProperty("packages").EnumerateArray().Single(one => one.GetProperty("parts").GetArrayLength() == 1);
        var mm = package.GetProperty("after").GetProperty("road").Number("frontRideHeightChangeMm");
        var text = package.GetProperty("text").GetString()!;

        Assert.True(Math.Abs(mm) > 3);
        Assert.Contains($"the front stands {Math.Abs(Math.Round(mm, Math.Abs(mm) < 10 ? 1 : 0)).ToString(System.Globalization.CultureInfo.InvariantCulture)} mm {(mm > 0 ? "higher" : "lower")}", text, StringComparison.Ordinal);
        Assert.Equal(isAssumed, text.Contains("taken as long unloaded as the old one, 300 mm", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(-0.4, "left 1.5°, right 1.8° more negative than now")]
    [InlineData(-0.7, "(1.5° more negative than now)")]
    public async Task Each_side_is_told_its_own_change_where_they_stand_unlike(double rightDeg, string said)
    {
        var body = Demo().WithParts();
        body.Remove("wear");
        body["vehicle"]!["front"]!["alignment"]!["right"] = new JsonObject { ["camberDeg"] = rightDeg };
        body["vehicle"]!["front"]!["suspension"] = null;
        body["vehicle"]!["front"]!.AsObject().Remove("suspension");
        body["vehicle"]!["front"]!["rollCentreHeightMm"] = 60;
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -2.2;
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Contains(said, answer.GetProperty("packages")[0].GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    // The rack is shared: what both have together stays, each has half of it; and the order says what the lines say.
    [Fact]
    public async Task The_order_of_the_alignment_says_what_its_lines_say()
    {
        var body = Demo();
        body["vehicle"]!["front"]!["alignment"]!["right"] = new JsonObject { ["toeDeg"] = 0.16 };
        body["chosen"] = new JsonArray("eccentric-bolts");
        var alignment = (await fixture.Client.AnswerOf(Sheets, body)).GetProperty("alignment");
        var toes = alignment.GetProperty("lines").EnumerateArray().Where(one => one.GetProperty("axle").GetString() == "front" && one.GetProperty("angle").GetString() == "toe").ToArray();

        Assert.All(toes, one => Assert.Equal(0.12, one.Number("targetDeg"), 1e-9));
        Assert.Contains(alignment.GetProperty("order").EnumerateArray(), one => one.GetString() == "front toe last, steering wheel straight and locked, each wheel the same");
        Assert.Contains(alignment.GetProperty("order").EnumerateArray(), one => one.GetString() == "the rear is read and left as it is");
    }

    // The plate asks for 230 kPa; the hot aim leads below it.
    [Fact]
    public async Task Pressures_below_the_plate_are_set_at_the_track_and_taken_back()
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("plan-sheets.request.json")))!.AsObject();
        var below = await fixture.Client.AnswerOf(Sheets, body);
        var steps = Steps(below);

        Assert.Contains(below.GetProperty("pressures").EnumerateArray(), one => one.Number("coldKpa") < 229 && one.Number("roadColdKpa") == 230);
        var drive = Array.FindIndex(steps, text => text.StartsWith("First drive: at the pressures for the road, slowly", StringComparison.Ordinal));
        Assert.True(drive > 0 && Array.FindIndex(steps, text => text.StartsWith("At the track: set the cold pressures for the track", StringComparison.Ordinal)) > drive);
        Assert.DoesNotContain(steps, text => text.Contains("Set the cold pressures of the sheet", StringComparison.Ordinal));
        Assert.Contains("Before driving home, and before every drive on the road, set those for the road again.", string.Join(' ', steps), StringComparison.Ordinal);
        foreach (var end in (string[])["front", "rear"]) body["vehicle"]![end]!["placardPressureKpa"] = 200;
        Assert.DoesNotContain(Steps(await fixture.Client.AnswerOf(Sheets, body)), text => text.Contains("the road", StringComparison.Ordinal) && text.Contains("pressures for", StringComparison.Ordinal));
    }

    private static string[] Steps(JsonElement answer) => [.. answer.GetProperty("workOrder").GetProperty("steps").EnumerateArray().Select(one => one.GetProperty("text").GetString()!)];

    private static string[] Ids(JsonElement one) => [.. one.GetProperty("parts").EnumerateArray().Select(id => id.GetString()!)];
}
