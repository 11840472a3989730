using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>What each axle can hold: what must be true of it for any car, and what the parts of a car do to it.</summary>
public sealed class GripLimitTests
{
    private static readonly TurnPath Left60 = TurnPath.AtRadius(TurnDirection.Left, 60);

    [Fact]
    public void At_its_limit_an_axle_uses_all_its_grip_and_beyond_it_more() =>
        Gen.Select(AnyCar.Cars, Gen.Double[10, 300], Gen.Double[0.1, 1.5]).Sample((car, radiusM, guessG) =>
        {
            var path = TurnPath.AtRadius(TurnDirection.Left, radiusM);
            var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
            var limits = GripLimits.Solve(solver, path, guessG);
            foreach (var axle in new[] { CarAxle.Front, CarAxle.Rear })
            {
                if (limits.At(axle).LimitG is not { } limitG) continue;
                Assert.Equal(1, Used(limitG), 1e-6);
                Assert.True(Used(0.97 * limitG) < 1);
                if (UsedOrNull(1.03 * limitG) is { } beyond) Assert.True(beyond > 1);

                double Used(double g) => UsedOrNull(g)!.Value;

                double? UsedOrNull(double g) => solver.Solve(g, radiusM) is null ? solver.Attitude(path.At(g)).At(axle).GripUsed : null;
            }
        }, iter: 200);

