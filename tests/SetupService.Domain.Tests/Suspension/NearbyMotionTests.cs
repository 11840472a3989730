using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>A wheel's motion about one position, to second order, against the motion itself.</summary>
public sealed class NearbyMotionTests
{
    private const double TravelMm = 22;
    private const double RackMm = 9;

    public static TheoryData<string> Suspensions => new("strut", "wishbone", "five", "arm", "beam");

    [Theory]
    [MemberData(nameof(Suspensions))]
    public void About_its_place_it_is_the_motion_to_second_order(string name)
    {
        var (motion, pose, near) = Near(name);
        foreach (var (travel, rack) in new[] { (0.0, 0.0), (10, 0), (-10, 0), (0, 10), (0, -10), (8, -8), (-6, -9) })
        {
            var (exact, told) = (At(motion, pose, TravelMm + travel, RackMm + rack), At(near, pose, TravelMm + travel, RackMm + rack));

            // Some thousandths of a degree and hundredths of a millimetre 10 mm off; at the place itself the motion.
            var share = Math.Max(Math.Abs(travel), Math.Abs(rack)) / 10;
            Assert.Equal(exact.CamberDeg, told.CamberDeg, 1e-9 + (0.005 * share));
            Assert.Equal(exact.HeadingDeg, told.HeadingDeg, 1e-9 + (0.01 * share));
            Assert.Equal(exact.ContactRiseMm, told.ContactRiseMm, 1e-9 + (0.05 * share));
            Assert.Equal(exact.HalfTrackMm, told.HalfTrackMm, 1e-9 + (0.05 * share));
            Assert.Equal(exact.SpringTravelMm, told.SpringTravelMm, 1e-9 + (0.05 * share));
            Assert.Equal(exact.SpringMotionRatio, told.SpringMotionRatio, 1e-9 + (1e-3 * share));
            Assert.Equal(exact.OutboardSlope, told.OutboardSlope, 1e-9 + (1e-3 * share));
            Assert.Equal(exact.RisePerTravel, told.RisePerTravel, 1e-9 + (1e-3 * share));
        }
    }

    // What a pose tells of its own slopes, by the derivatives of the constraints.
    [Theory]
    [MemberData(nameof(Suspensions))]
    public void Its_slopes_are_those_the_pose_tells(string name)
    {
        var (motion, pose, near) = Near(name);
        const double step = 1e-3;
        var here = At(motion, pose, TravelMm, RackMm);
        var (bump, droop) = (At(near, pose, TravelMm + step, RackMm), At(near, pose, TravelMm - step, RackMm));

        Assert.Equal(here.CamberPerTravel, (bump.CamberDeg - droop.CamberDeg) / (2 * step), 1e-7);
        Assert.Equal(here.HeadingPerTravel, (bump.HeadingDeg - droop.HeadingDeg) / (2 * step), 1e-7);
        Assert.Equal(here.RisePerTravel, (bump.ContactRiseMm - droop.ContactRiseMm) / (2 * step), 1e-3);
    }

    [Fact]
    public void Far_off_it_is_the_motion_itself()
    {
        var (motion, pose, near) = Near("strut");

        Assert.Equal(At(motion, pose, TravelMm + 40, RackMm), At(near, pose, TravelMm + 40, RackMm));
        Assert.Equal(At(motion, pose, TravelMm, RackMm - 30), At(near, pose, TravelMm, RackMm - 30));
        Assert.False(near.TryAt(5000, 0, ref pose, out _));
    }

    [Fact]
    public void Asking_spends_work()
    {
        var (_, pose, near) = Near("strut");
        var budget = new WorkBudget(1);

        Assert.True(near.TryAt(TravelMm, RackMm, ref pose, out _, budget));
        Assert.False(near.TryAt(TravelMm, RackMm, ref pose, out _, budget));
    }

    private static (WheelMotion Motion, SuspensionPose Pose, WheelMotion Near) Near(string name)
    {
        Hardpoints points = name switch
        {
            "strut" => DrawnSuspensions.Strut,
            "wishbone" => DrawnSuspensions.Wishbone,
            "five" => DrawnSuspensions.Five,
            "arm" => DrawnSuspensions.Arm,
            _ => DrawnSuspensions.Beam,
        };
        var motion = SuspensionModel.From(points).MotionOf(new WheelSetup { CamberDeg = -1.2, ToeDeg = 0.1, LoadedRadiusMm = 305, Motion = AxleMotion.Opposite })!;
        var pose = motion.Origin;
        Assert.True(motion.TryAt(TravelMm, RackMm, ref pose, out _));
        var near = motion.Near(TravelMm, RackMm, pose);
        Assert.NotSame(motion, near);
        return (motion, pose, near);
    }

    private static WheelPose At(WheelMotion motion, SuspensionPose pose, double travelMm, double steer)
    {
        Assert.True(motion.TryAt(travelMm, steer, ref pose, out var wheel));
        return wheel;
    }
}
