using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Corners whose motion has no such figure: null with the reason, never a number out of all measure, never a failure.</summary>
public sealed class NoFigureTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Both ball joints in the car's centre plane: both axes meet the ground in one place, and ideal wheels are parallel.
    [Fact]
    public async Task Steering_axes_in_one_place_have_no_percentage()
    {
        var body = GeometryRequests.Sweep(GeometryRequests.Wishbone, 0, 0, 1).With("/vehicle/wheelbaseMm", 2600).With("/rackMm", GeometryRequests.Range(-40, 40, 20));
        foreach (var place in BodyPlaces.Of(body).Where(place => place.EndsWith("/yMm", StringComparison.Ordinal)))
            body.With(place, Math.Abs(BodyPlaces.At(body, place).GetValue<double>() - 700)); // the pivots stay on the left, outboard of the joints
        body.With("/vehicle/front/suspension/points/lowerBallJoint", Corners.Point(0, 0, 180)).With("/vehicle/front/suspension/points/upperBallJoint", Corners.Point(0, 0, 480));

        var row = (await fixture.Client.AnswerOf(GeometryCalls.Sweep, body)).GetProperty("rows")[0];

        Assert.True(Math.Abs(row.Number("steerDeg")) > 5);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("ackermannPct").ValueKind);
        Assert.True(row.Number("turningCircleM") > 0);
    }

    // Four links that meet a line across the car: the fifth turns the wheel about that line, which meets the ground nowhere.
    [Fact]
    public async Task A_level_axis_steers_nothing()
    {
        (double[] Chassis, double[] Upright)[] links =
        [
            ([200, 620, 400], [0, 620, 312]), ([-200, 640, 400], [0, 640, 312]), ([200, 300, 250], [0, 660, 312]), ([-200, 300, 250], [0, 700, 312]),
            ([-136, 300, 400], [-136, 682, 200]),
        ];
        var body = GeometryRequests.Sweep(GeometryRequests.FiveLink, 0, 0, 1);
        for (var link = 0; link < 5; link++)
        {
            body.With($"/vehicle/front/suspension/points/links/{link}/chassis", Point(links[link].Chassis));
            body.With($"/vehicle/front/suspension/points/links/{link}/upright", Point(links[link].Upright));
        }

        await CheckMissing(body, "casterDeg", "steeringAxisInclinationDeg", "scrubRadiusMm", "mechanicalTrailMm");
    }

    // Pivot axis across the car, the wheel upright: it goes up and down without leaning.
    [Fact]
    public async Task A_trailing_arm_has_no_swing_arm()
    {
        var body = GeometryRequests.Sweep(GeometryRequests.Arm, -50, 50, 10)
            .With("/vehicle/front/suspension/points/pivotInner", Corners.Point(400, 250, 310)).With("/vehicle/front/suspension/points/pivotOuter", Corners.Point(400, 600, 310));

        await CheckMissing(body, "instantCentreYMm", "instantCentreZMm", "swingArmMm");
    }

    private async Task CheckMissing(JsonObject body, params string[] outputs)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, body);

        var unknown = answer.GetProperty("unknown").EnumerateArray().Select(gap => gap.GetProperty("id").GetString()).ToArray();
        Assert.Equal(unknown.Distinct(), unknown);
        Assert.All(outputs, output =>
        {
            Assert.All(answer.GetProperty("rows").EnumerateArray(), row => Assert.Equal(JsonValueKind.Null, row.GetProperty(output).ValueKind));
            Assert.Contains(output, unknown);
        });
    }

    private static JsonNode Point(double[] place) => Corners.Point(place[0], place[1], place[2]);
}
