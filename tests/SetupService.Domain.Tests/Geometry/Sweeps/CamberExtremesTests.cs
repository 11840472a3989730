using System.Text.Json;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Geometry.Sweeps;

public sealed class CamberExtremesTests
{
    public static TheoryData<string> Corners() => [.. KinematicsCases.Ids];

    // Corners solved by two independent methods; their camber only falls over this travel, so the furthest position has the extreme.
    [Theory]
    [MemberData(nameof(Corners))]
    public void The_extremes_are_those_of_positions_solved_by_two_other_methods(string id)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting(id));
        foreach (var row in KinematicsCases.Case(id).GetProperty("travel_sweep").EnumerateArray())
        {
            var travelMm = row.GetProperty("travel").GetDouble();
            var changeDeg = row.GetProperty("camber").GetDouble() - corner.Setting.CamberDeg;

            Assert.True(CamberExtremes.TryFind(corner, travelMm, out var extremes, out var reachedMm));
            Assert.Equal(travelMm, reachedMm);
            Assert.Equal(travelMm > 0 ? -changeDeg : 0, extremes.InboardDeg, 2e-7);
            Assert.Equal(travelMm < 0 ? changeDeg : 0, extremes.OutboardDeg, 2e-7);
        }
    }

    // The strut's camber turns near 68 mm and comes back: looked at every hundredth of a millimetre.
    [Theory]
    [InlineData(75)]
    [InlineData(120)]
    public void An_extreme_on_the_way_counts(double travelMm)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting("ST1"));
        Assert.True(PoseContinuation.TryStart(corner, out var state));
        var (leastDeg, mostDeg) = (corner.Setting.CamberDeg, corner.Setting.CamberDeg);
        for (var step = 1; step <= travelMm * 100; step++)
        {
            Assert.True(PoseContinuation.TryMove(corner, step / 100.0, 0, ref state));
            var camberDeg = WheelKinematics.Wheel(corner, state).CamberDeg;
            (leastDeg, mostDeg) = (Math.Min(leastDeg, camberDeg), Math.Max(mostDeg, camberDeg));
        }

        Assert.True(CamberExtremes.TryFind(corner, travelMm, out var extremes, out _));
        Assert.True(WheelKinematics.Wheel(corner, state).CamberDeg > leastDeg + 0.005);
        Assert.Equal(corner.Setting.CamberDeg - leastDeg, extremes.InboardDeg, 0.001);
        Assert.Equal(mostDeg - corner.Setting.CamberDeg, extremes.OutboardDeg, 0.001);
    }

    // The last travel was found with SciPy by following the curve to its fold (Oracle/geometry_cases.json).
    [Fact]
    public void Where_the_parts_stop_meeting_the_last_travel_is_told()
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Oracle", "geometry_cases.json")));
        var expected = document.RootElement.GetProperty("unreachable").EnumerateArray()
            .Single(one => one.GetProperty("name").GetString() == "short upper arm in bump");
        var lastMm = expected.GetProperty("lastTravelMm").GetDouble();
        var points = expected.GetProperty("request").GetProperty("suspension");
        var corner = MechanismBuilder.Build(new()
        {
            Suspension = new DoubleWishbone
            {
                LowerArm = new(Point(points, "lowerArmFront"), Point(points, "lowerArmRear"), Point(points, "lowerBallJoint")),
                UpperArm = new(Point(points, "upperArmFront"), Point(points, "upperArmRear"), Point(points, "upperBallJoint")),
                TieRod = new(Point(points, "tieRodInner"), Point(points, "tieRodOuter")),
                WheelCentre = Point(points, "wheelCentre"),
            },
            CamberDeg = 0,
            ToeDeg = 0,
            LoadedRadiusMm = 300,
        });

        Assert.False(CamberExtremes.TryFind(corner, lastMm + 5, out _, out var reachedMm));
        Assert.Equal(lastMm, reachedMm!.Value, 0.05);
        Assert.True(CamberExtremes.TryFind(corner, lastMm - 0.05, out _, out _));
    }

    [Fact]
    public void Points_that_do_not_hold_the_wheel_reach_nothing()
    {
        var corner = MechanismBuilder.Build(new() { Suspension = LooseLinks, CamberDeg = -1, ToeDeg = 0, LoadedRadiusMm = 300 });

        Assert.False(CamberExtremes.TryFind(corner, 50, out _, out var reachedMm));
        Assert.Null(reachedMm);
    }

    [Fact]
    public void No_travel_is_no_change()
    {
        Assert.True(CamberExtremes.TryFind(MechanismBuilder.Build(KinematicsCases.Setting("DW1")), 0, out var extremes, out var reachedMm));
        Assert.Equal((new CamberExtremes(0, 0), 0.0), (extremes, reachedMm));
    }

    /// <summary>Five different level links whose lines all meet one upright line: about that line the wheel is free.</summary>
    internal static FiveLink LooseLinks { get; } = new()
    {
        Links =
        [
            .. new[] { -20.0, -10, 0, 10, 25 }.Select((angleDeg, i) =>
            {
                var (sin, cos) = Math.SinCos(double.DegreesToRadians(angleDeg));
                return new Link(new(-300 * sin, 640 - (300 * cos), 200 + (60 * i)), new(50 * sin, 640 + (50 * cos), 200 + (60 * i)));
            }),
        ],
        WheelCentre = new(0, 740, 305),
    };

    private static Vector3 Point(JsonElement points, string name)
    {
        var point = points.GetProperty(name);
        return new(point.GetProperty("xMm").GetDouble(), point.GetProperty("yMm").GetDouble(), point.GetProperty("zMm").GetDouble());
    }
}
