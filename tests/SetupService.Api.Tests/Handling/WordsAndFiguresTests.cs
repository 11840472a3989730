using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>Whole answers read as their reader does: no sentence may contradict the figures beside it, nor those another call gives of the same car. What a reader takes a word to mean is common practice, no source.</summary>
public sealed class WordsAndFiguresTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Front and rear hold 1.25 g alike.
    private const string Even =
        """
        { "label": "Tarnfell R", "body": "coupe", "drivenAxle": "rear", "wheelbaseMm": 2450, "centreOfGravityHeightMm": 450, "frontAxleLoadKg": 520, "rearAxleLoadKg": 560,
          "front": { "trackMm": 1500, "unsprungMassKg": 33, "tyre": { "marking": "205/50R16 87W", "pressureKpa": 180, "category": "semiSlick" },
            "alignment": { "camberDeg": -2.6, "toeDeg": -0.05, "casterDeg": 6.5, "steeringAxisInclinationDeg": 12 }, "spring": { "rateNPerMm": 60, "motionRatio": 0.95 },
            "antiRollBar": { "rollRateNmPerDeg": 400 }, "bumpTravelMm": 50, "reboundTravelMm": 60 },
          "rear": { "trackMm": 1490, "unsprungMassKg": 34, "tyre": { "marking": "225/45R16 89W", "pressureKpa": 180, "category": "semiSlick" },
            "alignment": { "camberDeg": -2.2, "toeDeg": 0.1 }, "spring": { "rateNPerMm": 70, "motionRatio": 0.9 }, "antiRollBar": { "rollRateNmPerDeg": 150 },
            "damper": { "bumpNsPerM": 1200, "reboundNsPerM": 2800 }, "bumpTravelMm": 55, "reboundTravelMm": 70 } }
        """;

    // A light front-driven hatch whose front camber was read over 40 mm of travel either way, its rear sprung so that a wheel lifts in hard braked turns.
    private const string Hatch =
        """
        { "label": "Larkmoor Pip", "body": "hatchback", "drivenAxle": "front", "wheelbaseMm": 2460, "frontAxleLoadKg": 610, "rearAxleLoadKg": 380,
          "front": { "trackMm": 1450, "tyre": { "marking": "195/50R15 82V", "pressureKpa": 220, "category": "touring" }, "alignment": { "camberDeg": -0.5, "toeDeg": 0 },
            "suspension": { "kind": "measured", "table": "-40 0.1\n-20 -0.2\n0 -0.5\n20 -0.7\n40 -0.8" }, "spring": { "rateNPerMm": 22 }, "bumpTravelMm": 60, "reboundTravelMm": 80 },
          "rear": { "trackMm": 1430, "tyre": { "marking": "195/50R15 82V", "pressureKpa": 210, "category": "touring" }, "alignment": { "camberDeg": -1.2, "toeDeg": 0.1 },
            "suspension": { "kind": "twistBeam", "points": { "pivotLeft": { "xMm": 2080, "yMm": 560, "zMm": 290 }, "beamShearCentre": { "xMm": 2250, "yMm": 0, "zMm": 300 }, "wheelCentre": { "xMm": 2460, "yMm": 715, "zMm": 280 } } },
            "spring": { "rateNPerMm": 25, "motionRatio": 0.9 }, "bumpTravelMm": 70, "reboundTravelMm": 90 } }
        """;

    [Fact]
    public async Task Nobody_is_told_probably_of_what_is_as_likely_not_to_be()
    {
        var limit = (await Answer("cornering", Turn(Even))).GetProperty("limit");

        Assert.InRange(limit.GetProperty("frontFirstPct").GetDouble(), 40, 60);
        Assert.Equal("unclear", limit.GetProperty("first").GetString());
        Assert.Contains("nearly an even chance", limit.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("probably", limit.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_change_is_not_told_to_turn_round_what_was_open()
    {
        var body = Turn(Even);
        body["changes"] = JsonNode.Parse("""[{ "label": "rear bar", "vehicle": { "rear": { "antiRollBar": { "rollRateNmPerDeg": 900 } } } }]""");
        var text = (await Answer("what-if", body)).GetProperty("changes")[0].GetProperty("text").GetString()!;

        Assert.Contains("Which axle gave up first was open; now ", text, StringComparison.Ordinal);
        Assert.Contains("the rear does; a car whose rear lets go first may spin", text, StringComparison.Ordinal);
        Assert.DoesNotContain("probably the front gave up first", text, StringComparison.Ordinal);
    }

    // 0.16 to 0.32 by where the damper might stand: nobody buys dampers by that before it is measured.
    [Fact]
    public async Task A_damper_verdict_that_hangs_on_an_assumed_motion_ratio_says_so()
    {
        var body = new JsonObject { ["vehicle"] = JsonNode.Parse(Even) };
        var rear = (await Answer("ride", body)).GetProperty("rear").GetProperty("dampers").GetProperty("text").GetString()!;
        body["vehicle"]!["rear"]!["damper"]!["motionRatio"] = 0.9;
        var stated = (await Answer("ride", body)).GetProperty("rear").GetProperty("dampers").GetProperty("text").GetString()!;

        Assert.StartsWith("These dampers seem too soft", rear, StringComparison.Ordinal);
        Assert.Contains("motion ratio is assumed as 0.90", rear, StringComparison.Ordinal);
        Assert.Contains("measure it before you change a damper", rear, StringComparison.Ordinal);
        Assert.StartsWith("These dampers are too soft", stated, StringComparison.Ordinal);
        Assert.DoesNotContain("assumed", stated, StringComparison.Ordinal);
    }

    // In the turn taken evenly no wheel lifts: that one does while braking is part of the warning. So is that nobody said how the brakes share.
    [Fact]
    public async Task What_happens_while_braking_is_told_as_that()
    {
        var answer = await Answer("envelope", Envelope());
        string Caution(string code) => answer.GetProperty("cautions").EnumerateArray().Single(one => one.GetProperty("code").GetString() == code).GetProperty("text").GetString()!;

        Assert.Matches(@"^At 0\.\d+ g while braking at 0\.\d+ g the rear left wheel leaves the road", Caution("wheelLifted"));
        Assert.StartsWith("If the front brakes do 68 % of the whole, as assumed, ", Caution("rearLocksFirst"), StringComparison.Ordinal);
    }

    // Where readings end a point, the wheel and its travel are named.
    [Theory]
    [InlineData("metric", "60.0 mm")]
    [InlineData("us", "2.36 in")]
    public async Task A_point_that_readings_end_names_the_wheel_and_its_travel(string units, string travel)
    {
        var rows = (await Answer($"envelope?units={units}", Envelope())).GetProperty("rows").EnumerateArray().Where(row => row.GetProperty("limitedBy").GetString() == "travel").ToList();

        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Contains($"the front right wheel would be at more than {travel} of travel, further than its readings tell of", row.GetProperty("text").GetString(), StringComparison.Ordinal));
    }

    // −1.0, −0.9 and −0.8 g have no value: one stretch, its end at the picture's edge included.
    [Fact]
    public async Task An_envelope_that_is_missing_is_shaded_in_one_stretch()
    {
        var body = Envelope();
        body["longitudinalG"] = JsonNode.Parse("""{ "from": -1, "to": 0.6, "step": 0.1 }""");

        Assert.Contains("no value from −1 to −0.8", await Drawing("envelope", body), StringComparison.Ordinal);
    }

    // Past what its tyres hold a car has no steer: the curve that turned back there was the raised tyres', not the car's.
    [Fact]
    public async Task No_steer_is_drawn_beyond_the_limit()
    {
        var body = Turn(Even);
        body["lateralG"] = JsonNode.Parse("""{ "from": 0.8, "to": 1.2, "step": 0.1 }""");
        var within = await Drawing("cornering-sweep", body);
        body["lateralG"]!["to"] = 1.5;
        var beyond = await Drawing("cornering-sweep", body);

        const string Told = "No steer is drawn beyond the limit";
        Assert.DoesNotContain(Told, within, StringComparison.Ordinal);
        Assert.Contains(Told, beyond, StringComparison.Ordinal);
        Assert.Contains("A gap in a line", beyond, StringComparison.Ordinal);
    }

    private async Task<string> Drawing(string call, JsonObject body)
    {
        using var response = await fixture.Client.PostAsync($"/v1/handling/{call}/chart", body.ToJsonString());
        return await response.Content.ReadAsStringAsync();
    }

    private static JsonObject Turn(string vehicle) => new() { ["vehicle"] = JsonNode.Parse(vehicle), ["lateralG"] = 1.1, ["turn"] = "left", ["speedKmh"] = 110, ["heldLateralG"] = 1.25 };

    private static JsonObject Envelope() => new() { ["vehicle"] = JsonNode.Parse(Hatch), ["longitudinalG"] = JsonNode.Parse("""{ "from": -0.7, "to": 0.1, "step": 0.1 }""") };

    private Task<JsonElement> Answer(string call, JsonObject body) => fixture.Client.AnswerOf("/v1/handling/" + call, body);
}
