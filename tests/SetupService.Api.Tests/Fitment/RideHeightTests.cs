using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Vehicles;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Gaps measured at ride height lose what travel takes; how far the wheel leans on the way is told by points or by a curve.</summary>
public sealed class RideHeightTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double BumpMm = 68;

    private static readonly string[] Places = ["inboardClearance", "outboardClearance", "radialClearance", "fullLockClearance", "springSeatClearance"];

    // The strut's own sweep, read every 2 mm, is what a person with a perfect gauge would have measured. What readings of camber do not show is the wheel
    // centre's way inboard: 5.674 mm over 68 mm of bump, by the corner solved anew in a script of its own.
    [Fact]
    public async Task A_strut_by_its_points_has_the_room_that_the_curve_of_its_own_sweep_leaves()
    {
        var sweep = await fixture.Client.AnswerOf("/v1/geometry/travel-sweep", Requests.Object(
            $$"""{ "vehicle": { "front": { "suspension": {{DemoCar.Strut}}, "alignment": { "camberDeg": -0.7, "toeDeg": 0.08 }, "loadedRadiusMm": 305 } }, "axle": "front", "travelMm": { "from": 0, "to": {{BumpMm}}, "step": 2 } }"""));
        JsonArray readings = [.. sweep.GetProperty("rows").EnumerateArray().Select(row => (JsonNode)new JsonObject
        {
            ["travelMm"] = row.GetProperty("travelMm").GetDouble(),
            ["camberDeg"] = row.GetProperty("camberDeg").GetDouble(),
        })];
        var measured = new JsonObject { ["kind"] = "measured", ["readings"] = readings };

        var byPoints = await fixture.Client.AnswerOf(Calls.Check, AtRideHeight());
        var byCurve = await fixture.Client.AnswerOf(Calls.Check, AtRideHeight().With("/vehicle/front/suspension", measured));

        Assert.Equal(35, readings.Count);
        foreach (var place in Places)
        {
            var sidewaysMm = place is "inboardClearance" or "fullLockClearance" ? 5.674 : 0;
            Assert.Equal(NominalMm(byCurve, place) - sidewaysMm, NominalMm(byPoints, place), 0.05);
        }

        Assert.True(NominalMm(byPoints, "inboardClearance") < 40 - 2);
        Assert.DoesNotContain(byPoints.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString()!.Contains("alignment", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/vehicle/front/suspension/points/strutTop/zMm", 100, "look at strutLower first")]
    [InlineData("/vehicle/front/bumpTravelMm", 480, "of the upward travel of 480 mm")]
    public async Task Points_that_do_not_tell_the_lean_leave_the_room_unknown_and_say_why(string member, int value, string words)
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Larger(AtRideHeight()).With(member, value));

        foreach (var place in new[] { "inboardClearance", "outboardClearance", "fullLockClearance" })
        {
            var check = answer.CheckOf(place);
            Assert.Equal("unknown", check.GetProperty("status").GetString());
            Assert.Contains(words, check.GetProperty("explanation").GetString(), StringComparison.Ordinal);
        }

        Assert.NotEqual(JsonValueKind.Null, answer.CheckOf("radialClearance").GetProperty("nominalMm").ValueKind);
    }

    [Fact]
    public async Task Without_points_and_without_a_curve_the_room_is_unknown()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Larger(AtRideHeight()).Without("/vehicle/front/suspension"));

        Assert.Equal("unknown", answer.CheckOf("inboardClearance").GetProperty("status").GetString());
        Assert.Contains("neither a measured camber curve nor the points", answer.CheckOf("inboardClearance").GetProperty("explanation").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Static_angles_nobody_gave_are_said_to_be_assumed_and_hardly_matter()
    {
        var given = await fixture.Client.AnswerOf(Calls.Check, AtRideHeight());
        var silent = await fixture.Client.AnswerOf(Calls.Check, AtRideHeight().Without("/vehicle/front/alignment"));

        var inputs = silent.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString());
        Assert.All(new[] { "/vehicle/front/alignment/camberDeg", "/vehicle/front/alignment/toeDeg" }, input => Assert.Contains(input, inputs));
        foreach (var place in Places) Assert.Equal(NominalMm(given, place), NominalMm(silent, place), 0.1);
    }

    // Window and batch ask the same axle as the check.
    [Fact]
    public async Task Window_and_batch_tell_the_same_as_the_check()
    {
        var body = AtRideHeight().Without("/camberChange");
        var check = await fixture.Client.AnswerOf(Calls.Check, body);
        var car = BatchCalls.Car().With("/vehicle", body["vehicle"]!.DeepClone()).Without("/camberChange");
        var lines = await fixture.Client.LinesOf(car.ToJsonString() + "\n" + BatchCalls.CandidateLine("one"), "?detail=full");
        var window = await fixture.Client.AnswerOf(Calls.Window, Requests.Window().With("/vehicle", body["vehicle"]!.DeepClone()));

        foreach (var place in Places) Assert.Equal(NominalMm(check, place), NominalMm(lines[0].GetProperty("result"), place), 1e-6);
        var probableMm = check.CheckOf("outboardClearance").GetProperty("probableMm").GetDouble();
        Assert.Equal(40 - probableMm, window.GetProperty("windows")[1].GetProperty("offsetMm").GetProperty("from").GetDouble(), 0.01);
    }

    // What takes no more room than the present fitting needs no lean.
    private static JsonObject Larger(JsonObject body) => body.With("/candidate/wheel/offsetMm", 43).With("/candidate/tyre/marking", "225/45R17 94W XL M+S");

    private static JsonObject AtRideHeight() => Requests.Check()
        .With("/vehicle/front/clearance", Requests.Object(
            """{ "inboardMm": 40, "outboardMm": 30, "radialMm": 500, "inboardAtFullLockMm": 40, "springSeatMm": 16, "measuredAt": "rideHeight", "uncertaintyMm": 1 }"""))
        .With("/vehicle/front/bumpTravelMm", (int)BumpMm)
        .With("/vehicle/front/bumpStop", Requests.Object("""{ "lengthMm": 18, "compressedLengthMm": 18, "motionRatio": 0.94 }"""));

    private static double NominalMm(JsonElement answer, string place) => answer.CheckOf(place).GetProperty("nominalMm").GetDouble();
}
