using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Guides;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Geometry.Corners;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Guides;

/// <summary>The changes a guide tells against differences of what it tells beside.</summary>
public sealed class WheelGuideTests
{
    private const double Step = 1e-3;

    [Fact]
    public void A_drawn_wheel_changes_with_travel_and_rack_as_its_guide_tells() =>
        Gen.Select(PlausibleCorners.WithTieRod, Gen.Double[-30, 30], Gen.Double[-15, 15]).Sample((setting, travelMm, rackMm) =>
        {
            var guide = WheelGuide.Of(Drawn(setting), CarAxle.Front, WheelSide.Left)!;
            var at = At(guide, travelMm, rackMm);
            var (lower, higher) = (At(guide, travelMm - Step, rackMm), At(guide, travelMm + Step, rackMm));
            var (righter, lefter) = (At(guide, travelMm, rackMm - Step), At(guide, travelMm, rackMm + Step));

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

    // Within what the steering axis' own lean adds at some degrees of steer.
    [Fact]
    public void A_wheel_that_is_not_drawn_gains_camber_by_caster() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[-3, 1], Gen.Double[-2, 2]).Sample((casterDeg, camberDeg, steerDeg) =>
        {
            var axle = WorkedCar.Make().Front with { LeftCasterDeg = casterDeg, LeftCamberDeg = camberDeg, InclinationDeg = 12 };
            var guide = WheelGuide.Of(axle, CarAxle.Front, WheelSide.Left)!;

            AssertChange(At(guide, 0, steerDeg - Step).CamberDeg, At(guide, 0, steerDeg + Step).CamberDeg, At(guide, 0, steerDeg).CamberPerSteer, 0.02);
        });

    private static HandlingAxle Drawn(CornerSetting setting) => WorkedCar.Make().Front with
    {
        Points = setting.Suspension,
        LeftCamberDeg = setting.CamberDeg,
        LeftToeDeg = setting.ToeDeg,
        LoadedRadiusMm = setting.LoadedRadiusMm,
    };

    private static GuidedWheel At(WheelGuide guide, double travelMm, double steer)
    {
        var state = guide.Origin;
        Assert.True(guide.TryAt(travelMm, steer, ref state, out var wheel));
        return wheel;
    }

    private static void AssertChange(double before, double after, double told, double room = 1e-6) =>
        Assert.Equal(told, (after - before) / (2 * Step), room * (1 + Math.Abs(told)));
}
