using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>Every number of the sheets is the single call's own; what is wrong with a choice is named; nothing is invented.</summary>
public sealed class SheetsCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Sheets = "/v1/plans/sheets";

    // Any choice of the parts that change the car, against the package of the plan with the same parts.
    [Fact]
    public async Task The_alignment_is_that_of_the_plans_package()
    {
        var packages = 0;
        for (var choice = 0; choice < 8; choice++)
        {
            string[] chosen = [.. new[] { "top-mounts", "springs", "wheels-8" }.Where((_, i) => (choice & (1 << i)) != 0)];
            var body = Choosing(chosen);
            var plan = await fixture.Client.AnswerOf(PlansPath, AsPlan(body));
            var package = plan.GetProperty("packages").EnumerateArray().FirstOrDefault(one => Ids(one).Order().SequenceEqual(chosen.Order()));
            if (package.ValueKind != JsonValueKind.Object) continue;
            packages++;
            var sheets = await fixture.Client.AnswerOf(Sheets, body);

            Assert.Equal(Ids(package).Order(), Ids(sheets.GetProperty("package")).Order());
            Same(package.GetProperty("settings"), sheets.GetProperty("package").GetProperty("settings"));
            Same(package.GetProperty("cost"), sheets.GetProperty("package").GetProperty("cost"));
            var lines = sheets.GetProperty("alignment").GetProperty("lines").EnumerateArray().ToArray();
            foreach (var setting in package.GetProperty("settings").EnumerateArray())
            {
                var set = lines.Where(line => line.GetProperty("angle").GetString() == "camber" && line.GetProperty("axle").GetString() == setting.GetProperty("axle").GetString()).ToArray();
                Assert.Equal(2, set.Length);
                Assert.All(set, line => Assert.Equal(setting.Number("camberDeg"), line.Number("aimDeg"), 2e-4));
                Assert.All(set, line => Assert.True(Math.Abs(line.Number("changeDeg")) <= 1.5 + 1e-3 && (line.Number("targetDeg") - setting.Number("camberDeg")) * setting.Number("changeDeg") <= 1e-3));
            }

            foreach (var height in sheets.GetProperty("alignment").GetProperty("rideHeights").EnumerateArray())
                Assert.Equal(package.GetProperty("after").GetProperty("road").Number(height.GetProperty("axle").GetString() + "RideHeightChangeMm"), height.Number("changeMm"), 1e-5);
        }

        Assert.True(packages >= 3, $"{packages}");
    }

    // The first step is the plan's: its recommended package asked for by nothing.
    [Fact]
    public async Task Without_a_choice_the_sheets_are_of_the_recommendation_with_its_first_step()
    {
        var body = Example();
        body.Remove("chosen");
        var plan = await fixture.Client.AnswerOf(PlansPath, AsPlan(body));
        var sheets = await fixture.Client.AnswerOf(Sheets, body);

        Assert.True(sheets.GetProperty("package").GetProperty("isRecommendation").GetBoolean());
        Assert.Equal(Ids(plan.GetProperty("recommended")), Ids(sheets.GetProperty("package")));
        foreach (var step in plan.GetProperty("recommended").GetProperty("firstStep").GetProperty("settings").EnumerateArray())
            Assert.Contains(sheets.GetProperty("alignment").GetProperty("lines").EnumerateArray(), line => line.GetProperty("axle").GetString() == step.GetProperty("axle").GetString() && line.GetProperty("angle").GetString() == "camber" && line.Number("targetDeg") == step.Number("camberDeg"));
    }

    [Fact]
    public async Task The_pressures_are_those_of_temperatures()
    {
        var body = Choosing();
        (body["coldTemperatureC"], body["nextColdTemperatureC"], body["altitudeM"]) = (18, 27, 240);
        var heat = await fixture.Client.AnswerOf("/v1/wear/temperatures", new JsonObject
        {
            ["vehicle"] = body["vehicle"]!.DeepClone(),
            ["tyres"] = body["wear"]!["tyres"]!.DeepClone(),
            ["readOn"] = body["wear"]!["readOn"]!.DeepClone(),
            ["coldTemperatureC"] = 18,
            ["nextColdTemperatureC"] = 27,
            ["altitudeM"] = 240,
        });
        var sheets = await fixture.Client.AnswerOf(Sheets, body);

        foreach (var tyre in heat.GetProperty("tyres").EnumerateArray())
        {
            var line = sheets.GetProperty("pressures").EnumerateArray().Single(one => one.GetProperty("position").GetString() == tyre.GetProperty("position").GetString());
            var pressure = tyre.GetProperty("pressure");
            Assert.Equal(pressure.Number("leastColdKpa"), line.Number("leastColdKpa"), 1e-6);
            Assert.Equal(pressure.GetProperty("text").GetString(), line.GetProperty("text").GetString());
            var step = heat.GetProperty("actions").EnumerateArray().SelectMany(action => action.GetProperty("steps").EnumerateArray()).Single(one => one.GetProperty("position").GetString() == line.GetProperty("position").GetString());
            Assert.Equal(step.Number("toKpa"), line.Number("coldKpa"), 1e-6);
            if (step.Number("toKpa") == step.Number("towardsKpa")) Assert.Equal(pressure.GetProperty("coldNext").GetProperty("hotThenKpa").Number("value"), line.Number("hotKpa"), 1e-6);
        }
    }

    [Fact]
    public async Task The_proof_is_that_of_before_after()
    {
        var body = Example();
        var sheets = await fixture.Client.AnswerOf(Sheets, body);
        var test = sheets.GetProperty("test");
        var asked = new JsonObject { ["before"] = body["before"]!.DeepClone(), ["expectedRatio"] = test.Number("expectedRatio"), ["plannedReadings"] = test.Number("readingCount"), ["plannedLaps"] = test.Number("plannedLaps") };
        asked["plannedReadings"] = (int)test.Number("readingCount");
        var proof = await fixture.Client.AnswerOf("/v1/wear/before-after", asked);

        // The ratio asked with is the nine digits that were answered.
        Same(proof.GetProperty("tyres"), test.GetProperty("tyres"));
        Assert.Contains(proof.GetProperty("tyres").EnumerateArray().SelectMany(tyre => tyre.GetProperty("zones").EnumerateObject()), zone => test.GetProperty("enough").GetString()!.Contains(zone.Value.GetProperty("text").GetString()![..60], StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_fit_is_that_of_the_check_at_the_height_the_package_gives()
    {
        var body = Choosing("wheels-8");
        var sheets = await fixture.Client.AnswerOf(Sheets, body);
        var vehicle = body["vehicle"]!.DeepClone();
        var check = await fixture.Client.AnswerOf(Calls.Check, new JsonObject
        {
            ["axle"] = "front",
            ["vehicle"] = vehicle,
            ["candidate"] = new JsonObject { ["wheel"] = body["parts"]![3]!["change"]!["vehicle"]!["front"]!["wheel"]!.DeepClone(), ["tyre"] = vehicle["front"]!["tyre"]!.DeepClone() },
        });

        var fit = Assert.Single(sheets.GetProperty("fit").EnumerateArray());
        Assert.Equal(check.GetProperty("summary").GetString(), fit.GetProperty("check").GetProperty("summary").GetString());
        Same(check.GetProperty("checks"), fit.GetProperty("check").GetProperty("checks"));
    }

    // Another tyre: nothing read of the old one is told of it.
    [Fact]
    public async Task What_was_read_of_a_tyre_is_not_told_of_another()
    {
        var body = Choosing("tyres-94");
        body["parts"]!.AsArray().Add(Part("tyres-94", "tyre", 500, """{"front":{"tyre":{"marking":"225/45R17 94W XL"}}}"""));
        var sheets = await fixture.Client.AnswerOf(Sheets, body);

        foreach (var (tyre, pressure) in sheets.GetProperty("tyres").EnumerateArray().Zip(sheets.GetProperty("pressures").EnumerateArray()))
        {
            var isFront = tyre.GetProperty("position").GetString()!.StartsWith("front", StringComparison.Ordinal);
            Assert.Equal(isFront, tyre.GetProperty("isOther").GetBoolean());
            Assert.Equal(isFront, tyre.GetProperty("depthMm").ValueKind == JsonValueKind.Null);
            Assert.Equal(isFront, pressure.GetProperty("coldKpa").ValueKind == JsonValueKind.Null);
        }

        Assert.Contains("Other tyres", sheets.GetProperty("test").GetProperty("proof").GetString(), StringComparison.Ordinal);
    }

    // Nothing chosen and nothing to set: the sheets are of the car as it stands, say so everywhere, and promise no proof.
    [Fact]
    public async Task Of_a_car_to_which_nothing_is_done_the_sheets_say_so()
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("further/plan-jack-and-ruler.request.json")))!.AsObject();
        body["chosen"] = new JsonArray();
        var sheets = await fixture.Client.AnswerOf(Sheets, body);

        Assert.StartsWith("Nothing is to be fitted or set", sheets.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains("leave it so", Assert.Single(sheets.GetProperty("workOrder").GetProperty("steps").EnumerateArray()).GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal("Wheels and tyres stay, so no fit is checked or drawn.", sheets.GetProperty("fitText").GetString());
        Assert.All(sheets.GetProperty("alignment").GetProperty("lines").EnumerateArray(), line => Assert.Equal("read", line.GetProperty("task").GetString()));
        var test = sheets.GetProperty("test");
        Assert.All((string[])["proof", "enough"], one => Assert.StartsWith("Nothing is changed, so", test.GetProperty(one).GetString(), StringComparison.Ordinal));
        Assert.DoesNotContain("go back", test.GetProperty("stop").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain(Texts(test), one => one.Text.Contains("parts go on", StringComparison.Ordinal));
        Assert.DoesNotContain(sheets.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() is "alignment" or "oneChangeAtATime");
    }

    // A drawing belongs where wheel or tyre changes; the sheet says what is drawn, and that camber is not in it.
    [Theory]
    [InlineData("springs", "Wheels and tyres stay, so no fit is checked or drawn. Camber")]
    [InlineData("wheels-8", "Checked and drawn is the front; the other axle keeps its wheels and tyres. The camber")]
    public async Task What_is_drawn_and_what_is_not_is_said(string chosen, string says) =>
        Assert.StartsWith(says, (await fixture.Client.AnswerOf(Sheets, Choosing(chosen))).GetProperty("fitText").GetString(), StringComparison.Ordinal);

    // A car of figures only: what nobody told is blank and named.
    [Fact]
    public async Task A_car_of_figures_only_has_blanks_and_no_inventions()
    {
        var body = Choosing("springs");
        body.Remove("wear");
        body.Remove("before");
        body.Remove("torques");
        body.Remove("frontArchHeightMm");
        foreach (var axle in (string[])["front", "rear"])
        {
            foreach (var name in (string[])["alignment", "suspension", "adjustable", "placardPressureKpa"]) body["vehicle"]![axle]!.AsObject().Remove(name);
        }

        body["parts"]![0]!["change"] = JsonNode.Parse("""{"vehicle":{"front":{"adjustable":{"camberDeg":{"from":-3.2,"to":-0.8}}}}}""");
        var sheets = await fixture.Client.AnswerOf(Sheets, body);

        Assert.All(sheets.GetProperty("alignment").GetProperty("lines").EnumerateArray(), line => Assert.Equal(JsonValueKind.Null, line.GetProperty("targetDeg").ValueKind));
        Assert.All(sheets.GetProperty("workOrder").GetProperty("steps").EnumerateArray().SelectMany(step => step.GetProperty("torques").EnumerateArray()), one => Assert.Equal("maker's figure", one.GetProperty("text").GetString()));
        Assert.All(sheets.GetProperty("pressures").EnumerateArray(), one => Assert.Equal(JsonValueKind.Null, one.GetProperty("coldKpa").ValueKind));
        Assert.All((string[])["torqueNm", "enough", "/test/expectedRatio", "/pressures/0/coldKpa", "/alignment/lines/0/targetDeg"], id => Assert.Contains(sheets.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == id));
    }

    [Theory]
    [InlineData("/chosen/0", "\"nothing\"", "/chosen/0", FaultCodes.UnknownWord)]
    [InlineData("/chosen/1", "\"top-mounts\"", "/chosen/1", FaultCodes.Inconsistent)]
    [InlineData("/chosen/0", "\"\"", "/chosen/0", FaultCodes.UnknownWord)]
    [InlineData("/chosen/0", "null", "/chosen/0", FaultCodes.Required)]
    [InlineData("/parts/0/requires", "[\"eccentric-bolts\"]", "/chosen/0", FaultCodes.Inconsistent)]
    [InlineData("/parts/0/excludes", "[\"springs\"]", "/chosen/1", FaultCodes.Inconsistent)]
    [InlineData("/torques/0/torqueNm", null, "/torques/0/torqueNm", FaultCodes.Required)]
    [InlineData("/torques/0/torqueNm", "0", "/torques/0/torqueNm", FaultCodes.OutOfRange)]
    [InlineData("/torques/0/fastener", "\"\"", "/torques/0/fastener", FaultCodes.UnknownWord)]
    [InlineData("/torques/0/fastener", null, "/torques/0/fastener", FaultCodes.Required)]
    [InlineData("/torques/1", "{\"fastener\":\"wheelFasteners\",\"torqueNm\":90}", "/torques/1", FaultCodes.Inconsistent)]
    [InlineData("/testSessionCount", "0", "/testSessionCount", FaultCodes.OutOfRange)]
    [InlineData("/before/tyres/0/readings/1/trackLaps", "-1", "/before/tyres/0/readings/1/trackLaps", FaultCodes.OutOfRange)]
    [InlineData("/before/tyres", "[]", "/before/tyres", FaultCodes.TooFew)]
    [InlineData("/goals", "[{\"goal\":\"grip\"},{\"goal\":\"grip\"}]", "/goals/1", FaultCodes.Inconsistent)]
    [InlineData("/vehicle/wheelbaseMm", null, "/vehicle/wheelbaseMm", FaultCodes.Required)]
    public async Task What_is_wrong_is_named(string at, string? value, string place, string code)
    {
        var body = Example();
        body["parts"]!.AsArray().Add(Part("eccentric-bolts", "eccentricBolt", 60, """{"front":{"adjustable":{"camberDeg":{"from":-2.4}}}}"""));
        var refusal = await fixture.Client.RefusalOf(Sheets, Put(body, at, value).ToJsonString());

        Assert.Contains(refusal.GetProperty("errors").EnumerateArray(), one => one.GetProperty("pointer").GetString() == place && one.GetProperty("code").GetString() == code);
    }

    // What no careful workshop builds: a tyre below the load, springs the dampers cannot hold, a package beyond the caller's own budget.
    [Theory]
    [InlineData("""{"front":{"tyre":{"marking":"225/45R17 70W"}}}""", "tyre", 100, "load")]
    [InlineData("""{"front":{"spring":{"rateNPerMm":140},"rideHeightChangeMm":-15}}""", "spring", 100, "dampers do not suit")]
    [InlineData("""{"front":{"trackMm":1512}}""", "arm", 99_000, "the budget is 5000 EUR")]
    public async Task A_package_that_is_out_of_the_question_gets_no_sheets(string change, string kind, double price, string reason)
    {
        var body = Choosing("bad").WithParts(Part("bad", kind, price, change));
        body["limits"] = JsonNode.Parse("""{"budget":{"amount":5000,"currency":"EUR"}}""");
        using var response = await fixture.Client.PostAsync(Sheets, body.ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.NotComputable);

        Assert.Contains(reason, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.All(problem.GetProperty("errors").EnumerateArray(), one => Assert.Equal("/chosen", one.GetProperty("pointer").GetString()));
    }

    [Fact]
    public async Task No_sentence_of_us_units_has_a_metric_one()
    {
        var body = Example();
        body["coldTemperatureC"] = 18;
        var sheets = await fixture.Client.AnswerOf(Sheets + "?units=us", body);

        var texts = Texts(sheets).Where(one => one.Name is "text" or "summary" or "loaded" or "enough" or "stop" or "when" or "what" or "explanation").Select(one => one.Text).ToArray();
        Assert.True(texts.Length > 40);
        Assert.All(texts, text => Assert.DoesNotMatch(@"\d (mm|kPa|kg|km|km/h|N m|°C)\b", text));
    }

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason() =>
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Sheets, Gen.Const(Example().ToJsonString()).Select(sound => JsonNode.Parse(sound)!.AsObject()), 250);

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("plan-sheets.request.json")))!.AsObject();

    private static JsonObject Choosing(params string[] parts)
    {
        var body = Example();
        body["chosen"] = new JsonArray([.. parts.Select(part => (JsonNode)part)]);
        return body;
    }

    private static JsonObject AsPlan(JsonObject sheets)
    {
        var plan = sheets.DeepClone().AsObject();
        foreach (var name in (string[])["chosen", "torques", "frontArchHeightMm", "rearArchHeightMm", "before"]) plan.Remove(name);
        return plan;
    }

    private static IEnumerable<string> Ids(JsonElement package) => package.GetProperty("parts").EnumerateArray().Select(id => id.GetString()!);

    private static IEnumerable<(string Name, string Text)> Texts(JsonElement value, string name = "") => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => Texts(member.Value, member.Name)),
        JsonValueKind.Array => value.EnumerateArray().SelectMany(one => Texts(one, name)),
        JsonValueKind.String => [(name, value.GetString()!)],
        _ => [],
    };

    /// <summary>The same, numbers to what one solution differs from another started elsewhere.</summary>
    private static void Same(JsonElement expected, JsonElement actual)
    {
        Assert.Equal(expected.ValueKind, actual.ValueKind);
        if (expected.ValueKind == JsonValueKind.Object)
        {
            Assert.Equal(expected.EnumerateObject().Select(one => one.Name), actual.EnumerateObject().Select(one => one.Name));
            foreach (var member in expected.EnumerateObject()) Same(member.Value, actual.GetProperty(member.Name));
        }
        else if (expected.ValueKind == JsonValueKind.Array)
        {
            Assert.Equal(expected.GetArrayLength(), actual.GetArrayLength());
            foreach (var (one, other) in expected.EnumerateArray().Zip(actual.EnumerateArray())) Same(one, other);
        }
        else if (expected.ValueKind == JsonValueKind.Number)
        {
            Assert.Equal(expected.GetDouble(), actual.GetDouble(), 2e-4 * Math.Max(1, Math.Abs(expected.GetDouble())));
        }
        else
        {
            Assert.Equal(expected.ToString(), actual.ToString());
        }
    }
}
