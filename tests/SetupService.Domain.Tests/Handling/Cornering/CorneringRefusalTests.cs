using CsCheck;
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

    // A twentieth of the grip a tyre has holds no turn at 0.9 g, and the wheels stand.
    [Fact]
    public void Tyres_held_to_a_peak_that_is_too_little_are_named() =>
        Gen.Select(Gen.Double[0.6, 0.9], Gen.Double[20, 200], Gen.Bool).Sample((lateralG, radiusM, isLeft) => Assert.Equal(
            CorneringFailure.GripExceeded,
            CorneringSolver.Create(WorkedCar.Make(), isLeft ? TurnDirection.Left : TurnDirection.Right)!.Solve(lateralG, radiusM, 0.05, isPeakHeld: true)));

    [Theory]
    [InlineData(CorneringFailure.RollsOver, false, 0.9, true, "the inner wheels carry nothing")]
    [InlineData(CorneringFailure.RollsOver, false, 0.9, false, "finds no balance")]
    [InlineData(CorneringFailure.TravelNotReached, false, 0.9, false, "reach; up to 0.9")]
    [InlineData(CorneringFailure.WorkSpent, false, 0.9, false, "work allowed")]
    [InlineData(CorneringFailure.GripExceeded, false, 0.9, false, "more than the tyres can give; they hold 0.9")]
    [InlineData(CorneringFailure.GripExceeded, true, 0.9, false, "too little load")]
    [InlineData(CorneringFailure.GripExceeded, false, 0.0, false, "too little load")]
    [InlineData(CorneringFailure.GripExceeded, false, 1.2, false, "too little load")]
    public void Each_reason_has_its_own_words_with_the_acceleration_asked(CorneringFailure failure, bool isAtHeld, double limitG, bool isUnloaded, string said)
    {
        var reason = CorneringWords.Reason(new(failure, 1.2, isAtHeld, limitG, isUnloaded), UnitSystem.Metric);

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
        var obstacle = new CorneringObstacle(CorneringFailure.TravelNotReached, 0.9, false, 0.5, false) { BeyondReadings = new(axle, side, 71.3) };

        Assert.Contains($"{name}, would be at 71.3 mm of travel", CorneringWords.Reason(obstacle, UnitSystem.Metric), StringComparison.Ordinal);
    }
}