    [Fact]
    public void Where_the_search_begins_does_not_matter() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.1, 2.5], Gen.Double[0.1, 2.5]).Sample((car, oneG, otherG) =>
        {
            var (one, other) = (Limits(car, oneG), Limits(car, otherG));
            Assert.Equal(one.Front.LimitG is null, other.Front.LimitG is null);
            if (one.Front.LimitG is { } frontG) Assert.Equal(frontG, other.Front.LimitG!.Value, 1e-7);
            if (one.Rear.LimitG is { } rearG) Assert.Equal(rearG, other.Rear.LimitG!.Value, 1e-7);
        }, iter: 150);

    [Fact]
    public void A_car_that_rolls_over_first_has_no_limit_and_says_why()
    {
        var car = WorkedCar.Make() with { CentreOfGravityHeightMm = 900 };

        var limits = Limits(car, 0.9);

        Assert.Equal((null, null), (limits.Front.LimitG, limits.Rear.LimitG));
        Assert.Equal(CorneringFailure.RollsOver, limits.Front.EndedBy);
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Equal(CorneringFailure.RollsOver, solver.Solve(2, 60));
        Assert.Equal(RollOver.LimitG(solver, 60, 2), limits.Front.StandsToG, 2e-3);
    }

    // At walking pace a hard turn is tighter than the car is long; steps of work are counted.
    [Fact]
    public void At_walking_pace_there_is_no_limit_and_the_search_ends_soon()
    {
        var budget = new WorkBudget(20_000);
        var solver = CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left, budget)!;

        var limits = GripLimits.Solve(solver, TurnPath.AtSpeed(TurnDirection.Left, 1), 1.1);

        Assert.Equal((null, null), (limits.Front.LimitG, limits.Rear.LimitG));
        Assert.False(budget.IsSpent);
        Assert.Equal(CorneringFailure.TravelNotReached, solver.Solve(0.3, 1));
    }

    [Fact]
    public void Finding_the_limits_allocates_nothing()
    {
        var solver = CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left)!;
        GripLimits.Solve(solver, Left60, 0.9);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var limits = GripLimits.Solve(solver, Left60, 0.7);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.NotNull(limits.MarginG);
    }

    // Beyond the limit there is an attitude still, and no gradient that would pretend to tell its balance.
    [Fact]
    public void A_turn_beyond_the_limit_is_answered_with_more_than_all_grip_and_no_gradient()
    {
        var turn = SteadyTurn.Solve(CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left)!, new(1.2, 60, TurnDirection.Left), out var failure)!.Value;

        Assert.Null(failure);
        Assert.True(turn.Attitude.Front.GripUsed > 1);
        Assert.Equal((null, NoGradientReason.NearLimit), (turn.UndersteerDegPerG, turn.NoGradient));
        Assert.NotNull(turn.RollDegPerG);
        Assert.Contains(CorneringCautions.OfAttitudes([turn.Attitude]), one => one.Code == "beyondLimit");
    }

    [Theory]
    [InlineData(0.95)]
    [InlineData(1.1)]
    [InlineData(1.3)]
    public void The_scale_makes_the_car_hold_what_it_was_measured_to_hold(double heldG)
    {
        var car = WorkedCar.Make();

        var scale = GripScale.Find(car, Left60, heldG)!.Value;

        Assert.Null(scale.StandsToG);
        Assert.Equal(heldG, Limits(car with { GripFactor = scale.Factor }, 0.8).LowerG!.Value, 1e-6);
    }

    // 13.8, 5.6, 2.5 and 1.9 °/g were answered for one car by what it was said to hold: grip was raised to 5 % beyond the turn.
    [Fact]
    public void The_gradient_well_below_the_limit_hardly_hangs_on_how_much_the_car_holds()
    {
        var gradients = new[] { 1.05, 1.15, 1.3 }.Select(heldG =>
        {
            var car = WorkedCar.Make();
            var solver = CorneringSolver.Create(car with { GripFactor = GripScale.Find(car, Left60, heldG)!.Value.Factor }, TurnDirection.Left)!;
            return SteadyTurn.Solve(solver, new(0.7, 60, TurnDirection.Left), out _)!.Value.UndersteerDegPerG!.Value;
        }).ToArray();

        Assert.True(gradients.Max() - gradients.Min() < 1, string.Join(", ", gradients));
    }

    [Fact]
    public void A_car_said_to_hold_more_than_it_stands_is_scaled_by_where_it_stands_and_told_so()
    {
        var car = WorkedCar.Make() with { CentreOfGravityHeightMm = 620 };

        var scale = GripScale.Find(car, Left60, 1.5)!.Value;

        Assert.InRange(scale.StandsToG!.Value, 0.9, 1.4);
        var solver = CorneringSolver.Create(car with { GripFactor = scale.Factor }, TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.8, 60));
        Assert.InRange(Math.Max(solver.GripUsed(CarAxle.Front), solver.GripUsed(CarAxle.Rear)), 0.3, 0.8 / 1.3);
    }

    // In a sweep every row had another tyre, so that the gradient contradicted the slope of the sweep's own steer.
    [Fact]
    public void The_gradient_is_the_slope_of_the_steer_over_lateral_acceleration_less_what_the_turn_takes()
    {
        var run = CorneringRun.Create(WorkedCar.Make(), Left60)!;
        SteadyTurn[] rows = [.. new[] { 0.60, 0.61, 0.62 }.Select(g => run.At(g, out _)!.Value)];

        var slope = (rows[2].Attitude.SteerDeg - rows[0].Attitude.SteerDeg) / 0.02;
        Assert.Equal(slope, rows[1].UndersteerDegPerG!.Value, 0.05);
    }

    [Fact]
    public void Four_hundredths_of_camber_move_the_gradient_by_next_to_nothing()
    {
        var gradients = Enumerable.Range(0, 60).Select(i => Gradient(-3.6 + (0.04 * i))).ToArray();

        Assert.All(gradients.Zip(gradients[1..]), pair => Assert.InRange(Math.Abs(pair.Second - pair.First), 0, 0.05));

        static double Gradient(double camberDeg)
        {
            var car = WorkedCar.Make();
            car = car with { Front = car.Front with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg } };
            return SteadyTurn.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, new(0.8, 60, TurnDirection.Left), out _)!.Value.UndersteerDegPerG!.Value;
        }
    }

    [Fact]
    public void Camber_has_a_best_between_none_and_ten_degrees()
    {
        var limits = new[] { 0.0, -2.5, -10 }.Select(camberDeg =>
        {
            var car = WorkedCar.Make();
            return Limits(car with { Front = car.Front with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg } }, 0.9).Front.LimitG!.Value;
        }).ToArray();

        Assert.True(limits[1] > limits[0] && limits[1] > limits[2], string.Join(", ", limits));
    }

    // Rear bar ×1.6 was answered as 6.8 °/g more understeer once a wheel had lifted, and nothing said so.
    [Fact]
    public void A_rear_bar_that_lifts_a_wheel_gives_no_gradient_and_never_helps_the_rear()
    {
        var car = WorkedCar.Make();
        car = car with { GripFactor = 1.4, Front = car.Front with { BarRollRateNmPerDeg = 0 }, Rear = car.Rear with { BarRollRateNmPerDeg = 900, ReboundTravelMm = 60 } };
        var stiffer = car with { Rear = car.Rear with { BarRollRateNmPerDeg = 1.6 * 900 } };
        var solver = CorneringSolver.Create(stiffer, TurnDirection.Left)!;

        var turn = SteadyTurn.Solve(solver, new(1.05, 60, TurnDirection.Left), out _)!.Value;

        Assert.True(turn.Attitude.RearLeft.IsLifted);
        Assert.Equal(NoGradientReason.WheelLifted, turn.NoGradient);
        Assert.Contains(CorneringCautions.OfAttitudes([turn.Attitude]), one => one.Code == "wheelLifted");
        Assert.True(Limits(stiffer, 0.9).MarginG <= Limits(car, 0.9).MarginG + 1e-9);
    }

    [Fact]
    public void A_body_that_rolls_more_than_cars_do_is_doubted()
    {
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { BarRollRateNmPerDeg = 0, SpringRateNPerMm = 18 }, Rear = car.Rear with { BarRollRateNmPerDeg = 0, SpringRateNPerMm = 17 } };
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.5, 60));

        Assert.Contains(CorneringCautions.OfAttitudes([solver.Attitude(new(0.5, 60, TurnDirection.Left))]), one => one.Code == "implausibleRoll");
    }

    [Fact]
    public void Friction_in_common_moves_both_limits_and_leaves_their_margin()
    {
        var study = Study(0.9, Assumed(HandlingInputs.Grip, 1, 0.8, 1.2));

        var grip = study.Effects.Single(one => ReferenceEquals(one.Input, HandlingInputs.Grip));
        Assert.Equal(grip.AtUpper.Front, grip.AtUpper.Rear, 0.03);
        Assert.True(study.Front!.Value.Upper - study.Front.Value.Lower > 3 * (study.Margin!.Value.Upper - study.Margin.Value.Lower));
    }

    [Fact]
    public void A_measured_limit_is_the_lower_of_both_in_every_draw()
    {
        var car = WorkedCar.Make();
        var scale = GripScale.Find(car, Left60, 1.05)!.Value;
        var reading = scale.Apply(new(car, [Assumed(HandlingInputs.Grip, 1, 0.8, 1.2), Assumed(HandlingInputs.CentreOfGravityHeight, car.CentreOfGravityHeightMm, 430, 620)], []));

        var study = Study(reading, 0.9, 1.05);

        var lower = study.Limits.Front.LimitG < study.Limits.Rear.LimitG ? study.Front!.Value : study.Rear!.Value;
        Assert.Equal(1.05, lower.Value, 1e-6);
        Assert.InRange(lower.Lower, 0.97, 1.02);
    }

    // The change of a limit by an input against the limit found again with that input moved.
    [Fact]
    public void What_an_input_does_to_the_limits_is_what_the_limits_found_with_it_say()
    {
        var car = WorkedCar.Make();
        var study = Study(0.9);

        Assert.All(study.Effects, effect =>
        {
            var moved = Limits(effect.Input.Put(car, effect.Upper), 0.9);
            Assert.Equal(moved.Front.LimitG!.Value - study.Limits.Front.LimitG!.Value, effect.AtUpper.Front, 0.002 + (0.05 * Math.Abs(effect.AtUpper.Front)));
            Assert.Equal(moved.Rear.LimitG!.Value - study.Limits.Rear.LimitG!.Value, effect.AtUpper.Rear, 0.002 + (0.05 * Math.Abs(effect.AtUpper.Rear)));
        });
    }

    // Ranges nobody narrowed, so that stops, lifted wheels and the other axle's limit lie within some of them; the tyre's coefficients too.
    [Theory]
    [InlineData("figures", 0.5)]
    [InlineData("readings", 0.9)]
    [InlineData("strut and wishbone", 0.9)]
    [InlineData("five links and arm", 1.2)]
    [InlineData("strut and beam", 0.7)]
    public void Both_ends_of_every_assumed_range_move_the_limits_as_limits_found_again(string name, double guessG)
    {
        var reading = FollowedCars.Named(name);
        var study = Study(reading, guessG);

        Assert.All(study.Effects.Where(effect => effect.IsAssumed), effect =>
        {
            Hold(effect.AtLower, effect.Lower);
            Hold(effect.AtUpper, effect.Upper);

            void Hold((double Front, double Rear) change, double value)
            {
                var moved = Limits(effect.Input.Put(reading.Car, value), guessG);
                if (moved.Front.LimitG is { } frontG) Assert.Equal(frontG - study.Limits.Front.LimitG!.Value, change.Front, 0.002 + (0.05 * Math.Abs(change.Front)));
                if (moved.Rear.LimitG is { } rearG) Assert.Equal(rearG - study.Limits.Rear.LimitG!.Value, change.Rear, 0.002 + (0.05 * Math.Abs(change.Rear)));
            }
        });
    }

    [Fact]
    public void An_axle_far_ahead_is_named_and_one_hardly_ahead_is_not()
    {
        var car = WorkedCar.Make();
        Assert.Equal(FirstAxle.Front, Study(new(car with { Front = car.Front with { TyreFriction = 0.9 } }, [], []), 0.9).First);
        Assert.Equal(FirstAxle.Rear, Study(new(car with { Rear = car.Rear with { TyreFriction = 0.9 } }, [], []), 0.9).First);
        var even = car with { Front = car.Front with { TyreFriction = car.Front.TyreFriction * Limits(car, 0.9).Rear.LimitG!.Value / Limits(car, 0.9).Front.LimitG!.Value } };
        var study = Study(new(even, [], []), 0.9);
        Assert.Equal(FirstAxle.Unclear, study.First);
        Assert.InRange(study.FrontFirst!.Value, 0.2, 0.8);
        Assert.Contains("unclear", CorneringWords.Limit(study), StringComparison.Ordinal);

        // "Probably" is never said of what is as likely not to be.
        var isEven = study.FrontFirst!.Value is > 1 - CorneringWords.LeastProbable and < CorneringWords.LeastProbable;
        Assert.Equal(isEven, CorneringWords.Limit(study).Contains("nearly an even chance", StringComparison.Ordinal));
        if (isEven) Assert.DoesNotContain("probably", CorneringWords.Limit(study), StringComparison.Ordinal);
    }

    private static LimitStudy Study(double guessG, params AssumedInput[] assumed) => Study(new(WorkedCar.Make(), assumed, []), guessG);

    private static LimitStudy Study(ResolvedHandlingCar reading, double guessG, double? heldG = null) =>
        LimitStudy.Compute(reading, CorneringSolver.Create(reading.Car, TurnDirection.Left)!, Left60, guessG, heldG);

    private static AssumedInput Assumed(HandlingInput input, double value, double lower, double upper) => new(input, value, lower, upper, "a test", "a test");

    private static GripLimits Limits(HandlingCar car, double guessG) => GripLimits.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, Left60, guessG);
}
