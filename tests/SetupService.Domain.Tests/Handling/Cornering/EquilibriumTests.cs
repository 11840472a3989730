using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>What must hold of any car in any turn.</summary>
public sealed class EquilibriumTests
{
    [Fact]
    public void Loads_carry_the_car_and_moments_close_or_the_refusal_is_named() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0, 1.6], Gen.Double[8, 300], Gen.Bool).Sample((car, lateralG, radiusM, isLeft) =>
        {
            var turn = isLeft ? TurnDirection.Left : TurnDirection.Right;
            var solver = CorneringSolver.Create(car, turn)!;
            var failure = solver.Solve(lateralG, radiusM);
            if (failure is not null) return failure is CorneringFailure.RollsOver or CorneringFailure.TravelNotReached;
            var a = solver.Attitude(new(lateralG, radiusM, turn));
            var weight = car.Front.LoadN + car.Rear.LoadN;
            var acceleration = lateralG * HandlingCar.StandardGravity;
            Assert.Equal(car.Front.LoadN, a.FrontLeft.LoadN + a.FrontRight.LoadN, 1e-9 * weight);
            Assert.Equal(car.Rear.LoadN, a.RearLeft.LoadN + a.RearRight.LoadN, 1e-9 * weight);
            Assert.Equal(car.Front.LoadN / HandlingCar.StandardGravity * acceleration, a.FrontLeft.SideForceN + a.FrontRight.SideForceN, 1e-8 * weight);
            Assert.Equal(car.Rear.LoadN / HandlingCar.StandardGravity * acceleration, a.RearLeft.SideForceN + a.RearRight.SideForceN, 1e-8 * weight);

            // Load moment about the middle of the track since rest, against the car's own: whole mass at its height, and the sprung
            // mass moved sideways and up by roll and heave.
            var sine = Math.Sin(double.DegreesToRadians(a.RollDeg));
            var share = car.SprungShareFront;
            var rollArmMm = RollArmMm(car, a);
            var rise = (share * a.Front.HeaveMm) + ((1 - share) * a.Rear.HeaveMm) - (rollArmMm * (1 - Math.Sqrt(1 - (sine * sine))));
            var moment = (car.MassKg * acceleration * car.CentreOfGravityHeightMm)
                + (car.SprungMassKg * ((acceleration * (rise + car.HeightChangeMm)) + (HandlingCar.StandardGravity * rollArmMm * sine)));
            var sign = isLeft ? 1 : -1;
            var loads = sign * ((Moved(car.Front, a.FrontLeft, a.FrontRight) * car.Front.TrackMm) + (Moved(car.Rear, a.RearLeft, a.RearRight) * car.Rear.TrackMm)) / 2;
            Assert.Equal(moment, loads, 1e-9 * weight * 1500);

            foreach (var wheel in (WheelAttitude[])[a.FrontLeft, a.FrontRight, a.RearLeft, a.RearRight])
                Assert.True(wheel.LoadN >= 0 && double.IsFinite(wheel.InclinationAngleDeg) && double.IsFinite(wheel.SteerDeg));
            return true;
        }, iter: 2000);

    // The sprung weight's moment about the roll axis grows faster with roll than the springs': only a stop ends the fall.
    [Fact]
    public void A_body_that_its_springs_do_not_hold_falls_on_its_stops()
    {
        var car = AnyCar.Make((3, 3), (0, 0), 620, (20, 20), 220, (1, 1), -1, 30);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        Assert.Null(solver.Solve(0.2, 60));
        var attitude = solver.Attitude(new(0.2, 60, TurnDirection.Left));
        Assert.True(attitude.FrontRight.BumpLeftMm < 0 && attitude.RearRight.BumpLeftMm < 0);
        Assert.Equal(CorneringFailure.RollsOver, CorneringSolver.Create(WithoutStops(car), TurnDirection.Left)!.Solve(0.2, 60));

        static HandlingCar WithoutStops(HandlingCar car) => car with
        {
            Front = car.Front with { BumpTravelMm = null, ReboundTravelMm = null },
            Rear = car.Rear with { BumpTravelMm = null, ReboundTravelMm = null },
        };
    }

    [Fact]
    public void Readings_that_do_not_reach_the_ride_height_are_no_roll_over()
    {
        var readings = new CornerReadings { Travel = [new(0, -1, null), new(25, -1.4, null), new(50, -1.9, null)] };
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { Suspension = SuspensionModel.From(readings), RideHeightChangeMm = 40 } };

        Assert.Equal(CorneringFailure.TravelNotReached, CorneringSolver.Create(car, TurnDirection.Left)!.Solve(0.5, 60));
    }

    // Read from 30 mm of droop to 60 mm of bump: at 0.9 g the inner front wheel is unloaded beyond that and the 20 mm that are carried on.
    [Fact]
    public void An_inner_wheel_beyond_its_readings_does_not_stop_the_answer_and_says_so()
    {
        var car = OnReadings([new(-10, -0.8, null), new(0, -1, null), new(30, -1.6, null), new(60, -2.2, null)]);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        Assert.Null(solver.Solve(0.9, 60));
        var attitude = solver.Attitude(new(0.9, 60, TurnDirection.Left));
        Assert.True(attitude.FrontLeft.TravelMm < -30, $"{attitude.FrontLeft.TravelMm}");
        Assert.True(attitude.FrontLeft.IsBeyondReadings);
        Assert.False(attitude.FrontRight.IsBeyondReadings);
        Assert.Null(solver.BeyondReadings);
    }

    [Fact]
    public void An_outer_wheel_beyond_its_readings_is_named_with_the_travel_it_needs()
    {
        var car = OnReadings([new(-60, -0.4, null), new(-30, -0.7, null), new(0, -1, null)]);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;

        Assert.Equal(CorneringFailure.TravelNotReached, solver.Solve(0.9, 60));
        var beyond = solver.BeyondReadings!.Value;
        Assert.Equal(WheelPosition.FrontRight, beyond.Position);
        Assert.InRange(beyond.TravelMm, 20, 80);

        // Read to 0 mm, extended by 20.
        Assert.Equal(20, beyond.ReachMm, 0.1);
        Assert.False(beyond.IsOfPoints);
    }

    [Fact]
    public void Work_that_is_spent_has_a_name()
    {
        var budget = new WorkBudget(3);

        Assert.Equal(CorneringFailure.WorkSpent, CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left, budget)!.Solve(0.9, 60));
        Assert.True(budget.IsSpent);
    }

    [Fact]
    public void A_caller_who_has_gone_ends_the_work()
    {
        using var gone = new CancellationTokenSource();
        gone.Cancel();

        Assert.Equal(CorneringFailure.WorkSpent, CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left, WorkBudget.Generous(gone.Token))!.Solve(0.9, 60));
    }

    private static HandlingCar OnReadings(TravelReading[] readings)
    {
        var car = WorkedCar.Make();
        return car with { Front = car.Front with { Suspension = SuspensionModel.From(new CornerReadings { Travel = readings }) } };
    }

    // Upright it is in balance, but the least lean grows.
    [Fact]
    public void A_body_that_its_springs_do_not_hold_does_not_stand_upright() =>
        Assert.Equal(
            CorneringFailure.RollsOver,
            CorneringSolver.Create(AnyCar.Make((3, 3), (0, 0), 620, (20, 20), 220, (1, 1), -1, 30), TurnDirection.Left)!.Solve(0, 60));

    // What the tyres were raised to beyond the limit must not stand in the way of the easier turn.
    [Fact]
    public void An_easier_turn_after_a_hard_one_is_as_if_solved_alone() =>
        Gen.Select(Gen.Double[1.2, 1.6], Gen.Double[0.2, 1.2]).Sample((hardG, easyG) =>
        {
            var car = AnyCar.Make((60, 60), (400, 300), 430, (60, 80), 250, (1, 1), -2, 80);
            var (after, alone) = (CorneringSolver.Create(car, TurnDirection.Left)!, CorneringSolver.Create(car, TurnDirection.Left)!);
            Assert.Null(after.Solve(hardG, 60));
            Assert.Null(after.Solve(easyG, 60));
            Assert.Null(alone.Solve(easyG, 60));
            var (one, other) = (after.Attitude(new(easyG, 60, TurnDirection.Left)), alone.Attitude(new(easyG, 60, TurnDirection.Left)));
            Assert.Equal(other.Front.GripUsed, one.Front.GripUsed, 1e-8);
            Assert.Equal(other.RollDeg, one.RollDeg, 1e-7);
            Assert.Equal(other.SteerDeg, one.SteerDeg, 1e-7);
        });

    [Fact]
    public void A_turn_to_the_right_is_the_mirror_of_one_to_the_left() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.05, 1]).Sample((car, lateralG) =>
        {
            var mirror = car with { Front = Mirrored(car.Front), Rear = Mirrored(car.Rear) };
            var (left, right) = (CorneringSolver.Create(car, TurnDirection.Left)!, CorneringSolver.Create(mirror, TurnDirection.Right)!);
            if (left.Solve(lateralG, 60) is not null) return;
            Assert.Null(right.Solve(lateralG, 60));
            var (a, b) = (left.Attitude(new(lateralG, 60, TurnDirection.Left)), right.Attitude(new(lateralG, 60, TurnDirection.Right)));
            Assert.Equal(a.RollDeg, b.RollDeg, 1e-9);
            Assert.Equal(a.FrontRight.LoadN, b.FrontLeft.LoadN, 1e-6);
            Assert.Equal(a.FrontRight.InclinationAngleDeg, b.FrontLeft.InclinationAngleDeg, 1e-9);
            Assert.Equal(a.FrontRight.SteerDeg, -b.FrontLeft.SteerDeg, 1e-7);
        }, iter: 200);

    [Fact]
    public void Stiffer_springs_let_the_body_roll_less_while_all_wheels_stand_and_springs_stay_seated() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.1, 0.9]).Sample((car, lateralG) =>
        {
            var soft = car with { Front = Free(car.Front), Rear = Free(car.Rear) };
            var stiff = soft with { Front = soft.Front with { SpringRateNPerMm = 1.2 * soft.Front.SpringRateNPerMm } };
            if (Roll(soft) is { } less && Roll(stiff) is { } more) Assert.True(more < less, $"{less} {more}");

            double? Roll(HandlingCar one)
            {
                var solver = CorneringSolver.Create(one, TurnDirection.Left)!;
                if (solver.Solve(lateralG, 80) is not null) return null;
                var attitude = solver.Attitude(new(lateralG, 80, TurnDirection.Left));
                if (RollArmMm(one, attitude) < 50) return null;
                return !attitude.FrontLeft.IsLifted && !attitude.RearLeft.IsLifted && IsSeated(one.Front, attitude.FrontLeft) && IsSeated(one.Rear, attitude.RearLeft) ? attitude.RollDeg : null;
            }
        }, iter: 300);

    [Fact]
    public void A_turn_solved_from_another_is_the_same_as_from_rest() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0, 1.2], Gen.Double[0, 1.2]).Sample((car, firstG, lateralG) =>
        {
            var (walked, fresh) = (CorneringSolver.Create(car, TurnDirection.Left)!, CorneringSolver.Create(car, TurnDirection.Left)!);
            walked.Solve(firstG, 50);
            var failure = fresh.Solve(lateralG, 50);
            Assert.Equal(failure, walked.Solve(lateralG, 50));
            if (failure is not null) return;
            var (a, b) = (walked.Attitude(new(lateralG, 50, TurnDirection.Left)), fresh.Attitude(new(lateralG, 50, TurnDirection.Left)));
            Assert.Equal(a.RollDeg, b.RollDeg, 1e-7);
            Assert.Equal(a.Outer(CarAxle.Front).InclinationAngleDeg, b.Outer(CarAxle.Front).InclinationAngleDeg, 1e-7);
            Assert.Equal(a.Front.GripUsed, b.Front.GripUsed, 1e-7);
        }, iter: 500);

    [Fact]
    public void The_roll_over_limit_is_where_the_inner_side_loses_its_load()
    {
        var car = WorkedCar.Make();
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Equal(CorneringFailure.RollsOver, solver.Solve(2, 60));

        var limitG = RollOver.LimitG(solver, 60, 2);

        Assert.Null(solver.Solve(limitG, 60));
        var stands = solver.Attitude(new(limitG, 60, TurnDirection.Left));
        Assert.True(stands.FrontLeft.LoadN + stands.RearLeft.LoadN < 0.01 * (car.Front.LoadN + car.Rear.LoadN));
        Assert.InRange(limitG, 1.2, 1.51);
    }

    // Gillespie's understeer gradient W/C of the axles: with given stiffness and hardly any load moved it is all there is.
    [Fact]
    public void Gently_turned_the_understeer_is_the_difference_of_load_by_cornering_stiffness()
    {
        var even = WorkedCar.Make(1e5);
        var car = even with
        {
            CentreOfGravityHeightMm = 310,
            Front = even.Front with { CorneringStiffnessNPerDeg = 1000, LeftCamberDeg = 0, RightCamberDeg = 0, LeftCasterDeg = 0, RightCasterDeg = 0, SteeringAxisInclinationDeg = 0 },
            Rear = even.Rear with { CorneringStiffnessNPerDeg = 1250, LeftCamberDeg = 0, RightCamberDeg = 0 },
        };

        var turn = SteadyTurn.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, new(0.005, 400, TurnDirection.Left), out _)!.Value;

        Assert.Equal((car.Front.LoadN / 2000) - (car.Rear.LoadN / 2500), turn.UndersteerDegPerG!.Value, 0.03);
    }

    private static double Moved(HandlingAxle axle, WheelAttitude left, WheelAttitude right) => right.LoadN - left.LoadN - (axle.RightLoadN - axle.LeftLoadN);

    private static HandlingAxle Mirrored(HandlingAxle axle) => axle with
    {
        LeftLoadN = axle.RightLoadN,
        RightLoadN = axle.LeftLoadN,
        LeftCamberDeg = axle.RightCamberDeg,
        RightCamberDeg = axle.LeftCamberDeg,
    };

    private static bool IsSeated(HandlingAxle axle, WheelAttitude inner) => -inner.TravelMm * axle.SpringRateNPerMm < 0.95 * (axle.LeftLoadN - (axle.UnsprungMassKg * HandlingCar.StandardGravity));

    private static HandlingAxle Free(HandlingAxle axle) => axle with { BumpTravelMm = null, ReboundTravelMm = null };

    // Height of the sprung centre of gravity above the line through both roll centres.
    private static double RollArmMm(HandlingCar car, in CorneringAttitude attitude) =>
        car.SprungHeightMm - (car.SprungShareFront * attitude.Front.RollCentreHeightMm) - ((1 - car.SprungShareFront) * attitude.Rear.RollCentreHeightMm);
}
