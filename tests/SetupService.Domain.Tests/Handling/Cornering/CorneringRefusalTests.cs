using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>Why a turn has no equilibrium: which reason is given, and in which words.</summary>
public sealed class CorneringRefusalTests
{
    // About an axis that leans inboard by 60° no wheel heads further than some 35° to the side; a circle not much wider than the wheelbase asks
    // for more.
    [Fact]
    public void A_steer_that_the_axis_does_not_reach_is_named_and_a_wider_turn_is_solved_after_it()
    {
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { SteeringAxisInclinationDeg = 60, LeftCasterDeg = 0, RightCasterDeg = 0 } };
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        Assert.Equal(CorneringFailure.TravelNotReached, solver.Solve(0.2, 3));
        Assert.Null(solver.BeyondReadings);
        Assert.Null(solver.Solve(0.2, 60));
        var (after, alone) = (solver.Attitude(new(0.2, 60, TurnDirection.Left)), WorkedCaseTests.Stand(car, 0.2, 60));
        Assert.Equal(alone.RollDeg, after.RollDeg, 1e-7);
        Assert.Equal(alone.SteerDeg, after.SteerDeg, 1e-7);
    }

    [Theory]
    [InlineData(CorneringFailure.RollsOver, 0.9, true, "the inner wheels carry nothing")]
    [InlineData(CorneringFailure.RollsOver, 0.9, false, "finds no balance")]
    [InlineData(CorneringFailure.TravelNotReached, 0.9, false, "reach; up to 0.9")]
    [InlineData(CorneringFailure.WorkSpent, 0.9, false, "work allowed")]
    public void Each_reason_has_its_own_words_with_the_acceleration_asked(CorneringFailure failure, double limitG, bool isUnloaded, string said)
    {
        var reason = CorneringWords.Reason(new(failure, 1.2, limitG, isUnloaded), UnitSystem.Metric);

        Assert.Contains(said, reason, StringComparison.Ordinal);
        Assert.Contains("1.2", reason, StringComparison.Ordinal);
        Assert.EndsWith(".", reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CarAxle.Front, WheelSide.Left, "front left")]
    [InlineData(CarAxle.Front, WheelSide.Right, "front right")]
    [InlineData(CarAxle.Rear, WheelSide.Left, "rear left")]
    [InlineData(CarAxle.Rear, WheelSide.Right, "rear right")]
    public void A_wheel_beyond_its_readings_is_named_by_its_place(CarAxle axle, WheelSide side, string name)
    {
        var obstacle = new CorneringObstacle(CorneringFailure.TravelNotReached, 0.9, 0.5, false) { Reach = new(axle, side, 71.3, 52) };

        Assert.Contains($"{name}, would be at 71.3 mm of travel", CorneringWords.Reason(obstacle, UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("which reach 52.0 mm", CorneringWords.Reason(obstacle, UnitSystem.Metric), StringComparison.Ordinal);
        var ofPoints = obstacle with { Reach = new(axle, side, 71.3, 52, IsOfPoints: true) };
        Assert.Contains($"the {name} wheel would need some 71.3 mm of travel; its suspension's points reach 52.0 mm", CorneringWords.Reason(ofPoints, UnitSystem.Metric), StringComparison.Ordinal);
    }

    // An arm of 160 mm: its ball joint comes to the end of its arc where the wheel has risen some 50 mm.
    [Theory]
    [InlineData(28, 0.9)]
    [InlineData(28, 1.2)]
    [InlineData(12, 0.6)]
    public void Points_that_end_before_the_turn_are_no_roll_over_and_the_wheel_is_named_with_the_travel_it_needs_and_has(double rateNPerMm, double lateralG)
    {
        Vector3 top = new(-67, 561, 843), lower = new(-14, 628, 405);
        var strut = new MacPhersonStrut
        {
            LowerArm = new(new(12, 560, 192), new(-312, 560, 196), new(8, 716, 178)),
            StrutTop = top,
            StrutLower = lower,
            StrutAxis = (top - lower).Unit(),
            TieRod = new(new(-148, 335, 232), new(-138, 697, 224)),
            WheelCentre = new(0, 751, 305),
        };
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { Suspension = SuspensionModel.From(strut), TrackMm = 1502, SpringRateNPerMm = rateNPerMm, BarRollRateNmPerDeg = 0 }, Rear = car.Rear with { BarRollRateNmPerDeg = 0 } };
        var run = CorneringRun.Create(car, TurnPath.AtRadius(TurnDirection.Left, 80))!;

        Assert.Null(run.At(lateralG, out var obstacle));

        Assert.Equal(CorneringFailure.TravelNotReached, obstacle!.Value.Failure);
        var reach = obstacle.Value.Reach!.Value;
        Assert.True(reach.IsOfPoints && reach.Axle == CarAxle.Front);
        Assert.True(Math.Abs(reach.TravelMm) > Math.Abs(reach.ReachMm) && Math.Sign(reach.TravelMm) == Math.Sign(reach.ReachMm), $"{reach}");
        Assert.Contains("its suspension's points reach", CorneringWords.Reason(obstacle.Value, UnitSystem.Metric), StringComparison.Ordinal);
    }
}
