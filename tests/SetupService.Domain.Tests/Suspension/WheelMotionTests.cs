using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Handling;
using SetupService.Domain.Tests.Suspension.Corners;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>The changes a motion tells against differences of what it tells beside.</summary>
public sealed class WheelMotionTests
{
    private const double Step = 1e-3;

    [Fact]
    public void A_wheel_on_points_changes_with_travel_and_rack_as_its_motion_tells() =>
        Gen.Select(PlausibleCorners.WithTieRod, Gen.Double[-30, 30], Gen.Double[-15, 15]).Sample((setting, travelMm, rackMm) =>
        {
            var axle = OnPoints(setting);
            var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;
            var at = At(motion, travelMm, rackMm);
            var (lower, higher) = (At(motion, travelMm - Step, rackMm), At(motion, travelMm + Step, rackMm));
            var (righter, lefter) = (At(motion, travelMm, rackMm - Step), At(motion, travelMm, rackMm + Step));

            AssertChange(lower.CamberDeg, higher.CamberDeg, at.CamberPerTravel);
            AssertChange(lower.HeadingDeg, higher.HeadingDeg, at.HeadingPerTravel);
            AssertChange(lower.ContactRiseMm, higher.ContactRiseMm, at.RisePerTravel);
            AssertChange(lower.SpringTravelMm, higher.SpringTravelMm, at.SpringMotionRatio);
            AssertChange(righter.CamberDeg, lefter.CamberDeg, at.CamberPerSteer);
            AssertChange(righter.HeadingDeg, lefter.HeadingDeg, at.HeadingPerSteer);
            AssertChange(righter.ContactRiseMm, lefter.ContactRiseMm, at.RisePerSteer);
            AssertChange(righter.HalfTrackMm, lefter.HalfTrackMm, at.OutboardPerSteer);
            AssertChange(righter.SpringTravelMm, lefter.SpringTravelMm, at.SpringTravelPerSteer);
        });

    // Differences over four places, wrong by the fifth derivative alone, some 1e-12 per mm.
    [Fact]
    public void The_motion_ratio_of_a_spring_on_points_changes_with_travel_as_its_motion_tells() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-30, 30], Gen.Double[-15, 15]).Sample((setting, travelMm, rackMm) =>
        {
            var axle = OnPoints(setting);
            var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;
            var pose = motion.Origin;
            Assert.True(motion.TryAt(travelMm, rackMm, ref pose, out _));

            var near = Ratio(0.5) - Ratio(-0.5);
            var far = Ratio(1) - Ratio(-1);
            Assert.Equal(((8 * near) - far) / 6, motion.SpringRatioPerTravel(pose)!.Value, 2e-9);

            double Ratio(double mm) => At(motion, travelMm + mm, rackMm).SpringMotionRatio;
        });

    [Fact]
    public void The_motion_ratio_without_points_is_the_one_stated_at_any_travel()
    {
        var axle = WorkedCar.Make().Front;
        var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;

        Assert.Equal(0, motion.SpringRatioPerTravel(motion.Origin));
    }

    // Within what the steering axis' own lean adds at some degrees of steer.
    [Fact]
    public void A_wheel_without_points_gains_camber_by_caster() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[-3, 1], Gen.Double[-2, 2]).Sample((casterDeg, camberDeg, steerDeg) =>
        {
            var axle = WorkedCar.Make().Front with { LeftCasterDeg = casterDeg, LeftCamberDeg = camberDeg, SteeringAxisInclinationDeg = 12 };
            var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;

            AssertChange(At(motion, 0, steerDeg - Step).CamberDeg, At(motion, 0, steerDeg + Step).CamberDeg, At(motion, 0, steerDeg).CamberPerSteer, 0.02);
        });

    private static HandlingAxle OnPoints(CornerSetting setting) => WorkedCar.Make().Front with
    {
        Suspension = SuspensionModel.From(setting.Suspension),
        LeftCamberDeg = setting.CamberDeg,
        LeftToeDeg = setting.ToeDeg,
        LoadedRadiusMm = setting.LoadedRadiusMm,
    };

    private static WheelPose At(WheelMotion motion, double travelMm, double steer)
    {
        var state = motion.Origin;
        Assert.True(motion.TryAt(travelMm, steer, ref state, out var wheel));
        return wheel;
    }

    private static void AssertChange(double before, double after, double told, double room = 1e-6) =>
        Assert.Equal(told, (after - before) / (2 * Step), room * (1 + Math.Abs(told)));
}
