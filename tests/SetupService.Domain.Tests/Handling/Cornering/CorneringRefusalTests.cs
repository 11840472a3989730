using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
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
        var obstacle = new CorneringObstacle(CorneringFailure.TravelNotReached, 0.9, 0.5, false) { BeyondReadings = new(axle, side, 71.3) };

        Assert.Contains($"{name}, would be at 71.3 mm of travel", CorneringWords.Reason(obstacle, UnitSystem.Metric), StringComparison.Ordinal);
    }
}
