using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Lines of a batch about both axles of a car, and which answers are sent.</summary>
public sealed class WholeCarLinesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string Car = BatchCalls.CarLine();

    [Theory]
    [InlineData("40", "40", "225/45R17 94W XL", "225/45R17 94W XL")]
    [InlineData("40", "-80", "225/45R17 94W XL", "225/45R17 94W XL")]
    [InlineData("40", null, "255/40R17 94W XL", "225/45R17 94W XL")]
    [InlineData(null, "40", "225/45R17 94W XL", "245/45R17 95W")]
    [InlineData("40", "35", "215/45R17 91W XL", "245/40R17 91Y")]
    [InlineData("45", "45", "205/50R17 93V XL", "205/50R17 93V XL")]
    public async Task A_whole_car_is_told_as_by_its_single_call(string? front, string? rear, string frontMarking, string rearMarking)
    {
        JsonObject line = new() { ["id"] = 7 };
        var request = Requests.Check();
        foreach (var name in (string[])["axle", "candidate", "camberChange"])
            request.Remove(name);
        Add("front", front, frontMarking);
        Add("rear", rear, rearMarking);
        var car = BatchCalls.Car();
        car.Remove("camberChange");
        var body = $"{car.ToJsonString()}\n{line.ToJsonString()}\n";

        var single = await fixture.Client.AnswerOf("/v1/fitment/car-check", request);
        var compact = (await fixture.Client.LinesOf(body))[0];
        var full = (await fixture.Client.LinesOf(body, "?detail=full"))[0];

        Assert.True(JsonElement.DeepEquals(single.WithoutNext(), full.GetProperty("carResult")), full.ToString());
        Assert.Equal(single.GetProperty("verdict").GetString(), compact.GetProperty("verdict").GetString());
        Assert.Equal(
            single.GetProperty("decidedBy").EnumerateArray().Select(one => one.GetProperty("id").GetString()).Distinct().Order(StringComparer.Ordinal),
            compact.GetProperty("decidedBy").Strings().Order(StringComparer.Ordinal));
        var tightest = new[] { "front", "rear" }.Where(axle => single.GetProperty(axle).ValueKind == JsonValueKind.Object).Select(axle => single.GetProperty(axle))
            .OrderBy(one => one.CheckOf(one.GetProperty("governing").GetString()!).GetProperty("worstCaseMm").GetDouble())
            .Select(one => one.GetProperty("governing").GetString()).ToArray();
        Assert.Equal(tightest[0], compact.GetProperty("governing").GetString());
        foreach (var axle in (string[])["front", "rear"])
        {
            var answer = single.GetProperty(axle);
            Assert.Equal(answer.ValueKind == JsonValueKind.Object, compact.TryGetProperty(axle, out var told));
            if (answer.ValueKind != JsonValueKind.Object)
                continue;
            Assert.Equal(answer.GetProperty("verdict").GetString(), told.GetProperty("verdict").GetString());
            Assert.Equal(answer.GetProperty("decidedBy").Strings(), told.GetProperty("decidedBy").Strings());
            Assert.Empty(Having(answer, "fail").Except(compact.GetProperty("failed").Strings()));
            Assert.Empty(Having(answer, "caution").Except(compact.GetProperty("cautioned").Strings()));
            Assert.Empty(answer.UnknownChecks().Except(compact.GetProperty("unknown").Strings()));
        }

        void Add(string axle, string? offset, string marking)
        {
            if (offset is null)
                return;
            var fitting = Requests.Object(Requests.Candidate).With("/wheel/offsetMm", int.Parse(offset, System.Globalization.CultureInfo.InvariantCulture)).With("/tyre/marking", marking);
            line[axle] = fitting;
            request[axle] = fitting.DeepClone();
        }
    }

    [Theory]
    [InlineData("{\"id\":3}", "/candidate required")]
    [InlineData("{\"front\":null,\"rear\":null}", "/candidate required")]
    [InlineData("{\"front\":{}}", "/front/wheel required /front/tyre required")]
    [InlineData("{\"front\":5,\"rear\":{\"wheel\":{},\"tyre\":{\"marking\":\"45Q17\"}}}", "/front wrongType /rear/tyre/marking unreadable /rear/wheel/rimDiameterIn required /rear/wheel/rimWidthIn required /rear/wheel/offsetMm required")]
    [InlineData("{\"middle\":{}}", "/middle unknownMember /candidate required")]
    public async Task A_line_about_nothing_or_badly_about_an_axle_is_refused_with_its_faults(string line, string faults)
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{line}\n{BatchCalls.CandidateLine(1)}\n");

        Assert.Equal(faults.Split(' ').Chunk(2).Select(pair => string.Join(' ', pair)).Order(StringComparer.Ordinal), lines[0].GetProperty("problem").FaultsOf().Order(StringComparer.Ordinal));
        BatchCalls.AssertSummary(lines, answered: 1, refused: 1);
    }

    [Fact]
    public async Task A_candidate_beside_axles_is_a_contradiction()
    {
        var line = new JsonObject { ["candidate"] = Requests.Object(Requests.Candidate), ["rear"] = Requests.Object(Requests.Candidate) };
        var lines = await fixture.Client.LinesOf($"{Car}\n{line.ToJsonString()}\n");

        Assert.Equal(["/candidate inconsistent"], lines[0].GetProperty("problem").FaultsOf());
    }

    [Theory]
    [InlineData("", "1 2 3")]
    [InlineData("?only=fail", "2 3")]
    [InlineData("?only=pass,caution", "1 3")]
    [InlineData("?only=unknown", "3")]
    public async Task Only_the_verdicts_asked_for_are_sent_and_all_are_counted(string query, string ids)
    {
        var bad = BatchCalls.CandidateLine(2, Requests.Object(Requests.Candidate).With("/wheel/offsetMm", -100));
        var lines = await fixture.Client.LinesOf($"{Car}\n{BatchCalls.CandidateLine(1)}\n{bad}\n{{\"id\":3}}\n", query);

        Assert.Equal(ids, string.Join(' ', lines[..^1].Select(line => line.GetProperty("id").GetInt32())));
        Assert.Equal(
            """{"lineCount":3,"answeredCount":2,"refusedCount":1,"verdicts":{"passCount":0,"cautionCount":1,"failCount":1,"unknownCount":0},"isComplete":true}""",
            BatchCalls.Summary(lines).GetRawText());
    }

    private static IEnumerable<string> Having(JsonElement answer, string status) =>
        answer.GetProperty("checks").EnumerateArray().Where(one => one.GetProperty("status").GetString() == status).Select(one => one.GetProperty("id").GetString()!);
}
