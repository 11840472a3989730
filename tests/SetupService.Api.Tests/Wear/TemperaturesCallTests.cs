using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>Tread temperatures and pressures over HTTP.</summary>
public sealed class TemperaturesCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/wear/temperatures";

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason()
    {
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf("wear-temperatures.request.json"));
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Path, Gen.Const(text).Select(sound => JsonNode.Parse(sound)!.AsObject()), 250);
    }

    [Fact]
    public async Task Any_numbers_within_their_limits_get_an_answer()
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        await Gen.Select(Gen.Double[-40, 250].Array[6], Gen.Double[80, 500].Array[3], Gen.Double[0, 3600], Gen.Double[50, 110], Gen.Double[0, 20]).SampleAsync(
            async (c, kpa, seconds, air, gauge) =>
            {
                var body = new JsonObject
                {
                    ["tyres"] = new JsonArray(new JsonObject
                    {
                        ["position"] = "rearLeft",
                        ["temperatureC"] = new JsonObject { ["outer"] = c[0], ["centre"] = c[1], ["inner"] = c[2] },
                        ["secondsAfterLap"] = seconds,
                        ["pressureKpa"] = new JsonObject { ["cold"] = kpa[0], ["hot"] = kpa[1], ["aimHot"] = kpa[2] },
                    }),
                    ["coldTemperatureC"] = c[3],
                    ["nextColdTemperatureC"] = c[4],
                    ["airTemperatureC"] = c[5],
                    ["airPressureKpa"] = air,
                    ["gaugeErrorKpa"] = gauge,
                };
                Assert.Equal(200, await AnswerOrReason.CheckAsync(fixture.Client, schemas, Path, body.ToJsonString()));
            },
            iter: 100);
    }

    // The hand calculation of the domain's check: 210 to 260 kPa from 18 °C: 64.76 °C; 197.08 kPa for 245 hot, 198.45 at 28 °C.
    [Fact]
    public async Task A_hot_aim_gives_the_settings_worked_by_hand()
    {
        var pressure = (await Answer(One("""{"position":"frontLeft","pressureKpa":{"cold":210,"hot":260,"aimHot":245}}""", "\"coldTemperatureC\":18,\"nextColdTemperatureC\":28,\"airPressureKpa\":101.325"))).GetProperty("tyres")[0].GetProperty("pressure");

        Assert.Equal(64.76, pressure.GetProperty("hotGasC").GetProperty("value").GetDouble(), 0.01);
        Assert.Equal(197.08, pressure.GetProperty("coldNow").GetProperty("setKpa").GetDouble(), 0.01);
        Assert.Equal(198.45, pressure.GetProperty("coldNext").GetProperty("setKpa").GetDouble(), 0.01);
        Assert.Equal(-15, pressure.GetProperty("hotNow").GetProperty("changeKpa").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, pressure.GetProperty("leastColdKpa").ValueKind);
    }

    // ISO 2533 at 1000 m, from memory: 89.8746 kPa.
    [Fact]
    public async Task The_altitude_tells_the_airs_pressure_where_nobody_does()
    {
        var answer = await Answer(One("""{"position":"frontLeft","pressureKpa":{"cold":210,"hot":260}}""", "\"altitudeM\":1000"));

        Assert.Equal(89.8746, answer.GetProperty("airPressureKpa").GetDouble(), 0.001);
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/airPressureKpa");
    }

    [Fact]
    public async Task A_car_holds_the_setting_at_what_its_load_needs()
    {
        const string Tyre = """{"position":"frontLeft","pressureKpa":{"cold":210,"hot":260,"aimHot":235}}""";
        const string Car = "\"vehicle\":{\"topSpeedKmh\":150,\"front\":{\"maximumAxleLoadKg\":1000,\"tyre\":{\"marking\":\"225/45R17 91H\"}}}";
        var free = (await Answer(One(Tyre, "\"coldTemperatureC\":18"))).GetProperty("tyres")[0].GetProperty("pressure");
        var answer = await Answer(One(Tyre, Car));
        var held = answer.GetProperty("tyres")[0].GetProperty("pressure");

        // 91 at 500 kg: 193.0 kPa (docs/methods/tyre-load.md).
        Assert.True(free.GetProperty("coldNow").GetProperty("setKpa").GetDouble() < 190);
        Assert.Equal(193.0, held.GetProperty("leastColdKpa").GetDouble(), 0.05);
        Assert.Equal(193.0, held.GetProperty("coldNow").GetProperty("setKpa").GetDouble(), 0.05);
        Assert.True(held.GetProperty("coldNow").GetProperty("isHeldByLoad").GetBoolean());
        Assert.Equal(193.0, held.GetProperty("hotNow").GetProperty("coldThenKpa").GetProperty("value").GetDouble(), 0.05);
        Assert.DoesNotContain(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "loadNotChecked");
    }

    [Fact]
    public async Task Two_floors_stand_side_by_side_and_actions_come_first()
    {
        var answer = await Answer(await File.ReadAllTextAsync(ExampleCall.FileOf("wear-temperatures.request.json")));

        Assert.Equal(["summary", "actions"], answer.EnumerateObject().Take(2).Select(member => member.Name));
        Assert.InRange(answer.GetProperty("actions").GetArrayLength(), 1, 5);
        var pressure = answer.GetProperty("tyres")[0].GetProperty("pressure");
        Assert.Equal(230, pressure.GetProperty("plateKpa").GetDouble());
        Assert.True(pressure.GetProperty("leastColdKpa").GetDouble() < 230);
        foreach (var action in answer.GetProperty("actions").EnumerateArray())
        {
            foreach (var step in action.GetProperty("steps").EnumerateArray())
                Assert.InRange(Math.Abs(step.GetProperty("toKpa").GetDouble() - step.GetProperty("fromKpa").GetDouble()), 0, 20);
        }
    }

    [Fact]
    public async Task A_hot_pressure_alone_lists_the_usual_rise_with_its_range()
    {
        var answer = await Answer(One("""{"position":"frontLeft","pressureKpa":{"hot":262,"aimHot":245}}""", null));

        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("value").ValueKind == JsonValueKind.Number && one.GetProperty("value").GetDouble() == 45 && one.GetProperty("plausible").GetProperty("upper").GetDouble() == 70);
        Assert.Equal("setPressure", answer.GetProperty("actions")[0].GetProperty("kind").GetString());
    }

    [Fact]
    public async Task What_is_not_given_is_unknown_with_the_reason()
    {
        var answer = await Answer(One("""{"position":"rearRight"}""", null));

        var unknown = answer.GetProperty("unknown").EnumerateArray().ToDictionary(one => one.GetProperty("id").GetString()! + one.GetProperty("reason").GetString(), one => one);
        Assert.Contains("/tyres/0/treadneeds /tyres/0/temperatureC", unknown.Keys);
        Assert.Contains("/tyres/0/pressureneeds /tyres/0/pressureKpa", unknown.Keys);
        Assert.Empty(answer.GetProperty("comparisons").EnumerateArray());
        Assert.Equal("All readings are as usual.", answer.GetProperty("summary").GetString());
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "hotParts");
    }

    // The reading of a diagnosis is taken as it is, and what is unsafe in it is not passed over.
    [Fact]
    public async Task A_reading_of_a_diagnosis_is_taken_and_its_unsafe_tyre_named_first()
    {
        var answer = await Answer(One("""{"position":"rearRight","depthMm":{"outer":1.2,"centre":4,"inner":4},"damage":["bulge"],"patterns":[],"pressureKpa":{"hot":250}}""", null));

        Assert.Equal("damagedTyre", answer.GetProperty("cautions")[0].GetProperty("code").GetString());
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "wornOut");
    }

    [Fact]
    public async Task A_thermometer_nobody_named_is_taken_for_the_less_exact_and_said()
    {
        var answer = await Answer(One("""{"position":"rearRight","temperatureC":{"outer":80,"centre":84,"inner":86}}""", null));

        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == "/tyres/0/temperatureBy" && one.GetProperty("text").GetString() == "infrared");
        var mean = answer.GetProperty("tyres")[0].GetProperty("tread").GetProperty("meanC");
        Assert.Equal(1.6448536 * 2.5, mean.GetProperty("upper").GetDouble() - mean.GetProperty("value").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task A_late_reading_is_told_and_not_judged()
    {
        var answer = await Answer(One("""{"position":"rearRight","temperatureC":{"outer":80,"centre":95,"inner":99},"temperatureBy":"probe","secondsAfterLap":150}""", "\"airTemperatureC\":20"));
        var tread = answer.GetProperty("tyres")[0].GetProperty("tread");
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "findings" && one.GetProperty("reason").GetString()!.StartsWith("rear right: it was read more than ", StringComparison.Ordinal));

        Assert.Equal(-19, tread.GetProperty("outerLessInnerC").GetProperty("value").GetDouble());
        Assert.All(tread.GetProperty("findings").EnumerateArray(), one => Assert.Equal("unknown", one.GetProperty("verdict").GetString()));
        Assert.Equal(JsonValueKind.Null, tread.GetProperty("atLapEndC").ValueKind);
    }

    [Fact]
    public async Task Readings_that_contradict_are_named()
    {
        var answer = await Answer(One("""{"position":"rearRight","temperatureC":{"outer":10,"centre":10,"inner":10},"temperatureBy":"probe","pressureKpa":{"cold":230,"hot":200,"aimHot":240}}""", "\"coldTemperatureC\":5,\"airTemperatureC\":25"));

        var tyre = answer.GetProperty("tyres")[0];
        Assert.Contains("not colder than the air", tyre.GetProperty("tread").GetProperty("contradiction").GetString(), StringComparison.Ordinal);
        Assert.Equal("hotBelowCold", tyre.GetProperty("pressure").GetProperty("contradiction").GetString());
        Assert.Equal(JsonValueKind.Null, tyre.GetProperty("pressure").GetProperty("coldNow").ValueKind);
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "losesAir");
    }

    [Fact]
    public async Task Every_fault_is_told_in_one_answer()
    {
        const string Body =
            """
            {"tyres":[
              {"position":"frontLeft","temperatureWindowC":{"from":90,"to":80}},
              {"position":"frontLeft","pressureKpa":{"cold":79,"aimCold":230,"aimHot":220}},
              {"position":"spare","temperatureC":{"outer":251,"centre":80}}],
             "altitudeM":1500,"airPressureKpa":101.3,"coldTempC":20}
            """;

        using var response = await fixture.Client.PostAsync(Path, Body);

        Assert.Equal(400, (int)response.StatusCode);
        var faults = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray()
            .Select(one => one.GetProperty("pointer").GetString() + " " + one.GetProperty("code").GetString());
        Assert.Equal(
            [
                "/airPressureKpa inconsistent", "/coldTempC unknownMember", "/tyres/0/temperatureWindowC/to inconsistent", "/tyres/1/position inconsistent",
                "/tyres/1/pressureKpa/aimHot inconsistent", "/tyres/1/pressureKpa/cold outOfRange", "/tyres/2/position unknownWord",
                "/tyres/2/temperatureC/inner required", "/tyres/2/temperatureC/outer outOfRange",
            ],
            faults.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("""{"tyres":[]}""", "/tyres", "tooFew")]
    [InlineData("""{"tyres":[null]}""", "/tyres/0", "required")]
    [InlineData("""{}""", "/tyres", "required")]
    [InlineData("""{"tyres":[{"position":"frontLeft"}],"altitudeM":5000.1}""", "/altitudeM", "outOfRange")]
    [InlineData("""{"tyres":[{"position":"frontLeft","secondsAfterLap":-1}]}""", "/tyres/0/secondsAfterLap", "outOfRange")]
    [InlineData("""{"tyres":[{"position":"frontLeft"}],"vehicle":{"front":{"tyre":{"marking":"round"}}}}""", "/vehicle/front/tyre/marking", "unreadable")]
    public async Task A_fault_is_told_where_it_stands(string body, string place, string code)
    {
        using var response = await fixture.Client.PostAsync(Path, body);

        Assert.Equal(400, (int)response.StatusCode);
        var fault = Assert.Single(JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray());
        Assert.Equal((place, code), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task Texts_come_in_the_units_asked_for_and_numbers_stay()
    {
        var body = await File.ReadAllTextAsync(ExampleCall.FileOf("wear-temperatures.request.json"));
        var metric = Calls.Parse(await Calls.Text(await fixture.Client.PostAsync(Path + "?units=metric", body)));
        var us = Calls.Parse(await Calls.Text(await fixture.Client.PostAsync(Path + "?units=us", body)));

        Assert.Equal(metric.GetProperty("tyres")[0].GetProperty("tread").GetProperty("meanC").GetRawText(), us.GetProperty("tyres")[0].GetProperty("tread").GetProperty("meanC").GetRawText());
        foreach (var text in (string[])[us.GetProperty("summary").GetString()!, us.GetProperty("tyres")[0].GetProperty("pressure").GetProperty("text").GetString()!])
        {
            Assert.Contains("°F", text, StringComparison.Ordinal);
            Assert.Contains(" psi", text, StringComparison.Ordinal);
            Assert.DoesNotContain("°C", text, StringComparison.Ordinal);
            Assert.DoesNotContain("kPa", text, StringComparison.Ordinal);
        }
    }

    private static string One(string reading, string? more) => $$"""{"tyres":[{{reading}}]{{(more is null ? "" : "," + more)}}}""";

    private async Task<JsonElement> Answer(string body)
    {
        using var response = await fixture.Client.PostAsync(Path, body);
        return Calls.Parse(await Calls.Text(response));
    }
}
