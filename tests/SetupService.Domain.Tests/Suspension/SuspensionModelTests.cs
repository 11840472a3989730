using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Handling;
using SetupService.Domain.Tests.Suspension.Corners;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>One suspension is asked by all: the same question has the same answer wherever it is asked.</summary>
public sealed class SuspensionModelTests
{
    // The readings of a front strut, gauge 0.1 degrees.
    private static readonly CornerReadings Readings = new()
    {
        Travel = [new(-40, -0.35, 0.02), new(-20, -0.62, 0.05), new(0, -1.05, 0.08), new(20, -1.38, 0.12), new(40, -1.71, 0.13), new(60, -2.12, 0.2)],
        CasterDeg = 6,
        SteeringAxisInclinationDeg = 13,
        GaugeErrorDeg = 0.1,
    };

    [Fact]
    public void The_same_readings_give_the_same_camber_on_the_path_in_the_sweep_adjusted_and_in_a_turn() =>
        Gen.Double[-39, 59].Sample(travelMm =>
        {
            var suspension = SuspensionModel.From(Readings);
            var setup = new WheelSetup { CamberDeg = null, ToeDeg = null, LoadedRadiusMm = 305, TrackMm = 1520 };
            var axle = WorkedCar.Make().Front with { Suspension = suspension, LeftCamberDeg = suspension.ReadCamberDeg!.Value, LeftToeDeg = suspension.ReadToeDeg!.Value };

            var onPath = suspension.PathOver(setup, travelMm, travelMm).Points[0];
            var swept = Row(suspension, setup, travelMm);
            var adjusted = AdjustableCorner.AsStated(suspension, setup)!.With([new(Adjuster.RideHeight, -travelMm)], resetToe: false)!;
            var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;
            var pose = motion.Origin;
            Assert.True(motion.TryAt(travelMm, 0, ref pose, out var inTurn));

            Assert.Equal(swept.CamberDeg, onPath.CamberDeg, 1e-12);
            Assert.Equal(swept.CamberDeg, adjusted.CamberDeg, 1e-12);
            Assert.Equal(swept.CamberDeg, inTurn.CamberDeg, 1e-12);
            Assert.Equal(-swept.ToeDeg!.Value, inTurn.HeadingDeg, 1e-12);
        });

