using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>
/// What a fresh reader of the wear answers found contradicting itself, each with what must be said and what must not. Where no source is named, what is right is common practice.
/// </summary>
public sealed class ReadingsAgreeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Car =
        """
        { "label": "invented two-seater", "body": "convertible", "drivenAxle": "rear", "wheelbaseMm": 2300, "centreOfGravityHeightMm": 455, "frontAxleLoadKg": 505, "rearAxleLoadKg": 525,
          "front": { "trackMm": 1460, "unsprungMassKg": 30, "placardPressureKpa": 200, "tyre": { "marking": "205/50R16 87W", "pressureKpa": 190 },
            "alignment": { "camberDeg": -1.5, "toeDeg": 0.05 }, "spring": { "rateNPerMm": 48, "motionRatio": 0.7 }, "antiRollBar": { "rollRateNmPerDeg": 260 } },
          "rear": { "trackMm": 1470, "unsprungMassKg": 32, "placardPressureKpa": 200, "tyre": { "marking": "205/50R16 87W", "pressureKpa": 195 },
            "alignment": { "camberDeg": -1.6, "toeDeg": 0.1 }, "spring": { "rateNPerMm": 42, "motionRatio": 0.8 }, "antiRollBar": { "rollRateNmPerDeg": 120 } } }
        """;

    private static readonly double[] Even = [5.5, 5.6, 5.5];

    // The caution says "before driving": so does everything else.
    [Theory]
    [InlineData(0.8, true)]
    [InlineData(0.8, false)]
    [InlineData(4.9, true)]
    public async Task A_tyre_to_be_replaced_before_driving_is_said_first_wherever_its_axle_speaks(double outerMm, bool hasCords)
    {
        var request = Diagnosis([outerMm, 5.2, 5.2], Even, Even, Even);
        if (hasCords) request["tyres"]![0]!["damage"] = new JsonArray("cordsVisible");
        var answer = await Ask("diagnosis", request);
        var front = answer.GetProperty("axles").GetProperty("front");
        var text = front.GetProperty("text").GetString()!;

        Assert.False(front.GetProperty("isDone").GetBoolean());
        Assert.Matches("^(Do not drive on|Replace) the front left tyre", text);
        Assert.Matches("^(Do not drive on|Replace) the front left tyre", Summary(answer));
        Assert.DoesNotMatch("(?i)front treads are even|before the next drive|Plan new", Summary(answer) + text + ActionTexts(answer));
        if (!hasCords) Assert.Contains("before driving", Summary(answer), StringComparison.Ordinal);
    }

    // One outside, one inside: the mean of the two is even and says nothing.
    [Fact]
    public async Task Opposite_shoulders_of_an_axle_are_no_even_axle()
    {
        var answer = await Ask("diagnosis", Diagnosis([4.1, 5.5, 5.6], [5.6, 5.5, 4.1], Even, Even));
        var front = answer.GetProperty("axles").GetProperty("front");

        Assert.False(front.GetProperty("isDone").GetBoolean());
        Assert.Equal(JsonValueKind.Null, front.GetProperty("camberShortDeg").GetProperty("byTreads").ValueKind);
        Assert.Matches("read from the wrong side.*turned on its rim.*thrust line.*bent parts", Assert.Single(answer.GetProperty("contradictions").EnumerateArray()).GetProperty("text").GetString());
        Assert.DoesNotMatch("front treads are even|Leave the front camber", Summary(answer) + ActionTexts(answer));
        NoStepAt(answer, "front");
    }

    // The same opposite wear on both axles is a track that turns one way (derived).
    [Fact]
    public async Task A_track_that_turns_one_way_is_no_contradiction() => Assert.Empty(
        (await Ask("diagnosis", Diagnosis([4.6, 5.5, 5.6], [5.6, 5.5, 4.6], [4.6, 5.5, 5.6], [5.6, 5.5, 4.6]))).GetProperty("contradictions").EnumerateArray());

    [Fact]
    public async Task Where_something_is_measured_first_nothing_is_set()
    {
        var request = Diagnosis([3.4, 5.2, 5.6], [3.2, 5.1, 5.5], [6.6, 6.9, 6.7], [6.7, 6.9, 6.6]);
        foreach (var index in (int[])[0, 1]) request["tyres"]![index]!["patterns"] = new JsonArray("featheredSharpInboard");
        request["vehicle"]!["front"]!["alignment"]!["toeDeg"] = -0.3;
        var answer = await Ask("diagnosis", request);

        Assert.StartsWith("Measure again at the front left wheel before changing anything", answer.GetProperty("axles").GetProperty("front").GetProperty("text").GetString(), StringComparison.Ordinal);
        NoStepAt(answer, "front");
        Assert.DoesNotContain("Most likely", Summary(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.5, true)]
    [InlineData(-1.5, false)]
    public async Task A_camber_that_leans_out_is_asked_for_its_sign_before_a_step(double camberDeg, bool isAsked)
    {
        var request = Diagnosis([3.4, 5.2, 5.6], [3.2, 5.1, 5.5], Even, Even);
        request["vehicle"]!["front"]!["alignment"]!["camberDeg"] = camberDeg;
        var answer = await Ask("diagnosis", request);

        Assert.Equal(isAsked, answer.GetProperty("contradictions").EnumerateArray().Any());
        Assert.Equal(isAsked, Summary(answer).Contains("the camber, and its sign", StringComparison.Ordinal));
        if (isAsked) NoStepAt(answer, "front");
        Assert.Equal(isAsked, answer.GetProperty("axles").GetProperty("front").GetProperty("camberShortDeg").GetProperty("byModel").ValueKind == JsonValueKind.Null);
    }

    // Below the plate for the session only, and never on a car that sees no track.
    [Theory]
    [InlineData(160)]
    [InlineData(0)]
    public async Task A_cold_pressure_below_the_plate_is_for_the_track_only(double laps)
    {
        var request = Diagnosis(Even, Even, [5.0, 4.2, 5.1], [4.9, 4.1, 4.9]);
        request["use"]!["trackLaps"] = laps;
        foreach (var index in (int[])[2, 3]) request["tyres"]![index]!["pressureKpa"] = JsonNode.Parse("""{ "cold": 195, "hot": 246, "aimHot": 220 }""");
        var answer = await Ask("diagnosis", request);
        var steps = Actions(answer).Where(action => action.GetProperty("settingKpa").ValueKind == JsonValueKind.Number).ToList();

        Assert.DoesNotMatch("below what the car's plate asks", answer.GetRawText());
        if (laps == 0) Assert.Empty(steps);
        else Assert.Contains("session on the track only: set the plate's pressure again, cold, before driving on the road", Assert.Single(steps).GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    // A tyre warmed by some 60 °C gains about a fifth of its absolute pressure (ideal gas law): 0 is a cold pressure read hot.
    [Theory]
    [InlineData("temperatures", 232, true)]
    [InlineData("temperatures", 190, false)]
    [InlineData("diagnosis", 232, true)]
    [InlineData("diagnosis", 190, false)]
    public async Task A_cold_pressure_no_less_than_the_hot_one_is_not_believed(string call, double coldKpa, bool isDoubted)
    {
        var request = call == "diagnosis" ? Diagnosis(Even, Even, Even, Even) : new JsonObject { ["tyres"] = new JsonArray(Tyre("frontLeft", Even)), ["coldTemperatureC"] = 15 };
        var tyre = request["tyres"]![0]!;
        tyre["temperatureC"] = JsonNode.Parse("""{ "outer": 75, "centre": 78, "inner": 80 }""");
        tyre["pressureKpa"] = new JsonObject { ["cold"] = coldKpa, ["hot"] = 232, ["aimHot"] = 220 };
        var answer = await Ask(call, request);

        Assert.Equal(isDoubted, answer.GetRawText().Contains("Was the cold one read while the tyre was still hot?", StringComparison.Ordinal));
        if (!isDoubted) return;
        Assert.DoesNotMatch("Set cold|the gas came to", answer.GetRawText());
        if (call == "temperatures") Assert.Equal("hotAsCold", answer.GetProperty("tyres")[0].GetProperty("pressure").GetProperty("contradiction").GetString());
        else NoStepAt(answer, "front");
    }

    // 1410 lb typed as kilograms: two tyres of load index 82 carry 950 kg (the index table of the trade).
    [Theory]
    [InlineData(1410, true)]
    [InlineData(2400, false)]
    public async Task A_load_beyond_the_tyre_gets_no_pressure_and_is_asked_for_its_unit(double axleKg, bool isAsked)
    {
        var request = new JsonObject
        {
            ["vehicle"] = new JsonObject { ["frontAxleLoadKg"] = axleKg, ["rearAxleLoadKg"] = 815, ["front"] = new JsonObject { ["tyre"] = new JsonObject { ["marking"] = "195/50R15 82V" } } },
            ["tyres"] = new JsonArray(Tyre("frontLeft", null)),
            ["coldTemperatureC"] = 15,
        };
        request["tyres"]![0]!["pressureKpa"] = JsonNode.Parse("""{ "cold": 220, "hot": 250, "aimHot": 240 }""");
        var answer = await Ask("temperatures", request);
        var text = answer.GetProperty("tyres")[0].GetProperty("pressure").GetProperty("text").GetString();

        Assert.Equal("Do not drive: no pressure lets the front left carry its load.", Summary(answer));
        Assert.DoesNotMatch("Set cold|not checked|let 10 kPa out|because marking or load is unknown", answer.GetRawText());
        Assert.All(answer.GetProperty("actions").EnumerateArray(), action => Assert.Empty(action.GetProperty("steps").EnumerateArray()));
        Assert.Equal(isAsked, text!.Contains("Was the load given in pounds", StringComparison.Ordinal));
    }

    // Within the ±5.8 °C of an infrared thermometer 1 °C is no verdict: the usual range begins at −3.
    [Theory]
    [InlineData(1, "unknown")]
    [InlineData(-5, "within")]
    [InlineData(20, "above")]
    public async Task What_the_thermometer_cannot_tell_is_no_finding(double outerLessInnerC, string verdict)
    {
        var tyre = Tyre("rearLeft", null);
        tyre["temperatureC"] = new JsonObject { ["outer"] = 80 + outerLessInnerC, ["centre"] = 80 + (outerLessInnerC / 2), ["inner"] = 80 };
        tyre["secondsAfterLap"] = 30;
        var answer = await Ask("temperatures", new JsonObject { ["tyres"] = new JsonArray(tyre) });
        var finding = answer.GetProperty("tyres")[0].GetProperty("tread").GetProperty("findings")[0];

        Assert.Equal(verdict, finding.GetProperty("verdict").GetString());
        Assert.Equal(verdict == "above", finding.GetProperty("text").GetString()!.Contains("too little negative camber", StringComparison.Ordinal));
        Assert.Equal(verdict == "above", Summary(answer) != "All readings are as usual.");
    }

    // The depths of the same request say the other shoulder is worn: no step of camber.
    [Theory]
    [InlineData(4.1, 5.6, true)]
    [InlineData(5.5, 5.5, false)]
    public async Task Heat_that_contradicts_the_depths_beside_it_asks_for_no_camber(double outerMm, double innerMm, bool isDoubted)
    {
        var tyres = new JsonArray(Tyre("frontLeft", [outerMm, 5.5, innerMm]), Tyre("frontRight", [outerMm, 5.5, innerMm]));
        foreach (var tyre in tyres)
        {
            tyre!["temperatureC"] = JsonNode.Parse("""{ "outer": 70, "centre": 78, "inner": 85 }""");
            tyre["temperatureBy"] = "probe";
            tyre["secondsAfterLap"] = 30;
        }

        var answer = await Ask("temperatures", new JsonObject { ["tyres"] = tyres });

        Assert.Equal(!isDoubted, answer.GetRawText().Contains("half a degree less negative", StringComparison.Ordinal));
        Assert.Equal(isDoubted, answer.GetRawText().Contains("but the outer one is worn more", StringComparison.Ordinal));
        Assert.Equal(isDoubted, Summary(answer).Contains("contradict each other", StringComparison.Ordinal));
    }

    // Two tyres of an axle 3 kPa apart by a gauge of ±4 are set alike, and every text tells the same figure.
    [Theory]
    [InlineData("metric", @"set (\d+) kPa", @"to (\d+) kPa")]
    [InlineData("us", @"set (\d+\.\d) psi", @"to (\d+\.\d) psi")]
    public async Task One_setting_is_one_figure(string units, string inTyre, string inSummary)
    {
        var tyres = new JsonArray(Tyre("frontLeft", null), Tyre("frontRight", null));
        tyres[0]!["pressureKpa"] = JsonNode.Parse("""{ "cold": 190, "hot": 232, "aimHot": 220 }""");
        tyres[1]!["pressureKpa"] = JsonNode.Parse("""{ "cold": 190, "hot": 235, "aimHot": 220 }""");
        var answer = await Ask("temperatures?units=" + units, new JsonObject { ["tyres"] = tyres, ["coldTemperatureC"] = 14 });
        var told = answer.GetProperty("tyres").EnumerateArray().Select(one => Regex.Match(one.GetProperty("pressure").GetProperty("text").GetString()!, inTyre).Groups[1].Value)
            .Concat(Regex.Matches(Summary(answer), inSummary).Select(match => match.Groups[1].Value)).ToList();

        Assert.Equal(4, told.Count);
        Assert.Single(told.Distinct());
        Assert.DoesNotContain("32.0 psi", answer.GetRawText(), StringComparison.Ordinal);
    }

    // The next reading comes before the least the forecast of the same readings leaves.
    [Fact]
    public async Task The_next_reading_comes_before_the_tread_may_end()
    {
        var diagnosis = Diagnosis([3.4, 5.2, 5.6], [3.2, 5.1, 5.5], [6.6, 6.9, 6.7], [6.7, 6.9, 6.6]);
        diagnosis["use"] = JsonNode.Parse("""{ "roadKm": 9000, "trackLaps": 40, "lapKm": 1.8 }""");
        diagnosis.Remove("vehicle");
        var front = (await Ask("diagnosis", diagnosis)).GetProperty("axles").GetProperty("front").GetProperty("text").GetString()!;
        var readAgain = Regex.Match(front, @"again in (\d+) km");
        var forecast = await Ask("forecast", JsonNode.Parse(
            """
            { "tyres": [{ "position": "frontLeft", "newDepthMm": 8, "readings": [
                { "roadKm": 0, "trackLaps": 0, "depthMm": { "outer": 8, "centre": 8, "inner": 8 } },
                { "roadKm": 4500, "trackLaps": 20, "depthMm": { "outer": 5.7, "centre": 6.6, "inner": 6.8 } },
                { "roadKm": 9000, "trackLaps": 40, "depthMm": { "outer": 3.4, "centre": 5.2, "inner": 5.6 } }] }] }
            """)!.AsObject());
        var leastKm = forecast.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer").GetProperty("sameMix").GetProperty("kmLeft").GetProperty("lower").GetDouble();

        Assert.True(readAgain.Success && double.Parse(readAgain.Groups[1].Value, CultureInfo.InvariantCulture) <= leastKm, $"{front} {leastKm}");
    }

    // "No sensible number of sessions" beside "3 more sessions would", and "not shown" beside a road rate that is shown.
    [Fact]
    public async Task What_more_sessions_and_the_road_show_is_said_alike_everywhere()
    {
        var answer = await Ask("before-after", JsonNode.Parse(
            """
            { "before": { "tyres": [{ "position": "frontLeft", "newDepthMm": 8, "readings": [
                { "roadKm": 0, "trackLaps": 0, "depthMm": { "outer": 8, "centre": 8, "inner": 8 } }, { "roadKm": 2500, "trackLaps": 30, "depthMm": { "outer": 6.6, "centre": 7, "inner": 7.2 } },
                { "roadKm": 4500, "trackLaps": 35, "depthMm": { "outer": 5.7, "centre": 6.5, "inner": 6.8 } }, { "roadKm": 7000, "trackLaps": 60, "depthMm": { "outer": 4.2, "centre": 5.8, "inner": 6.1 } },
                { "roadKm": 9000, "trackLaps": 62, "depthMm": { "outer": 3.4, "centre": 5.2, "inner": 5.6 } }] }] },
              "after": { "tyres": [{ "position": "frontLeft", "newDepthMm": 8, "readings": [
                { "roadKm": 0, "trackLaps": 0, "depthMm": { "outer": 8, "centre": 8, "inner": 8 } }, { "roadKm": 2000, "trackLaps": 25, "depthMm": { "outer": 7, "centre": 7.2, "inner": 7.1 } },
                { "roadKm": 4000, "trackLaps": 50, "depthMm": { "outer": 6.1, "centre": 6.5, "inner": 6.3 } }, { "roadKm": 6000, "trackLaps": 60, "depthMm": { "outer": 5.6, "centre": 6, "inner": 5.8 } }] }] } }
            """)!.AsObject());
        var outer = answer.GetProperty("tyres")[0].GetProperty("zones").GetProperty("outer");

        Assert.True(outer.GetProperty("road").GetProperty("isShown").GetBoolean());
        Assert.Contains("wear by road distance: outer shoulder 0.21 times", Summary(answer), StringComparison.Ordinal);
        Assert.Contains("By road distance it went to 0.21 times: that is a change.", outer.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("3 more sessions before and after would show the one of the outer shoulder itself", Summary(answer), StringComparison.Ordinal);
        Assert.DoesNotContain("no sensible number of sessions", Summary(answer), StringComparison.Ordinal);
    }

    private static JsonObject Diagnosis(double[] frontLeft, double[] frontRight, double[] rearLeft, double[] rearRight) => new()
    {
        ["vehicle"] = JsonNode.Parse(Car),
        ["use"] = JsonNode.Parse("""{ "roadKm": 2500, "trackLaps": 160, "lapKm": 3.2 }"""),
        ["tyres"] = new JsonArray(Tyre("frontLeft", frontLeft), Tyre("frontRight", frontRight), Tyre("rearLeft", rearLeft), Tyre("rearRight", rearRight)),
    };

    private static JsonObject Tyre(string position, double[]? depthsMm)
    {
        var tyre = new JsonObject { ["position"] = position };
        if (depthsMm is null) return tyre;
        tyre["newDepthMm"] = 7.5;
        tyre["depthMm"] = new JsonObject { ["outer"] = depthsMm[0], ["centre"] = depthsMm[1], ["inner"] = depthsMm[2] };
        return tyre;
    }

    private static void NoStepAt(JsonElement answer, string axle) => Assert.All(
        answer.GetProperty("causes").EnumerateArray().Where(cause => cause.GetProperty("axle").GetString() == axle).SelectMany(cause => cause.GetProperty("actions").EnumerateArray()),
        action => Assert.All((string[])["stepDeg", "stepMm", "stepKpa", "settingDeg", "settingMm", "settingKpa"], step => Assert.Equal(JsonValueKind.Null, action.GetProperty(step).ValueKind)));

    private static string Summary(JsonElement answer) => answer.GetProperty("summary").GetString()!;

    private static IEnumerable<JsonElement> Actions(JsonElement answer) => answer.GetProperty("causes").EnumerateArray().SelectMany(cause => cause.GetProperty("actions").EnumerateArray());

    private static string ActionTexts(JsonElement answer) => string.Join('\n', Actions(answer).Select(action => action.GetProperty("text").GetString()));

    private async Task<JsonElement> Ask(string call, JsonObject request)
    {
        using var response = await fixture.Client.PostAsJsonAsync(new Uri("/v1/wear/" + call, UriKind.Relative), request);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
