using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>The diagnosis over HTTP.</summary>
public sealed class DiagnosisCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/wear/diagnosis";
    private const int Requests = 200;

    // The demo car is made with −0.7° at the front, and driven at 0.95 g.
    [Fact]
    public async Task The_demo_car_s_cause_is_named_with_its_degrees()
    {
        var answer = await Answer(await Example());
        var first = answer.GetProperty("causes")[0];

        Assert.Equal(("lowNegativeCamber", "front"), (first.GetProperty("cause").GetString(), first.GetProperty("axle").GetString()));
        Assert.True(first.GetProperty("probability").GetDouble() > 0.8);
        Assert.True(first.GetProperty("actions")[0].GetProperty("camberDeg").GetProperty("value").GetDouble() < -0.5);
        var model = answer.GetProperty("wearModel")[0];
        Assert.True(model.GetProperty("longestLife").GetProperty("lifeRatio").GetDouble() > 1);
        Assert.True(model.GetProperty("longestLife").GetProperty("lifeRatio").GetDouble() >= model.GetProperty("withCamberSet").GetProperty("lifeRatio").GetDouble());
    }

    // The treads speak without a car; what only a car tells is unknown.
    [Fact]
    public async Task Without_a_car_the_degrees_are_the_treads_alone()
    {
        var request = await Example();
        request.Remove("vehicle");
        var answer = await Answer(request);
        var shortDeg = answer.GetProperty("axles").GetProperty("front").GetProperty("camberShortDeg");

        Assert.Equal("lowNegativeCamber", answer.GetProperty("causes")[0].GetProperty("cause").GetString());
        Assert.Equal(JsonValueKind.Null, shortDeg.GetProperty("byModel").ValueKind);
        Assert.Equal(shortDeg.GetProperty("byTreads").GetRawText(), shortDeg.GetProperty("together").GetRawText());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("causes")[0].GetProperty("actions")[0].GetProperty("settingDeg").ValueKind);
        Assert.Empty(answer.GetProperty("wearModel").EnumerateArray());
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "wearModel");
    }

    // Each part of the car may be missing: the answer stays an answer.
    [Fact]
    public async Task No_part_of_the_car_is_needed()
    {
        var names = (await Example())["vehicle"]!.AsObject().Select(member => member.Key).ToArray();
        foreach (var name in names)
        {
            var request = await Example();
            request["vehicle"]!.AsObject().Remove(name);
            Assert.Equal("lowNegativeCamber", (await Answer(request)).GetProperty("causes")[0].GetProperty("cause").GetString());
        }
    }

    [Fact]
    public async Task With_nothing_read_it_says_so()
    {
        var answer = await Answer(new JsonObject { ["tyres"] = new JsonArray() });

        Assert.StartsWith("No diagnosis yet: nothing was read", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "causes");
        Assert.Equal("depthsAcross", answer.GetProperty("nextCheck").GetProperty("check").GetString());
    }

    [Fact]
    public async Task Worn_out_comes_before_everything_else()
    {
        var request = await Example();
        request["tyres"]![0]!["depthMm"]!["outer"] = 1.5;
        var answer = await Answer(request);

        Assert.Contains(answer.GetProperty("cautions")[0].GetProperty("code").GetString(), new[] { "wornOut", "thinShoulder" });
        Assert.StartsWith(answer.GetProperty("cautions")[0].GetProperty("text").GetString()!.Split(". ")[0] + ". ", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.InRange(answer.GetProperty("summary").GetString()!.Split(". ").Length, 3, 5);
        Assert.Equal(["summary", "cautions", "causes"], answer.EnumerateObject().Take(3).Select(member => member.Name));
        request["tyres"]![1]!["damage"] = new JsonArray("bulge");
        Assert.Equal("damagedTyre", (await Answer(request)).GetProperty("cautions")[0].GetProperty("code").GetString());
    }

    [Fact]
    public async Task Zones_too_close_together_are_said_to_tell_nothing()
    {
        var answer = await Answer(JsonNode.Parse("""{"tyres":[{"position":"rearLeft","zones":[{"acrossPct":50,"depthMm":5},{"acrossPct":50.0001,"depthMm":6},{"acrossPct":50.0002,"depthMm":4}]}]}""")!.AsObject());

        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("reason").GetString()!.Contains("too close together", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Contradicting_readings_are_named()
    {
        var request = await Example();
        request["tyres"]![0]!["patterns"] = new JsonArray("featheredSharpInboard", "featheredSharpOutboard");
        request["tyres"]![1]!["pressureKpa"] = JsonNode.Parse("""{"cold":240,"hot":200}""");
        var positions = (await Answer(request)).GetProperty("contradictions").EnumerateArray().Select(one => one.GetProperty("position").GetString());

        Assert.Equal(["frontLeft", "frontRight"], positions);
    }

    [Theory]
    [InlineData("""{"tyres":[{"position":"frontLeft","newDepthMm":7,"depthMm":{"outer":8,"centre":6,"inner":6}}]}""", "/tyres/0/depthMm/outer", "inconsistent")]
    [InlineData("""{"tyres":[{"position":"frontLeft","zones":[{"acrossPct":10,"depthMm":5},{"acrossPct":60,"depthMm":5},{"acrossPct":40,"depthMm":5}]}]}""", "/tyres/0/zones/2/acrossPct", "inconsistent")]
    [InlineData("""{"tyres":[{"position":"frontLeft","zones":[{"acrossPct":10,"depthMm":5},{"acrossPct":60,"depthMm":5}]}]}""", "/tyres/0/zones", "tooFew")]
    [InlineData("""{"tyres":[{"position":"frontLeft","temperatureC":{"outer":300,"centre":80,"inner":80}}]}""", "/tyres/0/temperatureC/outer", "outOfRange")]
    [InlineData("""{"tyres":[{"position":"frontLeft"},{"position":"frontLeft"}]}""", "/tyres/1/position", "inconsistent")]
    [InlineData("""{"tyres":[{"position":"frontLeft","madeWeek":"5419"}]}""", "/tyres/0/madeWeek", "unreadable")]
    [InlineData("""{"tyres":[{"position":"frontLeft","madeWeek":"2328"}],"readOn":"2026-11-20"}""", "/tyres/0/madeWeek", "inconsistent")]
    [InlineData("""{"tyres":[],"readOn":"20.11.2026"}""", "/readOn", "unreadable")]
    [InlineData("""{"tyres":[{"position":"frontLeft","patterns":["worn"]}]}""", "/tyres/0/patterns/0", "unknownWord")]
    [InlineData("""{"tyres":[{"position":"frontLeft","aroundMm":[{"outer":5,"centre":5,"inner":5}]}]}""", "/tyres/0/depthMm", "required")]
    [InlineData("""{"tyres":[{"position":"frontLeft","temperatureWindowC":{"from":90,"to":70}}]}""", "/tyres/0/temperatureWindowC/to", "inconsistent")]
    [InlineData("""{"vehicle":{"front":{"tyre":{"marking":"round"}}},"tyres":[]}""", "/vehicle/front/tyre/marking", "unreadable")]
    public async Task A_fault_is_told_where_it_stands(string body, string place, string code)
    {
        using var response = await fixture.Client.PostAsync(Path, body);

        Assert.Equal(400, (int)response.StatusCode);
        var fault = Assert.Single(Calls.Parse(await response.Content.ReadAsStringAsync()).GetProperty("errors").EnumerateArray());
        Assert.Equal((place, code), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task Any_tyres_get_an_answer_or_a_reason()
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var answered = 0;
        await AnyTyres.Requests.SampleAsync(
            async body =>
            {
                var status = await AnswerOrReason.CheckAsync(fixture.Client, schemas, Path, body.ToJsonString(), CheckCauses);
                if (status == 200) Interlocked.Increment(ref answered);
            },
            iter: Requests);

        Assert.True(answered > Requests / 2, $"{answered} answered");
    }

    [Fact]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason() =>
        await AnswerOrReason.CheckHostileAsync(fixture.Client, Path, AnyTyres.Requests, Requests, CheckCauses);

    [Fact]
    public async Task The_treads_come_as_a_picture()
    {
        using var response = await fixture.Client.PostAsync(Path + "/chart", (await Example()).ToJsonString());

        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("<svg", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Texts_come_in_the_units_asked_for()
    {
        var body = (await Example()).ToJsonString();
        var us = await Calls.Text(await fixture.Client.PostAsync(Path + "?units=us", body));

        Assert.DoesNotContain(" kPa", us, StringComparison.Ordinal);
        Assert.DoesNotContain("°C", us, StringComparison.Ordinal);
    }

    private static void CheckCauses(JsonElement answer, string body)
    {
        var probabilities = answer.GetProperty("causes").EnumerateArray().Select(cause => cause.GetProperty("probability").GetDouble()).ToArray();
        Assert.Equal(probabilities.OrderDescending(), probabilities);
        Assert.All(probabilities, probability => Assert.InRange(probability, 0, 1));
        Assert.True(answer.GetProperty("nextCheck").GetProperty("text").GetString()!.Length > 10, body);
    }

    private static async Task<JsonObject> Example() => JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf("wear-diagnosis.request.json")))!.AsObject();

    private async Task<JsonElement> Answer(JsonObject request) => Calls.Parse(await Calls.Text(await fixture.Client.PostAsync(Path, request.ToJsonString())));
}
