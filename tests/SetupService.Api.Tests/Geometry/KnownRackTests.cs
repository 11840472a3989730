using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// A sweep over the rack of the two reference corners. Expected: the rack sweeps of
/// Domain.Tests/TestData/kinematics_cases.json, and the Ackermann percentages worked from them at a wheelbase of 2600 mm, to 0.1.
/// </summary>
public sealed class KnownRackTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double Angle = 2e-7;
    private const double Percentage = 0.05;

    [Theory]
    [InlineData(GeometryRequests.Strut, 20, 8.2677809, 8.1300803, 21.5)]
    [InlineData(GeometryRequests.Strut, 30, 12.521739, 12.1964894, 23.2)]
    [InlineData(GeometryRequests.Strut, 40, 16.9070943, 16.2876141, 25.4)]
    [InlineData(GeometryRequests.Wishbone, 20, 8.3696997, 8.3368565, 5.2)]
    [InlineData(GeometryRequests.Wishbone, 30, 12.70712, 12.491884, 15.5)]
    [InlineData(GeometryRequests.Wishbone, 40, 17.1873256, 16.6829617, 20.8)]
    public async Task Both_wheels_steer_as_two_other_methods_found_to_either_side(string kind, double rackMm, double innerDeg, double outerDeg, double ackermannPct)
    {
        var rows = await Rack(kind);

        // The rack is behind the axle: to the right it steers left, and the left wheel is the inner one.
        var left = rows.Single(row => row.Number("rackMm") == -rackMm);
        GeometryCalls.Near(innerDeg, left.Number("steerDeg"), Angle, "inner");
        GeometryCalls.Near(outerDeg, left.Number("otherSteerDeg"), Angle, "outer");
        GeometryCalls.Near(ackermannPct, left.Number("ackermannPct"), Percentage, "ackermannPct");

        var right = rows.Single(row => row.Number("rackMm") == rackMm);
        GeometryCalls.Near(-outerDeg, right.Number("steerDeg"), Angle, "outer");
        GeometryCalls.Near(-innerDeg, right.Number("otherSteerDeg"), Angle, "inner");
        GeometryCalls.Near(ackermannPct, right.Number("ackermannPct"), Percentage, "ackermannPct");
    }

    // Below 5 degrees static toe rules the percentage: at 10 mm the inner wheel stands at 4.104 degrees.
    [Fact]
    public async Task Under_five_degrees_there_is_no_percentage_and_no_circle()
    {
        foreach (var row in await Rack(GeometryRequests.Strut))
        {
            var isSmall = Math.Abs(row.Number("rackMm")) <= 10;
            Assert.Equal(isSmall ? JsonValueKind.Null : JsonValueKind.Number, row.GetProperty("ackermannPct").ValueKind);
            Assert.Equal(isSmall ? JsonValueKind.Null : JsonValueKind.Number, row.GetProperty("turningCircleM").ValueKind);
        }
    }

    // The turn's centre lies on the rear axle's line: outer radius (wheelbase + forward)/sin(outer), both from rack_sweep at 40 mm.
    [Fact]
    public async Task The_turning_circle_follows_from_the_outer_wheel()
    {
        var row = (await Rack(GeometryRequests.Strut)).Single(row => row.Number("rackMm") == -40);

        GeometryCalls.Near(2 * (2600 + 18.4940353) / Math.Sin(16.2876141 * Math.PI / 180) / 1000, row.Number("turningCircleM"), 1e-7, "turningCircleM");
    }

    [Theory]
    [InlineData(GeometryRequests.Strut, -40, 20, -0.2964266, 8.4245082, 3.188, 12.080592, -5.9040843, 4.4099354)]
    [InlineData(GeometryRequests.Strut, 40, -20, -0.5587986, -8.0996706, 3.7193398, 13.884903, -7.9037464, 27.4759929)]
    [InlineData(GeometryRequests.Wishbone, -40, -20, 1.321099, -8.3944133, 5.0157009, 3.7198581, 32.6062281, 27.9340648)]
    [InlineData(GeometryRequests.Wishbone, 40, 20, -2.775389, 8.4437087, 5.6842597, 6.2807904, 32.8383421, 23.2222141)]
    public async Task Travel_and_rack_together_are_as_two_other_methods_found(
        string kind, double travelMm, double rackMm, double camberDeg, double toeDeg, double casterDeg, double inclinationDeg, double scrubMm, double trailMm)
    {
        var body = GeometryRequests.Sweep(kind, -40, 40, 40).With("/rackMm", GeometryRequests.Range(-20, 20, 20));
        var rows = (await fixture.Client.AnswerOf(GeometryCalls.Sweep, body)).GetProperty("rows").EnumerateArray().ToArray();

        var row = rows.Single(row => row.Number("travelMm") == travelMm && row.Number("rackMm") == rackMm);
        (string Name, double Expected)[] figures =
        [
            ("camberDeg", camberDeg), ("toeDeg", toeDeg), ("casterDeg", casterDeg), ("steeringAxisInclinationDeg", inclinationDeg),
            ("scrubRadiusMm", scrubMm), ("mechanicalTrailMm", trailMm),
        ];
        Assert.All(figures, figure => GeometryCalls.Near(figure.Expected, row.Number(figure.Name), 2e-7, figure.Name));
        Assert.Equal(
            from travel in new[] { -40.0, 0, 40 } from rack in new[] { -20.0, 0, 20 } select (travel, rack),
            rows.Select(each => (each.Number("travelMm"), each.Number("rackMm"))));
    }

    private async Task<JsonElement[]> Rack(string kind)
    {
        var body = GeometryRequests.Sweep(kind, 0, 0, 1).With("/rackMm", GeometryRequests.Range(-40, 40, 10)).With("/vehicle/wheelbaseMm", 2600).With("/axle", "front");
        return [.. (await fixture.Client.AnswerOf(GeometryCalls.Sweep, body)).GetProperty("rows").EnumerateArray()];
    }
}
