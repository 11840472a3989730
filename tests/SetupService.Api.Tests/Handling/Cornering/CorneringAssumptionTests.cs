using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>Nothing is guessed in silence: what is taken away is listed, with how far the answer moves.</summary>
public sealed class CorneringAssumptionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>What a turn has no use for: it says so by not changing.</summary>
    private static readonly string[] Unused =
    [
        "label", "drivenAxle", "topSpeedKmh", "brakeShareFrontPct", "maximumAxleLoadKg", "minimumLoadIndex", "wheel", "hub", "clearance",
        "massKg", "pressureKpa", "bumpNsPerM", "reboundNsPerM", "freeLengthMm", "solidLengthMm", "installedLengthMm",
    ];

    /// <summary>Taken away with the rest left: the axle's loads stand in its wheels' scales, points tell what is stated beside them, and a right wheel is as its left.</summary>
    private static readonly string[] ToldElsewhere = ["frontAxleLoadKg", "rearAxleLoadKg", "right"];

    /// <summary>What the points of a whole car tell, so that it is not assumed but left unused.</summary>
    private static readonly string[] ToldByPoints = ["trackMm", "motionRatio", "rollCentreHeightMm", "casterDeg", "steeringAxisInclinationDeg", "damper"];

    /// <summary>What only an axle that steers has a use for.</summary>
    private static readonly string[] OfSteering = ["casterDeg", "steeringAxisInclinationDeg"];

    public static TheoryData<bool, string> EveryOptionalMember()
    {
        TheoryData<bool, string> places = [];
        foreach (var hasPoints in (bool[])[true, false])
        {
            var body = Body(hasPoints);
            foreach (var place in BodyPlaces.Of(body["vehicle"]).Where(place => BodyPlaces.IsMember(place) && !place.Contains("/suspension/", StringComparison.Ordinal) && !IsBeneath(place)))
                places.Add(hasPoints, place);
        }

        return places;
    }

    [Theory]
    [MemberData(nameof(EveryOptionalMember))]
    public async Task Whatever_is_left_out_is_listed_or_refused_or_has_no_part_in_it(bool hasPoints, string place)
    {
        var name = place[(place.LastIndexOf('/') + 1)..];
        var whole = await fixture.Client.AnswerOf(CorneringCalls.Turn, Body(hasPoints));
        var body = Body(hasPoints).Without("/vehicle" + place);
        using var response = await fixture.Client.PostAsync(CorneringCalls.Turn, body.ToJsonString());
        var answer = Calls.Parse(await response.Content.ReadAsStringAsync());
        if ((int)response.StatusCode == 400)
        {
            Assert.Contains(answer.GetProperty("errors").EnumerateArray(), fault => fault.GetProperty("code").GetString() == "required");
            return;
        }

        Assert.Equal(200, (int)response.StatusCode);
        var isListed = News(whole, answer).Any(input => input.StartsWith("/vehicle" + place, StringComparison.Ordinal) || ("/vehicle" + place).StartsWith(input + "/", StringComparison.Ordinal));
        var isUnknown = answer.GetProperty("unknown").GetArrayLength() > whole.GetProperty("unknown").GetArrayLength();
        if (Unused.Contains(name) || (hasPoints && ToldByPoints.Contains(name)) || (place.StartsWith("/rear", StringComparison.Ordinal) && OfSteering.Contains(name)) || ToldElsewhere.Contains(name))
            Assert.Equal(whole.Number("rollDeg"), answer.Number("rollDeg"), 0.2);
        else
            Assert.True(isListed || isUnknown, $"{place} was left out in silence: {string.Join(", ", News(whole, answer))}");
    }

    [Fact]
    public async Task A_scalar_comes_with_its_range_and_how_far_the_answer_moves()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example().Without("/heldLateralG").Without("/vehicle/centreOfGravityHeightMm"));
        var height = answer.Assumed("/vehicle/centreOfGravityHeightMm").Single();
        var roll = height.GetProperty("moves").EnumerateArray().Single(move => move.GetProperty("output").GetString() == "/rollDeg");

        Assert.InRange(height.Number("value"), height.Number("plausible", "lower"), height.Number("plausible", "upper"));
        Assert.InRange(answer.Number("rollDeg"), roll.Number("lower"), roll.Number("upper"));
        Assert.Equal(
            ["/rollDeg", "/wheels/frontRight/inclinationDeg", "/wheels/rearRight/inclinationDeg", "/limit/front/value", "/limit/rear/value"],
            height.GetProperty("moves").EnumerateArray().Select(move => move.GetProperty("output").GetString()));

        // What is said of the upper end, by the equilibrium's derivatives and one correction, is what that value gives.
        var upper = await fixture.Client.AnswerOf(
            CorneringCalls.Turn, CorneringCalls.Example().Without("/heldLateralG").With("/vehicle/centreOfGravityHeightMm", height.Number("plausible", "upper")));
        Assert.Equal(upper.Number("rollDeg"), roll.Number("upper"), 1e-4);
    }

    [Fact]
    public async Task One_scale_of_grip_is_found_on_the_car_and_listed_with_what_it_does_to_the_limits()
    {
        var hard = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example(1));
        var easy = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example(0.5));
        var grip = hard.Assumed("/vehicle/tyreModel/gripFactor").Single();

        Assert.Equal(grip.Number("value"), easy.Assumed("/vehicle/tyreModel/gripFactor").Single().Number("value"));
        Assert.Equal("heldLateralG", grip.GetProperty("source").GetString());
        Assert.Equal(1.1, Math.Min(hard.GetProperty("limit").Number("front", "value"), hard.GetProperty("limit").Number("rear", "value")), 1e-6);
        var front = grip.GetProperty("moves").EnumerateArray().Single(move => move.GetProperty("output").GetString() == "/limit/front/value");
        Assert.InRange(hard.GetProperty("limit").Number("front", "value"), front.Number("lower"), front.Number("upper"));
    }

    [Fact]
    public async Task The_kind_of_tyre_scales_the_grip_where_nothing_was_measured()
    {
        var limits = new List<double>();
        foreach (var category in (string[])["touring", "summer", "trackDay", "semiSlick", "slick"])
        {
            var body = CorneringCalls.Example(0.6).Without("/heldLateralG").With("/vehicle/front/tyre/category", category).With("/vehicle/rear/tyre/category", category);
            limits.Add((await fixture.Client.AnswerOf(CorneringCalls.Turn, body)).GetProperty("limit").Number("front", "value"));
        }

        Assert.Equal(limits.Order(), limits);
        Assert.InRange(limits[0], 0.78, 0.92);
        Assert.InRange(limits[^1], 1.2, 1.5);
    }

    [Fact]
    public async Task A_car_said_to_hold_more_than_it_stands_is_answered_and_told_so()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Plain(0.5).With("/heldLateralG", 2.5));

        Assert.InRange(answer.Assumed("/heldLateralG").Single().Number("value"), 1.2, 1.5);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("limit").GetProperty("margin").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/limit/margin");
    }

    private static System.Text.Json.Nodes.JsonObject Body(bool hasPoints)
    {
        var body = CorneringCalls.Whole();
        return hasPoints ? body : body.Without("/vehicle/front/suspension").Without("/vehicle/rear/suspension");
    }

    // Members of wheel, hub and the like follow from those above them, and a marking is a tyre's own.
    private static bool IsBeneath(string place) =>
        place.Contains("/wheel/", StringComparison.Ordinal) || place.Contains("/hub/", StringComparison.Ordinal) || place.Contains("/clearance/", StringComparison.Ordinal)
        || place.Contains("/right/", StringComparison.Ordinal) || place.EndsWith("/marking", StringComparison.Ordinal) || place is "/front" or "/rear";

    private static IEnumerable<string> News(JsonElement before, JsonElement after)
    {
        var known = before.GetProperty("assumptions").EnumerateArray().Select(one => one.GetRawText()).ToHashSet();
        return after.GetProperty("assumptions").EnumerateArray().Where(one => !known.Contains(one.GetRawText())).Select(one => one.GetProperty("input").GetString()!);
    }
}
