using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>What a change may say, and what becomes of one that cannot be answered.</summary>
public sealed class WhatIfChangeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Bar = """{"label":"bar","vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":450}}}}""";

    // One bad change lost all the others.
    [Theory]
    [InlineData("""{"vehicle":{"front":{"spring":{"rateNPerMm":-5}}}}""", 400, "/changes/1/vehicle/front/spring/rateNPerMm", FaultCodes.OutOfRange)]
    [InlineData("""{"vehicle":{"front":{"sprung":{}}}}""", 400, "/changes/1/vehicle/front/sprung", FaultCodes.UnknownMember)]
    [InlineData("""{"vehicle":"front"}""", 400, "/changes/1/vehicle", FaultCodes.WrongType)]
    [InlineData("""{"vehicel":{}}""", 400, "/changes/1/vehicel", FaultCodes.UnknownMember)]
    [InlineData("""{"keepRideHeight":"yes"}""", 400, "/changes/1/keepRideHeight", FaultCodes.WrongType)]
    [InlineData("7", 400, "/changes/1", FaultCodes.WrongType)]
    [InlineData("null", 400, "/changes/1", FaultCodes.Required)]
    [InlineData("""{"vehicle":{"front":{"tyre":{"marking":"round"}}}}""", 400, "/changes/1/vehicle/front/tyre/marking", FaultCodes.Unreadable)]
    [InlineData("""{"vehicle":{"cornerWeightsKg":{"frontLeft":100,"frontRight":100}}}""", 400, "/vehicle/frontAxleLoadKg", FaultCodes.Inconsistent)]
    [InlineData("""{"remove":["/front/antiRollBar","/front/antiRollBar"]}""", 400, "/changes/1/remove/1", FaultCodes.Inconsistent)]
    [InlineData("""{"remove":["front/antiRollBar"]}""", 400, "/changes/1/remove/0", FaultCodes.Unreadable)]
    [InlineData("""{"remove":["/front/antiRollBar~"]}""", 400, "/changes/1/remove/0", FaultCodes.Unreadable)]
    [InlineData("""{"remove":["/nowhere"]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":[""]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":["/vehicle/front/antiRollBar"]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":["/front/wheel"]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":["/front/spring"]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":["/rear/trackMm"]}""", 400, "/changes/1/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"remove":["/front/wheel/spacerMm"]}""", 400, "/changes/1/remove/0", FaultCodes.Inconsistent)]
    [InlineData("""{"remove":[3]}""", 400, "/changes/1/remove/0", FaultCodes.WrongType)]
    [InlineData("""{"vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":300}}},"remove":["/front/antiRollBar"]}""", 400, "/changes/1/remove/0", FaultCodes.Inconsistent)]
    [InlineData("""{"vehicle":{"front":{"rideHeightChangeMm":-10}},"keepRideHeight":true}""", 400, "/changes/1/keepRideHeight", FaultCodes.Inconsistent)]
    [InlineData("""{"vehicle":{"front":{"spring":{"rateNPerMm":150}}}}""", 422, "/changes/1/vehicle/front/spring", FaultCodes.Unreachable)]
    [InlineData("""{"vehicle":{"front":{"suspension":{"points":{"strutTop":{"yMm":1900}}}}}}""", 422, "/changes/1/vehicle/front/suspension", FaultCodes.Unreachable)]
    [InlineData("""{"vehicle":{"centreOfGravityHeightMm":1500}}""", 422, "/changes/1", FaultCodes.Unreachable)]
    public async Task A_faulty_change_says_so_in_its_own_place_and_the_others_are_answered(string faulty, int status, string place, string code)
    {
        var answer = await Compare(Bar, faulty, Bar);

        var changes = answer.GetProperty("changes");
        var problem = changes[1].GetProperty("problem");
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.Contains(problem.GetProperty("errors").EnumerateArray(), one => one.GetProperty("pointer").GetString() == place && one.GetProperty("code").GetString() == code);
        Assert.Equal(JsonValueKind.Null, changes[1].GetProperty("after").ValueKind);
        Assert.Equal(JsonValueKind.Null, changes[1].GetProperty("text").ValueKind);
        Assert.Equal(changes[0].GetProperty("after").GetRawText(), changes[2].GetProperty("after").GetRawText());
        Assert.True(changes[0].GetProperty("after").GetProperty("rollDeg").GetDouble() < answer.GetProperty("before").GetProperty("rollDeg").GetDouble());
        Assert.False(changes[0].TryGetProperty("problem", out _));
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("together").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/together");
        Assert.Contains("not answered", answer.GetProperty("table").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_far_too_stiff_a_spring_would_lift_the_car_is_told_with_what_to_do()
    {
        var detail = (await Compare("""{"vehicle":{"front":{"spring":{"rateNPerMm":150}}}}""")).GetProperty("changes")[0].GetProperty("problem").GetProperty("detail").GetString()!;

        Assert.Contains("higher", detail, StringComparison.Ordinal);
        Assert.Contains("keepRideHeight", detail, StringComparison.Ordinal);
        Assert.DoesNotContain("points", detail, StringComparison.Ordinal);
        var kept = (await Compare("""{"vehicle":{"front":{"spring":{"rateNPerMm":150}}},"keepRideHeight":true}""")).GetProperty("changes")[0];
        Assert.Equal(0, kept.GetProperty("after").GetProperty("frontRideHeightChangeMm").GetDouble(), 1e-9);
    }

    [Theory]
    [InlineData(24, 200)]
    [InlineData(25, 400)]
    [InlineData(0, 400)]
    public async Task As_many_changes_as_a_request_holds(int count, int status)
    {
        using var response = await fixture.Client.PostAsync("/v1/handling/what-if", Body([.. Enumerable.Repeat(Bar, count)]));

        Assert.Equal(status, (int)response.StatusCode);
    }

    // 0 says that there is no bar; a bar left out is a typical one.
    [Fact]
    public async Task A_bar_taken_off_is_none()
    {
        var changes = (await Compare("""{"remove":["/front/antiRollBar"]}""", """{"vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":0}}}}""")).GetProperty("changes");

        Assert.Equal(changes[1].GetProperty("after").GetRawText(), changes[0].GetProperty("after").GetRawText());
        Assert.True(changes[0].GetProperty("change").GetProperty("rollDeg").GetDouble() > 0);
    }

    [Fact]
    public async Task A_change_that_moves_nothing_is_told()
    {
        var changes = (await Compare("""{"label":"nothing"}""", """{"vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":310}}}}""", """{"vehicle":{"front":{"wheel":{"rimWidthIn":8}}}}""")).GetProperty("changes");

        Assert.All(changes.EnumerateArray(), one => Assert.Contains("moves none of the figures", one.GetProperty("text").GetString(), StringComparison.Ordinal));
        Assert.Contains("massKg of the new wheel is not given", changes[2].GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains(changes[2].GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/after/frontUnsprungMassKg");
    }

    // The car as given decides whether the call is answered at all.
    [Fact]
    public async Task Only_a_car_that_does_not_hold_the_turn_as_given_refuses_the_call()
    {
        var body = JsonNode.Parse(Body(Bar))!;
        body["vehicle"]!["centreOfGravityHeightMm"] = 1500;
        using var response = await fixture.Client.PostAsync("/v1/handling/what-if", body.ToJsonString());

        Assert.Equal(422, (int)response.StatusCode);
    }

    // A refused body lists every fault of the request, those of its changes too.
    [Fact]
    public async Task Faults_of_the_request_itself_come_with_those_of_its_changes()
    {
        var body = JsonNode.Parse(Body("""{"vehicle":{"front":{"spring":{"rateNPerMm":-5}}}}"""))!;
        body["lateralG"] = 9;
        using var response = await fixture.Client.PostAsync("/v1/handling/what-if", body.ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        var pointers = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray().Select(one => one.GetProperty("pointer").GetString());
        Assert.Equal(["/lateralG", "/changes/0/vehicle/front/spring/rateNPerMm"], pointers.Order(StringComparer.Ordinal).Reverse());
    }

    [Theory]
    [InlineData("""{"front":{"spring":{"rateNPerMm":30}}}""", "/change/front", FaultCodes.UnknownMember)]
    [InlineData("""{"remove":["/front/spring"]}""", "/change/remove/0", FaultCodes.UnknownWord)]
    [InlineData("""{"vehicle":{"rear":{"rideHeightChangeMm":-10}},"keepRideHeight":true}""", "/change/keepRideHeight", FaultCodes.Inconsistent)]
    public async Task Ride_takes_the_same_form_and_refuses_what_it_cannot_do(string change, string place, string code)
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("ride.request.json")))!;
        body["change"] = JsonNode.Parse(change);
        using var response = await fixture.Client.PostAsync("/v1/handling/ride", body.ToJsonString());

        Assert.Equal(400, (int)response.StatusCode);
        Assert.Contains(
            JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").EnumerateArray(),
            one => one.GetProperty("pointer").GetString() == place && one.GetProperty("code").GetString() == code);
    }

    [Fact]
    public async Task Ride_keeps_the_height_where_asked()
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("ride.request.json")))!;
        body["change"]!["keepRideHeight"] = true;

        var answer = JsonDocument.Parse(await Calls.Text(await fixture.Client.PostAsync("/v1/handling/ride", body.ToJsonString()))).RootElement;

        Assert.Equal(0, answer.GetProperty("front").GetProperty("rideHeightChangeMm").GetDouble());
        Assert.Equal(answer.GetProperty("before").GetProperty("front").GetProperty("bumpLeftMm").GetDouble(), answer.GetProperty("front").GetProperty("bumpLeftMm").GetDouble(), 1e-6);
    }

    // Short enough to look at: 24 changes are at most six times as high as wide, and labels are whole.
    [Theory]
    [InlineData(3, 400, 1.9)]
    [InlineData(12, 400, 3.6)]
    [InlineData(24, 400, 6)]
    [InlineData(24, 900, 1.8)]
    public async Task The_picture_is_short_and_its_labels_are_whole(int count, int widthPx, double mostHigh)
    {
        const string Label = "a label of eighty letters that somebody wrote about tyres wider in front and rear";
        using var response = await fixture.Client.PostAsync(
            FormattableString.Invariant($"/v1/handling/what-if/chart?widthPx={widthPx}"), Body([.. Enumerable.Repeat(Bar, count - 1), $$"""{"label":"{{Label[..80]}}","remove":["/rear/antiRollBar"]}"""]));

        var picture = System.Xml.Linq.XDocument.Parse(await Calls.Text(response));
        var box = picture.Root!.Attribute("viewBox")!.Value.Split(' ').Select(one => double.Parse(one, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.InRange(box[3] / box[2], 0.1, mostHigh);
        var words = string.Join(' ', picture.Descendants().Where(one => one.Name.LocalName == "text").Select(one => one.Value));
        Assert.Contains(Label[..80], words, StringComparison.Ordinal);
        Assert.Contains("better", words, StringComparison.Ordinal);
    }

    private static string Body(params string[] changes)
    {
        var body = JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("what-if.request.json")))!;
        body["changes"] = new JsonArray([.. changes.Select(one => JsonNode.Parse(one))]);
        return body.ToJsonString();
    }

    private async Task<JsonElement> Compare(params string[] changes) =>
        JsonDocument.Parse(await Calls.Text(await fixture.Client.PostAsync("/v1/handling/what-if", Body(changes)))).RootElement;
}
