using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>Every number in a plan is the single call's own: over generated cars (figures, readings, points), parts, bends and uses, each by its seed.</summary>
public sealed class PlanAgreementTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly (string Wheel, string Tyre, string Other, string OtherTyre)[] Sizes =
    [
        ("7.5Jx17 ET45", "225/45R17 91W", "8Jx17 ET42", "235/45R17 94W"),
        ("6.5Jx16 ET40", "205/50R16 87V", "7Jx16 ET37", "215/50R16 91V"),
        ("6Jx15 ET38", "195/50R15 82V", "7Jx15 ET25", "205/50R15 86V"),
    ];

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(1, 10)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public async Task Every_number_of_every_package_is_that_of_the_single_calls(int seed)
    {
        var body = Any(new Random(seed));
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        await PlanAgainstSingleCalls.CarAsGivenAsync(fixture.Client, body, answer);
        Assert.All(answer.GetProperty("packages").EnumerateArray(), package => Assert.Equal(Cost(body, package), package.GetProperty("cost").Number("amount"), 1e-6));
        foreach (var package in answer.GetProperty("packages").EnumerateArray().ToArray()) await PlanAgainstSingleCalls.PackageHoldsAsync(fixture.Client, body, answer, package);
    }

    // The front of the demo car wears fastest, now and set so: the life of its four tyres is that of the axle.
    [Theory]
    [InlineData(-1.3)]
    [InlineData(-1.7)]
    [InlineData(-2.2)]
    public async Task Tread_life_is_that_of_the_diagnosis(double endsAtDeg)
    {
        var body = Demo().WithParts();
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = endsAtDeg;
        body["use"] = JsonNode.Parse("""{"roadKmPerYear":4200,"trackDaysPerYear":1,"lapsPerDay":96,"lapKm":3.2}""");
        var plan = await fixture.Client.AnswerOf(PlansPath, body);
        var asked = body["wear"]!.DeepClone().AsObject();
        asked["vehicle"] = body["vehicle"]!.DeepClone();
        var diagnosis = await fixture.Client.AnswerOf("/v1/wear/diagnosis", asked);

        var package = plan.GetProperty("packages")[0];
        var setDeg = Assert.Single(package.GetProperty("settings").EnumerateArray()).Number("camberDeg");
        var trades = diagnosis.GetProperty("causes")[0].GetProperty("actions")[0].GetProperty("tradeOff").EnumerateArray();
        var trade = Assert.Single(trades, one => Math.Abs(one.Number("staticCamberDeg") - setDeg) < 0.01);
        Assert.Equal(trade.Number("treadLifeFactor"), package.GetProperty("after").Number("treadLifeFactor"), 1e-6);
        Assert.Equal(1, plan.GetProperty("before").Number("treadLifeFactor"), 1e-12);
    }

    // A front set to −1.5° and read worn outside twice as far as inside: more camber would wear it out sooner by the wear model, which the readings contradict. No package is told a life by it.
    [Fact]
    public async Task A_plan_tells_no_life_by_a_model_that_the_shoulders_contradict()
    {
        var body = Demo().WithParts();
        var front = body["vehicle"]!["front"]!;
        front["alignment"]!["camberDeg"] = -1.5;
        front["suspension"]!["table"] = "-60 -0.9\n-30 -1.25\n0 -1.5\n30 -1.7\n60 -1.75";
        front["adjustable"]!["camberDeg"]!["from"] = -3.2;
        body["wear"]!["use"] = JsonNode.Parse("""{"roadKm":6000,"trackLaps":60,"lapKm":3.2,"lateralG":0.7,"cornerRadiusM":55}""");
        foreach (var tyre in body["wear"]!["tyres"]!.AsArray())
        {
            tyre!["newDepthMm"] = 8;
            tyre["depthMm"] = JsonNode.Parse(tyre["position"]!.GetValue<string>().StartsWith("front", StringComparison.Ordinal) ? """{"outer":3.2,"centre":5.0,"inner":5.4}""" : """{"outer":6.0,"centre":6.3,"inner":6.1}""");
        }

        var asked = body["wear"]!.DeepClone().AsObject();
        asked["vehicle"] = body["vehicle"]!.DeepClone();
        var diagnosis = await fixture.Client.AnswerOf("/v1/wear/diagnosis", asked);
        var plan = await fixture.Client.AnswerOf(PlansPath, body);

        Assert.True(diagnosis.GetProperty("causes")[0].GetProperty("actions")[0].GetProperty("stepDeg").GetDouble() < 0);
        Assert.Equal(JsonValueKind.Null, plan.GetProperty("before").GetProperty("treadLifeFactor").ValueKind);
        Assert.All(plan.GetProperty("packages").EnumerateArray(), package => Assert.Equal(JsonValueKind.Null, package.GetProperty("after").GetProperty("treadLifeFactor").ValueKind));
        var gap = Assert.Single(plan.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/before/treadLifeFactor");
        Assert.Contains("front shoulders as read contradict", gap.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    private static double Cost(JsonObject body, JsonElement package)
    {
        var chosen = body["parts"]!.AsArray().Where(part => package.GetProperty("parts").EnumerateArray().Any(id => id.GetString() == part!["id"]!.GetValue<string>())).ToArray();
        var hours = chosen.Sum(part => part!["labourHours"]?.GetValue<double>() ?? 0);
        var isAligned = package.GetProperty("settings").GetArrayLength() > 0 || chosen.Any(part => part!["kind"]!.GetValue<string>() is "spring" or "damper" or "topMount");
        return chosen.Sum(part => part!["price"]!["amount"]!.GetValue<double>()) + (hours * body["labourPerHour"]!["amount"]!.GetValue<double>()) + (isAligned ? body["alignment"]!["amount"]!.GetValue<double>() : 0);
    }

    private static JsonObject Any(Random random)
    {
        var size = Sizes[random.Next(Sizes.Length)];
        var body = new JsonObject
        {
            ["vehicle"] = new JsonObject
            {
                ["wheelbaseMm"] = Round(random, 2300, 2850, 1),
                ["centreOfGravityHeightMm"] = Round(random, 440, 580, 1),
                ["frontAxleLoadKg"] = Round(random, 450, 780, 1),
                ["rearAxleLoadKg"] = Round(random, 450, 700, 1),
                ["front"] = Axle(random, size, isFront: true),
                ["rear"] = Axle(random, size, isFront: false),
            },
            ["bends"] = Bends(random),
            ["use"] = new JsonObject { ["roadKmPerYear"] = Round(random, 0, 12_000, 500), ["trackDaysPerYear"] = random.Next(1, 12) },
            ["labourPerHour"] = Money(Round(random, 40, 90, 1)),
            ["alignment"] = Money(Round(random, 60, 140, 1)),
            ["goals"] = JsonNode.Parse("""[{"goal":"grip"},{"goal":"wear"},{"goal":"comfort"},{"goal":"noise"}]"""),
        };
        JsonObject[] parts =
        [
            Part("bar", "antiRollBar", Round(random, 100, 300, 1), Changed("front", "antiRollBar", "rollRateNmPerDeg", Round(random, 150, 420, 5))),
            Part("rear-bar", "antiRollBar", Round(random, 100, 300, 1), Changed("rear", "antiRollBar", "rollRateNmPerDeg", Round(random, 60, 260, 5))),
            Part("springs", "spring", Round(random, 150, 400, 1), Changed("front", "spring", "rateNPerMm", Round(random, 22, 60, 0.5)), Invariant($"\"labourHours\":{random.Next(1, 5)}")),
            Part("dampers", "damper", Round(random, 300, 900, 1), Changed("rear", "damper", "bumpNsPerM", Round(random, 900, 2400, 50)), Invariant($"\"labourHours\":{random.Next(1, 4)}")),
            Part("mounts", "topMount", Round(random, 100, 500, 1), """{"front":{"adjustable":{"camberDeg":{"from":-3,"to":0}}}}""", "\"joint\":\"firm\""),
            Part("wheels", "wheel", Round(random, 200, 800, 1), "{\"front\":{\"wheel\":{\"marking\":\"" + size.Other + "\"}},\"rear\":{\"wheel\":{\"marking\":\"" + size.Other + "\"}}}"),
            Part("tyres", "tyre", Round(random, 300, 700, 1), "{\"rear\":{\"tyre\":{\"marking\":\"" + size.OtherTyre + "\"}}}", "\"noiseDb\":70"),
        ];
        if (random.Next(2) == 0) parts[2]["change"]!["keepRideHeight"] = true;
        random.Shuffle(parts);
        return body.WithParts(parts[..4]);
    }

    private static JsonObject Axle(Random random, (string Wheel, string Tyre, string Other, string OtherTyre) size, bool isFront)
    {
        var camberDeg = Round(random, -2, 0, 0.1);
        var axle = new JsonObject
        {
            ["unsprungMassKg"] = Round(random, 28, 45, 1),
            ["wheel"] = new JsonObject { ["marking"] = size.Wheel },
            ["tyre"] = new JsonObject { ["marking"] = size.Tyre, ["pressureKpa"] = Round(random, 180, 260, 10) },
            ["alignment"] = new JsonObject { ["camberDeg"] = camberDeg, ["toeDeg"] = Round(random, -0.1, 0.2, 0.01) },
            ["adjustable"] = new JsonObject { ["camberDeg"] = new JsonObject { ["from"] = camberDeg - Round(random, 0, 1.5, 0.1), ["to"] = camberDeg + 0.3 } },
            ["spring"] = new JsonObject { ["rateNPerMm"] = Round(random, 22, 50, 1), ["motionRatio"] = Round(random, 0.7, 1, 0.01) },
            ["damper"] = new JsonObject { ["bumpNsPerM"] = Round(random, 1000, 2000, 50), ["reboundNsPerM"] = Round(random, 2200, 4000, 50) },
            ["antiRollBar"] = new JsonObject { ["rollRateNmPerDeg"] = Round(random, 50, 320, 10) },
            ["bumpTravelMm"] = Round(random, 70, 95, 1),
            ["reboundTravelMm"] = Round(random, 80, 110, 1),
            ["clearance"] = new JsonObject { ["inboardMm"] = Round(random, 8, 25, 1), ["outboardMm"] = Round(random, 8, 25, 1), ["radialMm"] = Round(random, 8, 25, 1) },
        };
        var kind = random.Next(3);
        if (kind == 2)
        {
            // The points of a wishbone axle, which say its track and roll centre themselves.
            var points = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("further/plan-rear-driven.request.json")))!["vehicle"]![isFront ? "front" : "rear"]!["suspension"]!.DeepClone();
            axle["suspension"] = points;
            return axle;
        }

        axle["trackMm"] = Round(random, 1420, 1580, 1);
        axle["rollCentreHeightMm"] = Round(random, 20, 120, 1);
        if (kind == 1)
        {
            var perMm = Round(random, 0.003, 0.02, 0.001);
            axle["suspension"] = new JsonObject
            {
                ["kind"] = "measured",
                ["table"] = string.Join('\n', new[] { -90, -60, -30, 0, 30, 60, 90 }.Select(mm => Invariant($"{mm} {camberDeg - (perMm * mm) - (2e-5 * mm * mm):0.00}"))),
            };
        }

        return axle;
    }

    private static JsonArray Bends(Random random) => new([.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => new JsonObject
    {
        ["lateralG"] = Round(random, 0.4, 0.85, 0.01),
        ["cornerRadiusM"] = Round(random, 25, 120, 1),
        ["sharePct"] = Round(random, 10, 60, 1),
        ["turn"] = random.Next(2) == 0 ? "left" : "right",
    })]);

    private static JsonObject Money(double amount) => new() { ["amount"] = amount, ["currency"] = "EUR" };

    private static string Changed(string axle, string part, string member, double value) => Invariant($"{{\"{axle}\":{{\"{part}\":{{\"{member}\":{value}}}}}}}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static double Round(Random random, double from, double to, double step) => Math.Round(Math.Round((from + (random.NextDouble() * (to - from))) / step) * step, 6);
}
