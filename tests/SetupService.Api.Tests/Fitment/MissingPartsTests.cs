using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>A check never refuses for a part of the car that is missing; what it cannot tell is unknown.</summary>
public sealed class MissingPartsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // The vehicle document's own required members; what they stand in may be left out.
    private static readonly string[] OwnRequired = ["rimDiameterIn", "rimWidthIn", "offsetMm", "marking", "kind", "points", "xMm", "yMm", "zMm"];

    [Fact]
    public async Task With_everything_measured_the_candidate_fails_nothing()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check());

        HoldsTogether(answer);
        Assert.DoesNotContain("fail", answer.GetProperty("checks").EnumerateArray().Select(check => check.GetProperty("status").GetString()));
    }

    [Fact]
    public async Task Whatever_member_of_the_car_is_missing_the_check_answers()
    {
        string[] members = [.. Members(Requests.Check()["vehicle"]!.AsObject(), "/vehicle")];
        Assert.True(members.Length > 60);
        foreach (var member in members)
        {
            var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().Without(member));
            HoldsTogether(answer);
        }
    }

    [Fact]
    public async Task A_missing_member_and_a_null_one_are_the_same()
    {
        foreach (var member in Members(Requests.Check()["vehicle"]!.AsObject(), "/vehicle"))
        {
            var missing = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().Without(member));
            var empty = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With(member, null));
            Assert.True(JsonElement.DeepEquals(missing, empty), member);
        }
    }

    [Fact]
    public async Task Of_a_car_of_which_nothing_is_known_only_the_candidate_itself_is_told()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With("/vehicle", new JsonObject()));

        Assert.Equal("unknown", answer.GetProperty("verdict").GetString());
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("governing").ValueKind);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("comparison").ValueKind);
        Assert.Equal("pass", answer.CheckOf("rimDiameter").GetProperty("status").GetString());
        Assert.Equal("pass", answer.CheckOf("rimWidth").GetProperty("status").GetString());
        var unknown = answer.UnknownChecks();
        Assert.All(new[] { "inboardClearance", "outboardClearance", "loadCapacity", "speedRating", "boltCircle", "centreBore" }, id => Assert.Contains(id, unknown));
    }

    [Theory]
    [InlineData("/vehicle/front/clearance/inboardMm", "inboardClearance", true)]
    [InlineData("/vehicle/front/clearance/outboardMm", "outboardClearance", true)]
    [InlineData("/vehicle/front/clearance/radialMm", "radialClearance", false)]
    [InlineData("/vehicle/front/clearance/inboardAtFullLockMm", "fullLockClearance", false)]
    [InlineData("/vehicle/front/clearance/springSeatMm", "springSeatClearance", false)]
    [InlineData("/vehicle/front/maximumAxleLoadKg", "wheelLoadRating", false)]
    [InlineData("/vehicle/topSpeedKmh", "speedRating", true)]
    [InlineData("/vehicle/front/hub", "fastener", true)]
    [InlineData("/candidate/wheel/boltCircle", "boltCircle", true)]
    [InlineData("/vehicle/front/hub/centreBoreMm", "centreBore", true)]
    [InlineData("/vehicle/front/hub/fastenerThread", "fastener", false)]
    [InlineData("/vehicle/rear/tyre", "axleDiameterMatch", false)]
    public async Task What_a_missing_measurement_leaves_unknown_is_listed(string member, string check, bool isDecisive)
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Larger().Without(member));

        Assert.Equal("unknown", answer.CheckOf(check).GetProperty("status").GetString());
        Assert.Contains(check, answer.UnknownChecks());
        var unknown = answer.GetProperty("unknown").EnumerateArray().Single(one => one.GetProperty("id").GetString() == check);
        Assert.NotEmpty(unknown.GetProperty("reason").GetString()!);
        Assert.All(unknown.GetProperty("needs").Strings(), need => Assert.StartsWith("/", need, StringComparison.Ordinal));
        Assert.Contains(unknown.GetProperty("needs").Strings(), need => need.StartsWith(member, StringComparison.Ordinal));
        Assert.Equal(isDecisive, answer.GetProperty("verdict").GetString() == "unknown");
    }

    // The wheel fitted now is on the hub, so its circle is the hub's.
    [Fact]
    public async Task A_bolt_circle_known_of_neither_hub_nor_present_wheel_is_unknown()
    {
        var body = Requests.Check().Without("/vehicle/front/hub/boltCircle");
        var fromWheel = await fixture.Client.AnswerOf(Calls.Check, body);
        var fromNothing = await fixture.Client.AnswerOf(Calls.Check, body.Without("/vehicle/front/wheel/boltCircle"));

        Assert.Equal("pass", fromWheel.CheckOf("boltCircle").GetProperty("status").GetString());
        Assert.Equal("unknown", fromNothing.CheckOf("boltCircle").GetProperty("status").GetString());
    }

    [Fact]
    public async Task The_caller_says_which_unknowns_decide()
    {
        var body = Requests.Check().Without("/vehicle/front/clearance/springSeatMm").Without("/vehicle/topSpeedKmh");

        var none = await fixture.Client.AnswerOf(Calls.Check, body.With("/required", new JsonArray()));
        var seat = await fixture.Client.AnswerOf(Calls.Check, body.With("/required", new JsonArray("springSeatClearance")));

        Assert.NotEqual("unknown", none.GetProperty("verdict").GetString());
        Assert.Equal("unknown", seat.GetProperty("verdict").GetString());
        Assert.Contains("speedRating", none.UnknownChecks());
    }

    [Fact]
    public async Task Ride_height_gaps_without_travel_are_unknown_and_worst_travel_is_said_to_be_assumed()
    {
        var rideHeight = await fixture.Client.AnswerOf(
            Calls.Check, Larger().With("/vehicle/front/clearance/measuredAt", "rideHeight").Without("/vehicle/front/bumpTravelMm"));
        var silent = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().Without("/vehicle/front/clearance/measuredAt"));

        Assert.Equal("unknown", rideHeight.CheckOf("inboardClearance").GetProperty("status").GetString());
        Assert.Contains(
            silent.GetProperty("assumptions").EnumerateArray(),
            one => one.GetProperty("input").GetString()!.EndsWith("/clearance/measuredAt", StringComparison.Ordinal) && one.GetProperty("text").GetString() == "worstTravel");
    }

    /// <summary>A candidate that takes more room than the present fitting everywhere, on a car that has room enough: what takes no more needs no gap.</summary>
    private static JsonObject Larger()
    {
        var body = Requests.Check().With("/candidate/wheel/offsetMm", 43).With("/candidate/tyre/marking", "225/45R17 94W XL M+S");
        foreach (var gap in new[] { "inboardMm", "outboardMm", "radialMm", "inboardAtFullLockMm", "springSeatMm" }) body = body.With("/vehicle/front/clearance/" + gap, 60);
        return body;
    }

    [Fact]
    public async Task What_takes_no_more_room_than_the_present_fitting_needs_no_gap()
    {
        var body = Requests.Check().Without("/vehicle/front/clearance").Without("/camberChange");
        var now = JsonNode.Parse(body["vehicle"]!["front"]!["tyre"]!.ToJsonString());
        var answer = await fixture.Client.AnswerOf(Calls.Check, body.With("/candidate/wheel/rimWidthIn", 7.5).With("/candidate/wheel/offsetMm", 45).With("/candidate/tyre", now));

        Assert.Equal("pass", answer.GetProperty("verdict").GetString());
        Assert.StartsWith("Fits: it takes no more room than the wheel and tyre fitted now.", answer.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("inboardClearance", answer.UnknownChecks());
    }

    [Fact]
    public async Task What_takes_more_says_by_how_much_and_what_to_measure_first()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Larger().Without("/vehicle/front/clearance"));
        var inboard = answer.GetProperty("unknown").EnumerateArray().Single(one => one.GetProperty("id").GetString() == "inboardClearance");

        Assert.InRange(inboard.GetProperty("moreRoomMm").GetDouble(), 1, 10);
        Assert.Equal(["/vehicle/front/clearance/inboardMm", "/vehicle/front/clearance/outboardMm"], answer.GetProperty("needs").Strings().Take(2));
        Assert.Equal(["inboardClearance", "outboardClearance"], answer.GetProperty("decidedBy").Strings());
    }

    /// <summary>The verdict and the list of unknowns follow from the checks by the contract's rule.</summary>
    private static void HoldsTogether(JsonElement answer)
    {
        string[] required = ["inboardClearance", "outboardClearance", "rimDiameter", "rimWidth", "loadCapacity", "speedRating", "boltCircle", "centreBore"];
        (string Id, string Status)[] checks = [.. answer.GetProperty("checks").EnumerateArray().Select(check => (check.GetProperty("id").GetString()!, check.GetProperty("status").GetString()!))];
        var verdict = checks.Any(check => check.Status == "fail") ? "fail"
            : checks.Any(check => check.Status == "unknown" && required.Contains(check.Id)) ? "unknown"
            : checks.Any(check => check.Status == "caution") ? "caution"
            : "pass";

        Assert.Equal(verdict, answer.GetProperty("verdict").GetString());
        Assert.Equal(checks.Where(check => check.Status == "unknown").Select(check => check.Id), answer.UnknownChecks());
    }

    private static IEnumerable<string> Members(JsonObject owner, string pointer)
    {
        foreach ((var name, var value) in owner)
        {
            if (!OwnRequired.Contains(name) && owner["kind"] is null)
                yield return $"{pointer}/{name}";
            if (value is JsonObject inner)
            {
                foreach (var member in Members(inner, $"{pointer}/{name}").Where(member => !member.Contains("/points/", StringComparison.Ordinal)))
                    yield return member;
            }
        }
    }
}
