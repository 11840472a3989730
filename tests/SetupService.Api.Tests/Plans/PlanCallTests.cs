using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>A plan's numbers are those of the single calls; what is wrong with a request is named.</summary>
public sealed class PlanCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Every package answered, with wheels that fit among the parts: what it holds in each bend, rides and stands by what-if's together.
    [Fact]
    public async Task Every_number_of_a_package_is_that_of_the_single_calls()
    {
        var body = Demo();
        body.Remove("heldLateralG");
        body["parts"]!.AsArray().Add(Part("wheels-8", "wheel", 300, """{"front":{"wheel":{"marking":"8Jx17 ET42"}},"rear":{"wheel":{"marking":"8Jx17 ET42"}}}"""));
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        var packages = answer.GetProperty("packages").EnumerateArray().ToArray();
        Assert.Contains(packages, one => one.GetProperty("checks").GetArrayLength() == 2);
        Assert.Contains(packages, one => one.GetProperty("parts").GetArrayLength() >= 2);
        foreach (var package in packages) await PlanAgainstSingleCalls.PackageHoldsAsync(fixture.Client, body, answer, package);
        await PlanAgainstSingleCalls.CarAsGivenAsync(fixture.Client, body, answer);
    }

    [Theory]
    [InlineData("/parts/0/kind", "\"exhaust\"", "/parts/0/kind", FaultCodes.UnknownWord)]
    [InlineData("/parts/0/price/currency", null, "/parts/0/price/currency", FaultCodes.Required)]
    [InlineData("/parts/0/price/currency", "\"eur\"", "/parts/0/price/currency", FaultCodes.Unreadable)]
    [InlineData("/parts/1/price/currency", "\"USD\"", "/parts/1/price/currency", FaultCodes.Inconsistent)]
    [InlineData("/parts/1/id", "\"eccentric-bolts\"", "/parts/1/id", FaultCodes.Inconsistent)]
    [InlineData("/parts/0/id", "\" \"", "/parts/0/id", FaultCodes.Required)]
    [InlineData("/parts/0/requires", "[\"nothing\"]", "/parts/0/requires/0", FaultCodes.UnknownWord)]
    [InlineData("/parts/0/pairsWith", "[\"nothing\"]", "/parts/0/pairsWith/0", FaultCodes.UnknownWord)]
    [InlineData("/parts/0/excludes", "[\"eccentric-bolts\"]", "/parts/0/excludes/0", FaultCodes.Inconsistent)]
    [InlineData("/parts/1/apartWith/0/part", "\"nothing\"", "/parts/1/apartWith/0/part", FaultCodes.UnknownWord)]
    [InlineData("/parts/1/apartWith/0/savedHours", "9", "/parts/1/apartWith", FaultCodes.Inconsistent)]
    [InlineData("/parts/0/change", null, "/parts/0/change", FaultCodes.Required)]
    [InlineData("/parts/2/change", "{\"vehicle\":{\"front\":{\"spring\":{\"rateNPerMm\":27}}}}", "/parts/2/change", FaultCodes.Inconsistent)]
    [InlineData("/parts/2/change", "{\"label\":\"paint\",\"vehicle\":{\"label\":\"red\"}}", "/parts/2/change", FaultCodes.Inconsistent)]
    [InlineData("/parts/2/change", "{\"vehicle\":{\"front\":{\"spring\":{\"rateNPerMm\":-5}}}}", "/parts/2/change/vehicle/front/spring/rateNPerMm", FaultCodes.OutOfRange)]
    [InlineData("/parts/2/change", "{\"remove\":[\"/front/spring\"]}", "/parts/2/change/remove/0", FaultCodes.UnknownWord)]
    [InlineData("/bends", "[]", "/bends", FaultCodes.TooFew)]
    [InlineData("/bends/0/cornerRadiusM", null, "/bends/0/cornerRadiusM", FaultCodes.Required)]
    [InlineData("/bends/0/speedKmh", "80", "/bends/0/speedKmh", FaultCodes.Inconsistent)]
    [InlineData("/goals", "[{\"goal\":\"grip\"},{\"goal\":\"grip\"}]", "/goals/1", FaultCodes.Inconsistent)]
    [InlineData("/goals/0/weight", "0", "/goals/0/weight", FaultCodes.OutOfRange)]
    [InlineData("/use", null, "/use", FaultCodes.Required)]
    [InlineData("/vehicle/wheelbaseMm", null, "/vehicle/wheelbaseMm", FaultCodes.Required)]
    [InlineData("/wear/tyres/1/position", "\"frontLeft\"", "/wear/tyres/1/position", FaultCodes.Inconsistent)]
    [InlineData("/wear/readOn", "\"yesterday\"", "/wear/readOn", FaultCodes.Unreadable)]
    public async Task What_is_wrong_is_named(string at, string? value, string place, string code)
    {
        var refusal = await fixture.Client.RefusalOf(PlansPath, Put(Demo(), at, value).ToJsonString());

        Assert.Contains(refusal.GetProperty("errors").EnumerateArray(), one => one.GetProperty("pointer").GetString() == place && one.GetProperty("code").GetString() == code);
    }

    [Fact]
    public async Task Every_fault_comes_in_one_answer()
    {
        var body = Demo();
        body["parts"]![0]!["kind"] = "exhaust";
        body["parts"]![1]!["price"]!["currency"] = "USD";
        body["parts"]![2]!["requires"] = new JsonArray("nothing");
        body["vehicle"]!["front"]!["tyre"]!["marking"] = "round";

        var refusal = await fixture.Client.RefusalOf(PlansPath, body.ToJsonString());

        string[] places = [.. refusal.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()!)];
        Assert.All((string[])["/parts/0/kind", "/parts/1/price/currency", "/parts/2/requires/0", "/vehicle/front/tyre/marking"], place => Assert.Contains(place, places));
    }

    [Fact]
    public async Task Parts_that_can_be_in_no_package_are_named()
    {
        var body = Demo();
        body["parts"]![0]!["requires"] = new JsonArray("top-mounts");
        body["parts"]![1]!["excludes"] = new JsonArray("eccentric-bolts");

        var refusal = await fixture.Client.RefusalOf(PlansPath, body.ToJsonString());

        var fault = Assert.Single(refusal.GetProperty("errors").EnumerateArray());
        Assert.Equal("/parts/0/requires", fault.GetProperty("pointer").GetString());
        Assert.Contains("exclude each other", fault.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    // A rim limit the fitted wheels break, and no others on offer: one limit by itself. A budget of nothing and a limit only parts reach: both together.
    [Theory]
    [InlineData("""{"greatestRimWidthIn":7}""", new[] { "/limits/greatestRimWidthIn" })]
    [InlineData("""{"budget":{"amount":50,"currency":"EUR"},"leastLimitG":1.115}""", new[] { "/limits/budget", "/limits/leastLimitG" })]
    public async Task Limits_that_conflict_are_named_with_the_nearest_package(string limits, string[] places)
    {
        var body = Demo();
        body["limits"] = JsonNode.Parse(limits);
        using var response = await fixture.Client.PostAsync(PlansPath, body.ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.NotComputable);

        Assert.Equal(places, problem.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()!));
        Assert.Contains("Nearest is the package with", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_packages_than_are_evaluated_are_refused_with_their_number()
    {
        var body = Demo().WithParts([.. Enumerable.Range(0, 11).Select(i => Part(FormattableString.Invariant($"p{i}"), "arm", 1, Member(i)))]);
        body["limits"] = null;
        using var response = await fixture.Client.PostAsync(PlansPath, body.ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.NotComputable);

        Assert.Contains("2,048 packages", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);

        static string Member(int i) => i switch
        {
            0 => """{"front":{"trackMm":1512}}""",
            1 => """{"rear":{"trackMm":1502}}""",
            2 => """{"front":{"unsprungMassKg":37}}""",
            3 => """{"rear":{"unsprungMassKg":35}}""",
            4 => """{"front":{"antiRollBar":{"rollRateNmPerDeg":330}}}""",
            5 => """{"rear":{"antiRollBar":{"rollRateNmPerDeg":120}}}""",
            6 => """{"front":{"damper":{"bumpNsPerM":1600}}}""",
            7 => """{"rear":{"damper":{"bumpNsPerM":1800}}}""",
            8 => """{"front":{"damper":{"reboundNsPerM":3300}}}""",
            9 => """{"rear":{"damper":{"reboundNsPerM":3700}}}""",
            _ => """{"front":{"bumpTravelMm":70}}""",
        };
    }

    // The same part dearer beside it, and parts that set one member differently.
    [Fact]
    public async Task Parts_that_set_one_member_differently_are_not_fitted_together()
    {
        var body = Demo().WithParts(
            Part("bar-360", "antiRollBar", 200, """{"front":{"antiRollBar":{"rollRateNmPerDeg":360}}}"""),
            Part("bar-420", "antiRollBar", 240, """{"front":{"antiRollBar":{"rollRateNmPerDeg":420}}}"""),
            Part("bar-360-dear", "antiRollBar", 300, """{"front":{"antiRollBar":{"rollRateNmPerDeg":360}}}"""));
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        // None, each alone, and the two that are alike together.
        Assert.Equal(5, answer.GetProperty("searched").GetProperty("packageCount").GetInt32());
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/parts/0/excludes" && one.GetProperty("text").GetString() == "bar-420");
        Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => one.GetProperty("parts").EnumerateArray().Any(id => id.GetString() == "bar-360-dear"));
    }

    // With what it costs to have angles set: whatever moves or sets one has it in its cost once; where it is not to be had, nothing is set.
    [Fact]
    public async Task An_alignment_is_paid_once_where_angles_are_set()
    {
        var body = Demo();
        body["parts"]!.AsArray().Add(Part("front-bar", "antiRollBar", 200, """{"front":{"antiRollBar":{"rollRateNmPerDeg":200}},"rear":{"antiRollBar":{"rollRateNmPerDeg":150}}}"""));
        body["limits"]!.AsObject().Remove("budget");
        var without = await fixture.Client.AnswerOf(PlansPath, body);
        body["alignment"] = JsonNode.Parse("""{"amount":90,"currency":"EUR"}""");
        var with = await fixture.Client.AnswerOf(PlansPath, body);
        body["limits"]!["budget"] = JsonNode.Parse("""{"amount":80,"currency":"EUR"}""");
        var poor = await fixture.Client.AnswerOf(PlansPath, body);

        var before = without.GetProperty("packages").EnumerateArray().ToDictionary(Name, one => one.GetProperty("cost").Number("amount"));
        Assert.All(with.GetProperty("packages").EnumerateArray().Where(one => before.ContainsKey(Name(one))), one =>
        {
            var isSet = one.GetProperty("settings").GetArrayLength() > 0;
            Assert.Equal(isSet || Name(one).Contains("springs", StringComparison.Ordinal) ? 90 : 0, one.GetProperty("cost").Number("alignment"));
            Assert.Equal(before[Name(one)] + one.GetProperty("cost").Number("alignment"), one.GetProperty("cost").Number("amount"), 1e-9);
        });
        Assert.Contains(with.GetProperty("packages").EnumerateArray(), one => Name(one) == "" && one.GetProperty("cost").Number("amount") == 90);
        Assert.All(poor.GetProperty("packages").EnumerateArray(), one => Assert.Empty(one.GetProperty("settings").EnumerateArray()));

        static string Name(JsonElement one) => string.Join(' ', one.GetProperty("parts").EnumerateArray().Select(id => id.GetString()));
    }
}
