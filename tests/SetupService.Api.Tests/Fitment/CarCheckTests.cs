using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment;

/// <summary>A whole car checked in one call: each axle as its own check would have it, the other axle with what is put on it.</summary>
public sealed class CarCheckTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string CarCheck = "/v1/fitment/car-check";

    [Fact]
    public async Task One_axle_alone_is_the_check_of_that_axle_with_pointers_into_this_request()
    {
        var check = Requests.Check().Without("/camberChange").Without("/tolerances").Without("/vehicle/front/clearance/springSeatMm").Without("/candidate/wheel/loadRatingKg");
        var car = Car(check["vehicle"]!, front: check["candidate"]!);

        var single = await fixture.Client.AnswerOf(Calls.Check, check);
        var whole = await fixture.Client.AnswerOf(CarCheck, car);

        Assert.Equal(single.GetProperty("verdict").GetString(), whole.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, whole.GetProperty("rear").ValueKind);
        Assert.True(JsonElement.DeepEquals(Calls.Parse(single.WithoutNext().GetRawText().Replace("\"/candidate", "\"/front", StringComparison.Ordinal)), whole.GetProperty("front")), whole.ToString());
        Assert.Contains("/front/wheel/loadRatingKg", whole.GetProperty("needs").Strings());
    }

    // 205/50R16 and 205/50R15 are 4 % apart in one turn; front and rear changed together match again (by hand: 611 and 586 mm).
    [Fact]
    public async Task A_set_all_round_is_not_held_against_the_old_tyres()
    {
        var vehicle = Requests.Check()["vehicle"]!;
        JsonNode Small() => Requests.Object("""{ "wheel": { "rimDiameterIn": 15, "rimWidthIn": 7, "offsetMm": 40 }, "tyre": { "marking": "205/50R15 86V" } }""");

        var frontOnly = await fixture.Client.AnswerOf(CarCheck, Car(vehicle, front: Small()));
        var both = await fixture.Client.AnswerOf(CarCheck, Car(vehicle, Small(), Small()));

        Assert.Equal("caution", Between(frontOnly).GetProperty("status").GetString());
        Assert.Equal("pass", Between(both).GetProperty("status").GetString());
        Assert.Equal("pass", both.GetProperty("front").CheckOf("axleDiameterMatch").GetProperty("status").GetString());
        Assert.Equal("pass", both.GetProperty("rear").CheckOf("axleDiameterMatch").GetProperty("status").GetString());
    }

    [Fact]
    public async Task The_gravest_axle_decides_and_the_summary_names_it()
    {
        var vehicle = Requests.Check()["vehicle"]!;
        var good = Requests.Check()["candidate"]!;
        var bad = Requests.Check().With("/candidate/wheel/boltCircle", "4x100")["candidate"]!;
        vehicle["rear"]!["hub"] = new JsonObject { ["boltCircle"] = "5x108" };

        var answer = await fixture.Client.AnswerOf(CarCheck, Car(vehicle, good, bad));

        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.Contains(answer.GetProperty("decidedBy").EnumerateArray(), one => one.GetProperty("axle").GetString() == "rear" && one.GetProperty("id").GetString() == "boltCircle");
        Assert.DoesNotContain(answer.GetProperty("decidedBy").EnumerateArray(), one => one.GetProperty("axle").GetString() == "front");
        Assert.StartsWith("Does not fit. Rear: the wheel does not go on and must not be forced on", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.InRange(answer.GetProperty("summary").GetString()!.Split(". ").Length, 1, 5);
    }

    [Fact]
    public async Task A_request_without_a_wheel_is_refused_by_name()
    {
        using var response = await fixture.Client.PostAsync(CarCheck, Car(Requests.Check()["vehicle"]!).ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);

        Assert.Equal(["/front"], problem.GetProperty("errors").EnumerateArray().Select(fault => fault.GetProperty("pointer").GetString()));
    }

    [Fact]
    public async Task Every_fault_of_both_wheels_is_in_one_answer()
    {
        var bad = Requests.Check().With("/candidate/tyre/marking", "45Q17")["candidate"]!;
        using var response = await fixture.Client.PostAsync(CarCheck, Car(Requests.Check()["vehicle"]!, bad, JsonNode.Parse(bad.ToJsonString())!).ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);

        Assert.Equal(["/front/tyre/marking", "/rear/tyre/marking"], problem.GetProperty("errors").EnumerateArray().Select(fault => fault.GetProperty("pointer").GetString()).Order());
    }

    [Fact]
    public async Task Faults_of_the_contract_and_of_what_is_put_on_come_together()
    {
        var bad = Requests.Check().With("/candidate/tyre/marking", "45Q17").With("/candidate/wheel/rimWidthIn", 21)["candidate"]!;
        using var response = await fixture.Client.PostAsync(CarCheck, Car(Requests.Check()["vehicle"]!, bad, JsonNode.Parse("""{ "wheel": {}, "tyre": { "marking": "x" } }""")).ToJsonString());
        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);

        Assert.Contains("/front/tyre/marking unreadable", problem.FaultsOf());
        Assert.Contains("/front/wheel/rimWidthIn outOfRange", problem.FaultsOf());
        Assert.Contains("/rear/wheel/offsetMm required", problem.FaultsOf());
    }

    [Theory]
    [InlineData("verdict", "summary,verdict,decidedBy,needs,governing,comparison,method,edition,cautionCodes")]
    [InlineData("checks", "summary,verdict,decidedBy,needs,governing,unknown,checks,comparison,method,edition,cautionCodes")]
    [InlineData("full", "summary,verdict,decidedBy,needs,governing,unknown,checks,comparison,method,edition,next,assumptions,cautions")]
    public async Task As_much_is_told_as_is_asked_for(string detail, string members)
    {
        var answer = await fixture.Client.AnswerOf($"{Calls.Check}?detail={detail}", Requests.Check());

        Assert.Equal(members, string.Join(',', answer.EnumerateObject().Select(member => member.Name)));
        if (detail == "verdict") Assert.InRange(System.Text.Encoding.UTF8.GetByteCount(answer.GetRawText()), 200, 600);
    }

    // What a list of products holds for each of them: the bytes of the example's own answer.
    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task A_verdict_is_small(string units)
    {
        var body = await File.ReadAllTextAsync(Examples.ExampleCall.FileOf("fitment-check.request.json"));
        using var response = await fixture.Client.PostAsync($"{Calls.Check}?detail=verdict&units={units}", body);
        var answer = Calls.Parse(await Calls.Text(response));

        Assert.InRange(response.Content.Headers.ContentLength!.Value, 200, 600);
        Assert.Equal(["wheelFasteners", "tryByHand", "localLaw"], answer.GetProperty("cautionCodes").Strings());
    }

    [Fact]
    public async Task Another_word_for_the_detail_is_refused()
    {
        using var response = await fixture.Client.PostAsync($"{Calls.Check}?detail=compact", Requests.Check().ToJsonString());

        Assert.Equal([FaultCodes.UnknownWord], (await Problems.Read(response, ProblemTypes.InvalidRequest)).GetProperty("errors").EnumerateArray().Select(fault => fault.GetProperty("code").GetString()));
    }

    private static JsonElement Between(JsonElement answer) => answer.GetProperty("car").GetProperty("checks").EnumerateArray().Single();

    private static JsonObject Car(JsonNode vehicle, JsonNode? front = null, JsonNode? rear = null)
    {
        var body = new JsonObject { ["vehicle"] = JsonNode.Parse(vehicle.ToJsonString()) };
        if (front is not null) body["front"] = JsonNode.Parse(front.ToJsonString());
        if (rear is not null) body["rear"] = JsonNode.Parse(rear.ToJsonString());
        return body;
    }
}