    // Half of 1520 mm stands to each side, and only a steered wheel turns with the steering.
    [Theory]
    [InlineData(CarAxle.Front, 1)]
    [InlineData(CarAxle.Rear, 0)]
    public void Readings_in_a_turn_stand_at_their_track_and_steer_in_front_only(CarAxle at, double headingPerSteer)
    {
        var axle = WorkedCar.Make().Front with { Suspension = SuspensionModel.From(Readings) };
        var motion = axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left))!;
        var pose = motion.Origin;

        Assert.True(motion.TryAt(10, 0, ref pose, out var inTurn));

        Assert.Equal(760, inTurn.HalfTrackMm);
        Assert.Equal(headingPerSteer, inTurn.HeadingPerSteer);
        Assert.Equal(headingPerSteer * Math.Tan(double.DegreesToRadians(6)), inTurn.CamberPerSteer, 1e-12);
    }

    // About a swing arm of 3000 mm a wheel that rises by 30 mm turns by a hundredth of a radian; the heights of a roll centre 70 mm above the
    // ground and half the track of 1520 mm give the slope of the contact's path. About an axis that leans inboard by 60° the wheel's own
    // axle stays within 30° of it, and no turn heads the wheel straight to the side.
    [Theory]
    [InlineData(CarAxle.Front, 1)]
    [InlineData(CarAxle.Rear, 0)]
    public void A_few_figures_in_a_turn_move_the_wheel_about_its_swing_arm(CarAxle at, double perSteer)
    {
        var axle = WorkedCar.Make().Front with { LeftCamberDeg = -1, LeftToeDeg = 0.2, LeftCasterDeg = 30, SteeringAxisInclinationDeg = 60, RideHeightChangeMm = -10, MotionRatio = 0.9, DamperMotionRatio = 0.8 };
        var motion = axle.Suspension.MotionOf(axle.SetupOf(at, WheelSide.Left))!;
        var pose = motion.Origin;

        Assert.True(motion.TryAt(20, 0, ref pose, out var ahead));
        Assert.Equal(-1 - double.RadiansToDegrees(0.01), ahead.CamberDeg, 1e-12);
        Assert.Equal(-double.RadiansToDegrees(1 / 3000.0), ahead.CamberPerTravel, 1e-12);
        Assert.Equal(-0.2, ahead.HeadingDeg, 1e-12);
        Assert.Equal(perSteer * Math.Tan(double.DegreesToRadians(30)), ahead.CamberPerSteer, 1e-12);
        Assert.Equal(60 / 760.0, ahead.OutboardSlope, 1e-12);
        Assert.Equal((20, 18, 0.9, 0.8), (ahead.ContactRiseMm, ahead.SpringTravelMm, ahead.SpringMotionRatio, ahead.DamperMotionRatio));
        Assert.False(ahead.IsBeyondReadings);
        Assert.Equal(perSteer == 0, motion.TryAt(20, 90, ref pose, out var aside));
        Assert.Equal(perSteer == 0 ? -0.2 : 0, aside.HeadingDeg, 1e-12);
        Assert.False(motion.TryAt(20, 0, ref pose, out _, new WorkBudget(0)));
    }

    // Read from −40 to 60 mm and carried on for 20 mm: further out the wheel stays as it is there.
    [Theory]
    [InlineData(80, false, 80)]
    [InlineData(90, true, 80)]
    [InlineData(-60, false, -60)]
    [InlineData(-70, true, -60)]
    public void Beyond_its_readings_a_wheel_in_a_turn_stays_as_it_is_at_their_end_and_says_so(double travelMm, bool isBeyond, double readAtMm)
    {
        var axle = WorkedCar.Make().Front with { Suspension = SuspensionModel.From(Readings) };
        var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;
        var pose = motion.Origin;

        Assert.True(motion.TryAt(travelMm, 0, ref pose, out var there));
        Assert.True(motion.TryAt(readAtMm, 0, ref pose, out var atEnd));
        Assert.Equal((isBeyond, false), (there.IsBeyondReadings, atEnd.IsBeyondReadings));
        Assert.Equal((atEnd.CamberDeg, atEnd.HeadingDeg), (there.CamberDeg, there.HeadingDeg));
        Assert.Equal(travelMm, there.ContactRiseMm);
    }

    [Fact]
    public void Readings_are_swept_within_their_budget_and_no_further()
    {
        var setup = new WheelSetup { CamberDeg = null, ToeDeg = null, LoadedRadiusMm = 305, TrackMm = 1520 };
        var tracker = SuspensionTracker.Start(SuspensionModel.From(Readings), setup, new WorkBudget(1))!;

        Assert.True(tracker.TryReach(10, 0, out _));
        Assert.False(tracker.TryReach(20, 0, out _));
    }

    // A car that stands 20 mm lower is at 20 mm of bump of its points, wherever it is asked.
    [Theory]
    [InlineData("ST1")]
    [InlineData("DW1")]
    [InlineData("PL1")]
    public void A_changed_ride_height_acts_on_points_in_every_answer(string id)
    {
        var setting = KinematicsCases.Setting(id);
        var suspension = SuspensionModel.From(setting.Suspension);
        var stated = new WheelSetup { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg, LoadedRadiusMm = setting.LoadedRadiusMm };
        var lowered = stated with { RideHeightChangeMm = -20 };
        var expected = WheelKinematics.Compute(MechanismBuilder.Build(setting), Walked.To(MechanismBuilder.Build(setting), 30, 0));

        Assert.Equal(expected.CamberDeg, Row(suspension, stated, 30).CamberDeg, 1e-9);
        var swept = Row(suspension, lowered, 10);
        Assert.Equal(expected.CamberDeg, swept.CamberDeg, 1e-9);
        Assert.Equal(10, swept.TravelMm, 1e-9);
        Assert.Equal(expected.RollCentreHeightMm!.Value, swept.RollCentreHeightMm!.Value, 1e-7);
        Assert.Equal(
            expected.CamberDeg, AdjustableCorner.AsStated(suspension, lowered)!.With([new(Adjuster.RideHeight, -10)], resetToe: false)!.CamberDeg, 1e-9);
        var motion = suspension.MotionOf(lowered)!;
        var pose = motion.Origin;
        Assert.True(motion.TryAt(10, 0, ref pose, out var inTurn));
        Assert.Equal(expected.CamberDeg, inTurn.CamberDeg, 1e-9);

        // Rise and spring travel count from the ride height.
        Assert.True(motion.TryAt(0, 0, ref pose, out var atRide));
        Assert.Equal((0, 0), (atRide.ContactRiseMm, atRide.SpringTravelMm), (one, other) => Math.Abs(one.Item1 - other.Item1) < 1e-9 && Math.Abs(one.Item2 - other.Item2) < 1e-9);
    }

    [Fact]
    public void A_changed_ride_height_acts_on_readings_in_every_answer()
    {
        var suspension = SuspensionModel.From(Readings);
        var stated = new WheelSetup { CamberDeg = null, ToeDeg = null, LoadedRadiusMm = 305, TrackMm = 1520 };
        var lowered = stated with { RideHeightChangeMm = -20 };
        var expected = Row(suspension, stated, 30);

        Assert.Equal(expected.CamberDeg, Row(suspension, lowered, 10).CamberDeg, 1e-12);
        Assert.Equal(expected.ToeDeg!.Value, Row(suspension, lowered, 10).ToeDeg!.Value, 1e-12);
        Assert.Equal(expected.CamberDeg, AdjustableCorner.AsStated(suspension, lowered)!.With([new(Adjuster.RideHeight, -10)], resetToe: false)!.CamberDeg, 1e-12);
    }

    [Fact]
    public void A_sweep_over_readings_has_the_same_rows_with_what_is_not_known_left_out_and_why()
    {
        var sweep = TravelSweep.Start(
            SuspensionModel.From(Readings), new() { CamberDeg = null, ToeDeg = null, LoadedRadiusMm = 305 }, new(-60, 90, 30), new(0, 10, 10), new() { MeasuringDiameterMm = 400 })!;
        var reasons = new List<UnreachableReason>();
        var rows = new List<SweepRow>();
        while (sweep.TryNext(out var row, out var missed))
        {
            if (row is { } reached) rows.Add(reached);
            if (missed is { } one) reasons.Add(one.Reason);
        }

        Assert.Equal([-60.0, -30, 0, 30, 60], rows.Select(row => row.Wheel.TravelMm));
        Assert.Equal(6, reasons.Count(reason => reason == UnreachableReason.RackNotRead));
        Assert.Equal(1, reasons.Count(reason => reason == UnreachableReason.BeyondReadings));
        Assert.All(rows, row => Assert.True(row.Wheel.CamberErrorDeg > 0 && row.Wheel.RollCentreHeightMm is null));
        Assert.Equal((6.0, 13.0), (rows[2].Wheel.CasterDeg!.Value, rows[2].Wheel.SteeringAxisInclinationDeg!.Value));
        Assert.Null(rows[3].Wheel.CasterDeg);
        foreach (var output in (string[])["rollCentreHeightMm", "springMotionRatio", "ackermannPct", "casterDeg", "camberGainPerRoll"])
            Assert.Contains(sweep.Gaps, gap => gap.Output == output && gap.Reason.Length > 0);
    }

    [Fact]
    public void A_suspension_that_contradicts_itself_or_is_not_described_moves_no_wheel()
    {
        var strut = (MacPhersonStrut)KinematicsCases.Setting("ST1").Suspension;
        var setup = new WheelSetup { CamberDeg = -1, ToeDeg = 0, LoadedRadiusMm = 305 };
        SuspensionModel[] models =
        [
            SuspensionModel.From(strut with { StrutTop = strut.StrutLower }),
            SuspensionModel.From(new CornerReadings { Travel = [new(0, -1)] }),
            SuspensionModel.FromFigures,
        ];

        foreach (var model in models)
        {
            Assert.Null(SuspensionTracker.Start(model, setup));

            // Where only angles are known, what turns the wheel in its upright can still be adjusted.
            Assert.Equal(ReferenceEquals(model, SuspensionModel.FromFigures), AdjustableCorner.AsStated(model, setup) is not null);
            Assert.NotNull(model.PathOver(setup, 0, 10).Gap);
        }
    }

    private static SuspensionPosition Row(SuspensionModel suspension, WheelSetup setup, double travelMm)
    {
        Assert.True(SuspensionTracker.Start(suspension, setup)!.TryReach(travelMm, 0, out var position));
        return position;
    }
}
