using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry.Steering;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry.Alignment;

public sealed class AlignmentCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly Gen<JsonObject> AnyWheel = Gen.Select(Gen.Double[-15, 15], Gen.Double[-5, 20], Gen.Double[-5, 5], Gen.Double[-10, 40])
        .Select((camber, caster, toe, inclination) => new JsonObject
        {
            ["camberDeg"] = camber,
            ["casterDeg"] = caster,
            ["toeDeg"] = toe,
            ["steeringAxisInclinationDeg"] = inclination,
        });

    /// <summary>A side that stands in for one that was not measured can show no difference, so there is no hint.</summary>
    [Theory]
    [InlineData("camberDeg")]
    [InlineData("steeringAxisInclinationDeg")]
    public async Task A_hint_needs_the_right_side_measured(string angle)
    {
        var body = SteeringRequests.Alignment();
        body["vehicle"]!["front"]!["alignment"]!["right"]!.AsObject().Remove(angle);

        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body);

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("front").GetProperty("includedAngleHint").ValueKind);
        var unknown = Assert.Single(answer.GetProperty("unknown").EnumerateArray());
        Assert.Equal("/front/includedAngleHint", unknown.GetProperty("id").GetString());
        Assert.Contains("the right side was not measured", unknown.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(["/vehicle/front/alignment/right/" + angle], unknown.GetProperty("needs").EnumerateArray().Select(one => one.GetString()));
    }

    // Worked by hand from the request; toe in mm is diameter × sin toe (definition): 450 sin 0.08° = 0.6283.
    [Fact]
    public async Task The_figures_of_the_demo_car_are_those_worked_by_hand()
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, SteeringRequests.Alignment());

        Near(0.14, answer, "front", "totalToe", "toeDeg");
        Near(8.4, answer, "front", "totalToe", "toeArcmin");
        Near(0.6283 + 0.4712, answer, "front", "totalToe", "toeMm");
        Near(4.8, answer, "front", "left", "toe", "toeArcmin");
        Near(0.6283, answer, "front", "left", "toe", "toeMm");
        Near(0.1, answer, "front", "crossCamberDeg");
        Near(0.2, answer, "front", "crossCasterDeg");
        Near(0.1, answer, "front", "crossSteeringAxisInclinationDeg");
        Near(12.4, answer, "front", "left", "includedAngleDeg");
        Near(0.2, answer, "front", "crossIncludedAngleDeg");
        Near(0.22, answer, "rear", "totalToe", "toeDeg");

        // Rear left 0.16 in heads right, rear right 0.06 in heads left: the rear pushes 0.05 to the right.
        Near(-0.05, answer, "thrustAngleDeg");
        Near(0.04, answer, "steerAheadDeg");
        Near(0.03, answer, "frontLeftToeToThrustLine", "toeDeg");
        Near(0.11, answer, "frontRightToeToThrustLine", "toeDeg");
        Near(180 / Math.PI * Math.Atan(3.0 / 1510), answer, "setbackAngleDeg");
        Assert.Equal(0, answer.GetProperty("unknown").GetArrayLength());
        Assert.Equal(0, answer.GetProperty("assumptions").GetArrayLength());
    }

    // By hand: 0.10° at the edge of a 16 in rim (406.4 mm) is 0.709 mm and six minutes.
    [Fact]
    public async Task The_worked_example_of_toe_units_is_reproduced()
    {
        var answer = await fixture.Client.AnswerOf(
            SteeringRequests.AlignmentPath, SteeringRequests.Alignment().With("/vehicle/front/alignment/toeDeg", 0.1).With("/measuringDiameterMm", 406.4));

        Assert.Equal(0.709, Of(answer, "front", "left", "toe", "toeMm").GetDouble(), 5e-4);
        Near(6, answer, "front", "left", "toe", "toeArcmin");
    }

    [Theory]
    [InlineData(0, 0.2, 0.1)]
    [InlineData(0.2, 0, -0.1)]
    [InlineData(-0.3, 0.3, 0.3)]
    public async Task The_thrust_angle_points_left_where_the_rear_wheels_head_left(double leftToeDeg, double rightToeDeg, double thrustDeg)
    {
        var body = SteeringRequests.Alignment().With("/vehicle/rear/alignment/toeDeg", leftToeDeg).With("/vehicle/rear/alignment/right/toeDeg", rightToeDeg);

        Near(thrustDeg, await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body), "thrustAngleDeg");
    }

    [Fact]
    public async Task In_the_mirror_headings_and_cross_values_change_their_sign_and_totals_stay() =>
        await Gen.Select(AnyWheel, AnyWheel, AnyWheel, AnyWheel).SampleAsync(
            async (frontLeft, frontRight, rearLeft, rearRight) =>
            {
                var asSent = await Answer(frontLeft, frontRight, rearLeft, rearRight);
                var mirrored = await Answer(frontRight, frontLeft, rearRight, rearLeft);

                Opposite(asSent, mirrored, "thrustAngleDeg");
                Opposite(asSent, mirrored, "steerAheadDeg");
                foreach (var axle in new[] { "front", "rear" })
                {
                    foreach (var name in new[] { "crossCamberDeg", "crossCasterDeg", "crossSteeringAxisInclinationDeg", "crossIncludedAngleDeg" })
                        Opposite(asSent, mirrored, axle, name);
                    Near(Of(asSent, axle, "totalToe", "toeMm").GetDouble(), mirrored, axle, "totalToe", "toeMm");
                    Assert.Equal(Of(asSent, axle, "includedAngleHint", "hint").GetString(), Of(mirrored, axle, "includedAngleHint", "hint").GetString());
                }

                Near(Of(asSent, "frontLeftToeToThrustLine", "toeDeg").GetDouble(), mirrored, "frontRightToeToThrustLine", "toeDeg");

                // What the wheels show against the thrust line adds up to the total.
                Near(
                    Of(asSent, "frontLeftToeToThrustLine", "toeDeg").GetDouble() + Of(asSent, "frontRightToeToThrustLine", "toeDeg").GetDouble(),
                    asSent,
                    "front", "totalToe", "toeDeg");
            },
            iter: 25);

    [Theory]
    [InlineData(13.1, -0.7, "noDifference", "steeringWork")]
    [InlineData(13.1, -1.7, "uprightOrStrut", "bentParts")]
    [InlineData(14.1, -1.7, "towerOrArm", "bentParts")]
    [InlineData(14.1, -0.7, "both", "bentParts")]
    public async Task A_difference_of_the_sides_is_a_hint_that_defers_to_inspection(double inclinationDeg, double camberDeg, string hint, string caution)
    {
        var body = SteeringRequests.Alignment().With("/vehicle/front/alignment/right/steeringAxisInclinationDeg", inclinationDeg).With("/vehicle/front/alignment/right/camberDeg", camberDeg);
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body);

        Assert.Equal(hint, Of(answer, "front", "includedAngleHint", "hint").GetString());
        Assert.Equal(caution, answer.GetProperty("cautions")[0].GetProperty("code").GetString());
    }

    [Theory]
    [InlineData("""{ "vehicle": {} }""")]
    [InlineData("""{ "vehicle": { "front": {}, "rear": { "alignment": { "right": null } } }, "setbackMm": null }""")]
    public async Task With_nothing_given_everything_is_unknown_and_says_what_it_needs(string body)
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body);

        Assert.Equal(37, answer.GetProperty("unknown").GetArrayLength());
        Assert.Contains(
            answer.GetProperty("unknown").EnumerateArray(),
            one => one.GetProperty("id").GetString() == "/thrustAngleDeg" && one.GetProperty("reason").GetString() == "needs /vehicle/rear/alignment/toeDeg");
        Assert.Equal(["/measuringDiameterMm"], answer.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString()));
        Near(400, answer, "measuringDiameterMm");
    }

    // Whatever is left out: each null is listed once, each listed figure is null, and each reading it names was left out.
    [Fact]
    public async Task Exactly_the_nulls_are_listed_as_unknown() =>
        await Gen.Int[0, (1 << Readings.Length) - 1].SampleAsync(
            async mask =>
            {
                var body = SteeringRequests.Alignment();
                string[] left = [.. Readings.Where((_, i) => (mask >> i & 1) == 1)];
                foreach (var reading in left) body.Without(reading);
                var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body);
                var unknown = answer.GetProperty("unknown").EnumerateArray().ToArray();

                Assert.Equal(Nulls(answer, "").Order(StringComparer.Ordinal), unknown.Select(one => one.GetProperty("id").GetString()!).Order(StringComparer.Ordinal));
                foreach (var needed in unknown.SelectMany(one => one.GetProperty("needs").EnumerateArray())) Assert.Contains(needed.GetString(), left);
            },
            iter: 60);

    // What is not said of the right wheel is as on the left, and the answer says so.
    [Fact]
    public async Task A_right_wheel_not_measured_is_as_the_left_and_listed()
    {
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, SteeringRequests.Alignment().Without("/vehicle/front/alignment/right/camberDeg"));

        Near(0, answer, "front", "crossCamberDeg");
        var assumed = Assert.Single(answer.GetProperty("assumptions").EnumerateArray());
        Assert.Equal(("/vehicle/front/alignment/right", "as the left: camberDeg"), (assumed.GetProperty("input").GetString(), assumed.GetProperty("text").GetString()));
    }

    // By hand: −0.8° lies 0.2° above −1.0°, −0.7° 0.3° above; 0.22° of total toe is inside.
    [Fact]
    public async Task Each_angle_is_told_beside_its_range()
    {
        var targets = JsonNode.Parse("""{ "front": { "camberDeg": { "from": -2, "to": -1 } }, "rear": { "totalToeDeg": { "from": 0.1, "to": 0.3 }, "casterDeg": { "from": 0, "to": 1 } } }""");
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, SteeringRequests.Alignment().With("/targets", targets).Without("/vehicle/rear/alignment/casterDeg").Without("/vehicle/rear/alignment/right/casterDeg"));

        var told = answer.GetProperty("comparisons").EnumerateArray().ToArray();
        Assert.Equal(["camberDeg", "camberDeg", "casterDeg", "casterDeg", "totalToeDeg"], told.Select(one => one.GetProperty("angle").GetString()));
        Assert.Equal((0.3, 0.2), (Math.Round(Of(told[0], "outsideByDeg").GetDouble(), 6), Math.Round(Of(told[1], "outsideByDeg").GetDouble(), 6)));
        Assert.False(Of(told[0], "isWithin").GetBoolean());
        Assert.Equal(JsonValueKind.Null, Of(told[2], "isWithin").ValueKind);
        Assert.True(Of(told[4], "isWithin").GetBoolean());
        Assert.Equal(["/targets/front/camberDeg inconsistent"], (await fixture.Client.RefusalOf(SteeringRequests.AlignmentPath, SteeringRequests.Alignment().With("/targets", JsonNode.Parse("""{ "front": { "camberDeg": { "from": 1, "to": 0 } } }""")).ToJsonString())).FaultsOf());
    }

    // Lowered by 30 mm a corner stands as after 30 mm of bump: rows of Domain.Tests/TestData/kinematics_cases.json.
    [Fact]
    public async Task An_axle_lowered_shows_the_angles_of_that_bump_or_says_that_it_cannot()
    {
        var body = Corners.Of(GeometryRequests.Strut).With("/vehicle/front/rideHeightChangeMm", -30);
        body.Remove("axle");
        var answer = await fixture.Client.AnswerOf(SteeringRequests.AlignmentPath, body);

        Assert.Equal(-1.1318121, Of(answer, "front", "left", "camberDeg").GetDouble(), 2e-7);
        Assert.Equal(-0.0274656, Of(answer, "front", "right", "toe", "toeDeg").GetDouble(), 2e-7);
        var fault = (await fixture.Client.NotComputableOf(SteeringRequests.AlignmentPath, body.Without("/vehicle/front/suspension").ToJsonString())).OnlyFault();
        Assert.Equal("/vehicle/front/rideHeightChangeMm", fault.GetProperty("pointer").GetString());
    }

    private static readonly string[] Readings =
    [
        .. from axle in new[] { "front", "rear" }
           from name in new[] { "camberDeg", "casterDeg", "toeDeg", "steeringAxisInclinationDeg" } select $"/vehicle/{axle}/alignment/{name}",
        "/setbackMm", "/vehicle/front/trackMm",
    ];

    private static IEnumerable<string> Nulls(JsonElement element, string path) => element.ValueKind switch
    {
        JsonValueKind.Null => [path],
        JsonValueKind.Object => element.EnumerateObject().SelectMany(member => Nulls(member.Value, $"{path}/{member.Name}")),
        _ => [],
    };

    private Task<JsonElement> Answer(JsonNode frontLeft, JsonNode frontRight, JsonNode rearLeft, JsonNode rearRight) => fixture.Client.AnswerOf(
        SteeringRequests.AlignmentPath,
        new JsonObject
        {
            ["vehicle"] = new JsonObject { ["front"] = Axle(frontLeft, frontRight), ["rear"] = Axle(rearLeft, rearRight) },
        });

    private static JsonObject Axle(JsonNode left, JsonNode right)
    {
        var angles = left.DeepClone().AsObject();
        angles["right"] = right.DeepClone();
        return new JsonObject { ["alignment"] = angles };
    }

    private static JsonElement Of(JsonElement answer, params string[] path) => path.Aggregate(answer, (element, name) => element.GetProperty(name));

    private static void Near(double expected, JsonElement answer, params string[] path) => Assert.Equal(expected, Of(answer, path).GetDouble(), 1e-4);

    private static void Opposite(JsonElement one, JsonElement other, params string[] path) =>
        Assert.Equal(0, Of(one, path).GetDouble() + Of(other, path).GetDouble(), 1e-6);
}
