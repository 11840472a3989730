using CsCheck;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>The path of a wheel over an interval of travel.</summary>
public sealed class WheelPathTests
{
    // Against the corner closed anew at each place from its stated position.
    [Fact]
    public void A_path_on_points_is_where_the_corner_closes() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-40, 0], Gen.Double[0, 40]).Sample((setting, fromMm, toMm) =>
        {
            var path = SuspensionModel.From(setting.Suspension).PathOver(
                new() { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg, LoadedRadiusMm = setting.LoadedRadiusMm, Motion = setting.Motion }, fromMm, toMm);
            var corner = MechanismBuilder.Build(setting);

            Assert.Null(path.Gap);
            Assert.Equal((fromMm, toMm), (path.Points[0].TravelMm, path.Points[^1].TravelMm));
            Assert.Contains(path.Points, place => place.TravelMm == 0);
            foreach (var place in path.Points)
            {
                var pose = Walked.To(corner, place.TravelMm, 0);
                var wheel = WheelKinematics.Wheel(corner, pose);
                Assert.Equal(wheel.CamberDeg, place.CamberDeg, 1e-8);
                Assert.Equal(pose.Pose.Centre.Y - setting.Suspension.WheelCentre.Y, place.OutboardMm!.Value, 1e-7);
            }

            for (var i = 1; i < path.Points.Count; i++) Assert.True(path.Points[i].TravelMm - path.Points[i - 1].TravelMm <= WheelPath.LongestStepMm + 1e-9);
        });

    [Fact]
    public void Readings_tell_the_lean_and_not_the_way_sideways()
    {
        var readings = new CornerReadings { Travel = [new(-30, -0.4), new(0, -1), new(30, -1.6), new(60, -2.2)] };
        var path = SuspensionModel.From(readings).PathOver(new() { CamberDeg = -1, ToeDeg = 0 }, 0, 70);

        Assert.Null(path.Gap);
        Assert.Equal(-1.4, path.Points.Min(place => place.CamberDeg) - path.StatedCamberDeg, 0.05);
        Assert.Equal(0, path.Points.Max(place => place.CamberDeg) - path.StatedCamberDeg, 1e-9);
        Assert.True(path.IsExtrapolated);
        Assert.True(path.CamberErrorDeg > 0);
        Assert.All(path.Points, place => Assert.Null(place.OutboardMm));
        Assert.Equal((SuspensionGapKind.NeedsPoints, "/suspension/points"), (path.SidewaysGap!.Kind, path.SidewaysGap.Needs.Single()));
    }

    // Set elsewhere after it was read, the whole curve goes with it.
    [Fact]
    public void A_camber_set_otherwise_than_read_shifts_the_path_and_changes_no_lean() =>
        Gen.Select(Gen.Double[-3, 1], Gen.Double[-40, 0], Gen.Double[0, 70]).Sample((camberDeg, fromMm, toMm) =>
        {
            var suspension = SuspensionModel.From(new CornerReadings { Travel = [new(-30, -0.4), new(0, -1), new(30, -1.6), new(60, -2.2)] });
            var setup = new WheelSetup { CamberDeg = null, ToeDeg = 0 };
            var (read, set) = (suspension.PathOver(setup, fromMm, toMm), suspension.PathOver(setup with { CamberDeg = camberDeg }, fromMm, toMm));

            Assert.Equal(camberDeg, set.StatedCamberDeg, 1e-12);
            Assert.Equal(read.Points.Count, set.Points.Count);
            for (var i = 0; i < set.Points.Count; i++)
                Assert.Equal(read.Points[i].CamberDeg - read.StatedCamberDeg, set.Points[i].CamberDeg - camberDeg, 1e-12);
        });

    [Fact]
    public void A_path_beyond_the_readings_ends_with_the_reason()
    {
        var readings = new CornerReadings { Travel = [new(-30, -0.4), new(0, -1), new(30, -1.6)] };
        var path = SuspensionModel.From(readings).PathOver(new() { CamberDeg = -1, ToeDeg = 0 }, 0, 60);

        Assert.Equal(SuspensionGapKind.BeyondReadings, path.Gap!.Kind);
        Assert.InRange(path.Gap.ReachedMm!.Value, 46, 50);
    }

    [Fact]
    public void A_suspension_nobody_described_has_no_path()
    {
        var path = SuspensionModel.FromFigures.PathOver(new() { CamberDeg = -1, ToeDeg = 0 }, 0, 60);

        Assert.Empty(path.Points);
        Assert.Equal((SuspensionGapKind.NotDescribed, "/suspension"), (path.Gap!.Kind, path.Gap.Needs.Single()));
    }
}
