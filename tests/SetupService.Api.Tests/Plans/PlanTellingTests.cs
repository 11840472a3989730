using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>What a plan cannot tell it says, with the reason; what it takes is listed; what it says is the case's own.</summary>
public sealed class PlanTellingTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // The car nearly rolls over in the first bend: with a centre of gravity as high as it may be it does, so the draws cannot be solved.
    [Fact]
    public async Task Where_a_draw_cannot_be_solved_how_sure_the_order_is_is_not_known()
    {
        var body = Demo();
        body["vehicle"]!["centreOfGravityHeightMm"] = 560;
        body["bends"]![0]!["lateralG"] = 1.2;
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("recommended").GetProperty("staysFirstPct").ValueKind);
        Assert.Contains("draw", Unknown(answer, "/recommended/staysFirstPct"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_else_may_be_chosen_there_is_no_order_to_be_sure_of()
    {
        var answer = await fixture.Client.AnswerOf(PlansPath, Demo().WithParts());

        Assert.Contains("no other", Unknown(answer, "/recommended/staysFirstPct"), StringComparison.Ordinal);
    }

    // Every figure of a package that is null has its reason: other tyres wear by their own rubber, dampers of the package are not known.
    [Fact]
    public async Task Every_figure_a_package_leaves_blank_has_its_reason()
    {
        var body = Demo();
        body["parts"]!.AsArray().Add(Part("tyres", "tyre", 500, """{"front":{"tyre":{"category":"trackDay"}},"rear":{"tyre":{"category":"trackDay"}}}"""));
        body["parts"]!.AsArray().Add(Part("hard-mounts", "topMount", 90, """{"front":{"unsprungMassKg":37.9,"antiRollBar":{"rollRateNmPerDeg":330}}}"""));
        body["limits"]!.AsObject().Remove("budget");
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var blanks = 0;
        string[] told = [.. answer.GetProperty("unknown").EnumerateArray().Select(one => one.GetProperty("id").GetString()!)];
        var packages = answer.GetProperty("packages").EnumerateArray().ToArray();
        for (var i = 0; i < packages.Length; i++)
        {
            foreach (var place in Nulls(packages[i].GetProperty("after"), FormattableString.Invariant($"/packages/{i}/after")))
            {
                blanks++;
                Assert.Contains(place, told);
            }
        }

        Assert.True(blanks >= 2, $"{blanks}");
    }

    // Jack, ruler and gauge: toe is reset by somebody, and nobody said for how much.
    [Fact]
    public async Task What_is_not_in_the_price_is_said()
    {
        var body = Demo();
        var without = await fixture.Client.AnswerOf(PlansPath, body);
        body["alignment"] = JsonNode.Parse("""{"amount":90,"currency":"EUR"}""");
        var with = await fixture.Client.AnswerOf(PlansPath, body);
        body.Remove("labourPerHour");
        var hours = await fixture.Client.AnswerOf(PlansPath, body);
        body.WithParts();
        var adjusters = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.StartsWith("Fit 'eccentric-bolts' for 130 EUR with 1 h of labour, without the alignment, and set", without.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("alignment", Unknown(without, "alignment"), StringComparison.Ordinal);
        Assert.StartsWith("Fit 'eccentric-bolts' for 220 EUR with 1 h of labour and the alignment, and set", with.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("Fit 'eccentric-bolts' for 150 EUR with the alignment, without 1 h of labour, and set", hours.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("adjusters; the alignment costs 90 EUR.", adjusters.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain(with.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "alignment");
    }

    // A limit of the request is no assumption; the road's own is one, where it is the one that binds.
    [Theory]
    [InlineData(-3.0, false)]
    [InlineData(-4.0, true)]
    [InlineData(null, true)]
    public async Task The_roads_own_camber_limit_is_assumed_only_where_it_binds(double? mostDeg, bool isAssumed)
    {
        var body = Demo();
        body["limits"]!["mostNegativeCamberDeg"] = mostDeg;
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Equal(isAssumed, answer.GetProperty("assumptions").EnumerateArray().Any(one => one.GetProperty("input").GetString() == "/limits/mostNegativeCamberDeg"));
    }

    // Where quiet is wanted, nothing told is not taken for silence: the mount of which somebody said that it is rubber goes before the one of which nobody said anything.
    [Fact]
    public async Task A_part_nobody_called_quiet_is_not_taken_as_quiet()
    {
        const string Change = """{"front":{"adjustable":{"camberDeg":{"from":-3.2,"to":-0.8}}}}""";
        var body = Demo().WithParts(
            Part("silent-about-it", "topMount", 200, Change),
            Part("rubber", "topMount", 210, Change, """ "joint":"rubber" """));
        body["goals"] = JsonNode.Parse("""[{"goal":"wear","weight":2},{"goal":"noise"}]""");
        body.Remove("limits");
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.Equal("rubber", answer.GetProperty("recommended").GetProperty("parts")[0].GetString());
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/parts/0/joint");
        Assert.Contains("silent-about-it", Unknown(answer, "noise"), StringComparison.Ordinal);
    }

    // Millimetres as a tape shows them, without the budget of tolerances, which the check tells.
    [Fact]
    public async Task A_customer_reads_where_it_touches_and_by_how_much()
    {
        var answer = await fixture.Client.AnswerOf(PlansPath, Demo());
        var us = await fixture.Client.AnswerOf(PlansPath + "?units=us", Demo());

        Assert.Equal("At the front it probably touches at the arch lip, by about 21 mm.", Reason(answer, "wheels-9"));
        Assert.Equal("At the front it probably touches at the arch lip, by about 0.84 in.", Reason(us, "wheels-9"));

        static string Reason(JsonElement answer, string part) =>
            answer.GetProperty("rejected").EnumerateArray().First(one => one.GetProperty("parts")[0].GetString() == part && one.GetProperty("code").GetString() == "doesNotFit").GetProperty("reason").GetString()!;
    }

    // With it the car cannot even stand in the bends: that it breaks no limit says nothing.
    [Fact]
    public async Task A_package_that_cannot_hold_the_bends_does_not_keep_the_limits()
    {
        var body = Demo().WithParts(
            Part("springs", "spring", 300, """{"front":{"spring":{"rateNPerMm":30}}}"""),
            Part("low", "spring", 10, """{"front":{"rideHeightChangeMm":-140,"wheel":{"marking":"7Jx17 ET45"}},"rear":{"wheel":{"marking":"7Jx17 ET45"}}}"""));
        body["limits"] = JsonNode.Parse("""{"greatestRimWidthIn":7}""");
        using var response = await fixture.Client.PostAsync(PlansPath, body.ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.NotComputable);

        Assert.Equal("/limits/greatestRimWidthIn", Assert.Single(problem.GetProperty("errors").EnumerateArray()).GetProperty("pointer").GetString());
        Assert.Contains("Nearest is the package with no parts", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    // A bar for 60 and the alignment for 89.50, with 140 to spend: the bar can be had where the camber is left, and then it is not said to be set.
    [Fact]
    public async Task Where_the_money_is_not_enough_for_the_alignment_the_camber_is_left()
    {
        var body = Demo();
        body["alignment"] = JsonNode.Parse("""{"amount":89.5,"currency":"EUR"}""");
        body["limits"]!["budget"]!["amount"] = 140;
        body["parts"]!.AsArray().Add(Part("bar", "antiRollBar", 60, """{"rear":{"antiRollBar":{"rollRateNmPerDeg":130}}}"""));
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var bar = Assert.Single(answer.GetProperty("packages").EnumerateArray(), one => one.GetProperty("parts").EnumerateArray().Any(id => id.GetString() == "bar"));
        Assert.Equal(60, bar.GetProperty("cost").Number("amount"));
        Assert.Empty(bar.GetProperty("settings").EnumerateArray());
        Assert.StartsWith("Fit 'bar' for 60 EUR.", bar.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains(answer.GetProperty("packages").EnumerateArray(), one => one.GetProperty("parts").GetArrayLength() == 0 && one.GetProperty("settings").GetArrayLength() == 1);

        // A sum of money has its currency wherever it stands.
        Assert.Equal("With what it needs it costs more than the budget of 140 EUR.", answer.GetProperty("rejected").EnumerateArray().Single(one => one.GetProperty("parts")[0].GetString() == "eccentric-bolts").GetProperty("reason").GetString());
    }

    // Springs of another rate and nothing said of their length: the wheels on offer cannot be said to fit at a height nobody knows.
    [Fact]
    public async Task Wheels_at_a_height_nobody_knows_are_not_recommended()
    {
        var body = Demo().WithParts(
            Part("springs", "spring", 200, """{"front":{"spring":{"rateNPerMm":34}}}"""),
            Part("wheels-8", "wheel", 300, """{"front":{"wheel":{"marking":"8Jx17 ET42"}}}"""));
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var both = Assert.Single(answer.GetProperty("packages").EnumerateArray(), one => one.GetProperty("parts").GetArrayLength() == 2);
        Assert.Contains(both.GetProperty("doubts").EnumerateArray(), one => one.GetProperty("code").GetString() == "fitUnknown" && one.GetProperty("reason").GetString()!.StartsWith("How high the front stands", StringComparison.Ordinal));
    }

    private static string Unknown(JsonElement answer, string id) =>
        Assert.Single(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == id).GetProperty("reason").GetString()!;

    private static IEnumerable<string> Nulls(JsonElement value, string place) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => Nulls(member.Value, $"{place}/{member.Name}")),
        JsonValueKind.Null => [place],
        _ => [],
    };
}
