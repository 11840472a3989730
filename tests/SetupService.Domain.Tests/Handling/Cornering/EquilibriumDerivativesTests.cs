using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Cornering.Effects;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>What an input does to a turn, by the equilibrium's own derivatives, against the turn solved again with that input moved.</summary>
public sealed class EquilibriumDerivativesTests
{
    private const double Radius = 60;
    private static readonly int[] Followed = [0, .. Enum.GetValues<WheelPosition>().Select(TurnFigures.InclinationIndex)];
    private static readonly TurnPath Left = TurnPath.AtRadius(TurnDirection.Left, Radius);

    public static TheoryData<string, TurnDirection, double> Turns()
    {
        var turns = new TheoryData<string, TurnDirection, double>();
        foreach (var name in FollowedCars.Names)
        {
            foreach (var turn in (TurnDirection[])[TurnDirection.Left, TurnDirection.Right])
            {
                foreach (var lateralG in (double[])[0.4, 0.8]) turns.Add(name, turn, lateralG);
            }
        }

        return turns;
    }

    // Fourth-order differences of turns solved again. A figure that hardly hangs on an input (an elasticity below 5e-3) is held to what that elasticity would be.
    [Theory]
    [MemberData(nameof(Turns))]
    public void Each_derivative_is_that_of_turns_solved_again(string name, TurnDirection turn, double lateralG)
    {
        var car = FollowedCars.Named(name).Car;
        var derivatives = Derivatives(car, turn, lateralG);

        Assert.All(HandlingInputs.All.Where(input => HandlingInputs.CanMatter(input, car)), input =>
        {
            // Half a step of the lean gain crosses where a lean stops to gain; every other input is smooth over this width.
            var value = input.Read(car);
            var step = Math.Max(4e-3 * Math.Abs(value), IsNearZero(input) ? 1e-3 : 0);
            var by = derivatives.ByInput(input, step / 40)!.Value;
            var (near, far) = (Difference(step / 2), Difference(step));
            for (var figure = 0; figure < TurnFigures.Count; figure++)
            {
                var again = ((4 * near[figure]) - far[figure]) / 3;
                var floor = 5e-8 * Math.Max(Math.Abs(derivatives.Figures[figure]), 0.1) / Math.Max(Math.Abs(value), 0.1);
                Assert.True(Math.Abs(by[figure] - again) <= Math.Max(1e-5 * Math.Abs(again), floor), $"{input.Place} {figure}: {by[figure]} and {again}");
            }

            double[] Difference(double half)
            {
                var (more, less) = (Solved(input.Put(car, value + half), turn, lateralG), Solved(input.Put(car, value - half), turn, lateralG));
                return [.. Enumerable.Range(0, TurnFigures.Count).Select(figure => (more[figure] - less[figure]) / (2 * half))];
            }
        });

        static bool IsNearZero(HandlingInput input) => input.Unit is "Deg" or "DegPerKn";
    }

    // Roll and the inclinations, which are followed: within 2 % of what the input does to them, or 0.02°, a fifth of what a gauge shows.
    [Theory]
    [MemberData(nameof(Turns))]
    public void Both_ends_of_every_assumed_range_are_the_turn_solved_again(string name, TurnDirection turn, double lateralG)
    {
        var reading = FollowedCars.Named(name);
        var here = Solved(reading.Car, turn, lateralG);

        var effects = CorneringEffect.Compute(reading, CorneringSolver.Create(reading.Car, turn)!, TurnPath.AtRadius(turn, Radius), lateralG);

        Assert.Equal(reading.Assumed, effects.Select(effect => effect.Assumed));
        Assert.All(effects, effect =>
        {
            Hold(effect.AtLower, effect.Assumed.Lower);
            Hold(effect.AtUpper, effect.Assumed.Upper);

            void Hold(TurnFigures? figures, double value)
            {
                var again = SolvedOrNull(effect.Assumed.Input.Put(reading.Car, value), turn, lateralG);
                Assert.Equal(again is null, figures is null);
                if (again is not { } expected) return;
                foreach (var figure in Followed) Assert.Equal(expected[figure], figures!.Value[figure], (0.02 * Math.Abs(expected[figure] - here[figure])) + 0.02);
            }
        });
    }

    // Stops met, wheels lifted and limits passed within the range: where that is so the turn is solved again. Within a tenth of the effect, or what a gauge shows (0.1°).
    [Fact]
    public void An_input_moved_by_up_to_three_tenths_is_answered_as_if_solved() => Moved().Sample(HoldMoved, iter: 1000);

    // Each was answered wrongly, by up to 0.5°: a wheel that leaves its droop stop or a spring that goes loose by the last correction, a front wheel off the road in the first state only, an
    // axle whose slip grows by 15°.
    [Theory]
    [InlineData("btBhdoDqAsE2")]
    [InlineData("aNqVSF3PlLg1")]
    [InlineData("4Eu5yEh8OtE1")]
    public void A_kink_met_by_a_correction_is_answered_as_if_solved(string seed) => Moved().Sample(HoldMoved, seed: seed, iter: 1, threads: 1);

    private static Gen<(HandlingCar Car, int Index, double Factor, double LateralG)> Moved() =>
        Gen.Select(AnyCar.Cars, Gen.Int[0, HandlingInputs.All.Count - 1], Gen.Double[0.7, 1.3], Gen.Double[0.2, 1.2]);

    private static void HoldMoved((HandlingCar Car, int Index, double Factor, double LateralG) moved)
    {
        var (car, index, factor, lateralG) = moved;
        var input = HandlingInputs.All[index];
        var other = input.Put(car, factor * input.Read(car));
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        if (solver.Solve(lateralG, Radius) is not null) return;
        foreach (var derivatives in new[] { EquilibriumDerivatives.Create(solver, car, Left, lateralG), EquilibriumDerivatives.ForCorrections(solver, car, Left, lateralG) })
        {
            var resolved = solver.With(other)!;
            if (derivatives?.At(solver.With(other)!) is not { } figures || resolved.Solve(lateralG, Radius) is not null) continue;
            var again = resolved.Figures();
            if (Differs(again) is null) continue;

            // About once in 200,000 times, with an inner wheel all but off the road, a car stands in two ways, and solving again leaps to the other: then as where small steps lead.
            var followed = InSmallSteps(solver, car, input, factor, lateralG);
            Assert.True(
                followed is { } by && Differs(by) is null,
                $"{input.Place} × {factor} at {lateralG} g, figure {Differs(again)}: solved {again[Differs(again)!.Value]}, answered {figures[Differs(again)!.Value]}, before {derivatives.Figures[Differs(again)!.Value]}");

            int? Differs(TurnFigures expected) => Followed.Cast<int?>().FirstOrDefault(figure =>
                Math.Abs(expected[figure!.Value] - figures[figure.Value]) > (0.1 * Math.Abs(expected[figure.Value] - derivatives.Figures[figure.Value])) + 0.1);
        }
    }

    private static TurnFigures? InSmallSteps(CorneringSolver from, HandlingCar car, HandlingInput input, double factor, double lateralG)
    {
        const int Count = 200;
        var (value, last) = (input.Read(car), from);
        for (var step = 1; step <= Count; step++)
        {
            last = last.With(input.Put(car, value * (1 + ((factor - 1) * step / Count))))!;
            if (last.Solve(lateralG, Radius) is not null) return null;
        }

        return last.Figures();
    }

    // The study comes to its limits by derivatives and along the path; the search solves turn after turn.
    [Fact]
    public void Limits_come_to_by_derivatives_are_those_found_by_solving() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.3, 1.5]).Sample((car, guessG) =>
        {
            var study = LimitStudy.Compute(new(car, [], []), CorneringSolver.Create(car, TurnDirection.Left)!, Left, guessG, null);
            var found = GripLimits.Solve(CorneringSolver.Create(car, TurnDirection.Left)!, Left, guessG);
            foreach (var axle in new[] { CarAxle.Front, CarAxle.Rear })
            {
                Assert.Equal(found.At(axle).LimitG is null, study.Limits.At(axle).LimitG is null);
                if (found.At(axle).LimitG is { } limitG) Assert.Equal(limitG, study.Limits.At(axle).LimitG!.Value, 1e-6);
            }
        }, iter: 200);

    // Tyres are stiffer than springs: of another rate they keep their loads rather than the travels, by which this was missed by up to 0.003 g.
    [Theory]
    [InlineData("figures", 0.5)]
    [InlineData("strut and wishbone", 0.9)]
    [InlineData("five links and arm", 1.2)]
    public void A_tyres_rate_moves_the_limits_as_limits_found_again(string name, double guessG)
    {
        var reading = FollowedCars.Named(name);
        var study = LimitStudy.Compute(reading, CorneringSolver.Create(reading.Car, TurnDirection.Left)!, Left, guessG, null);
        foreach (var effect in study.Effects.Where(one => one.IsAssumed && one.Input.Place.EndsWith("verticalRateNPerMm", StringComparison.Ordinal)))
        {
            var moved = GripLimits.Solve(CorneringSolver.Create(effect.Input.Put(reading.Car, effect.Upper), TurnDirection.Left)!, Left, guessG);
            Assert.Equal(moved.Front.LimitG!.Value - study.Limits.Front.LimitG!.Value, effect.AtUpper.Front, 3e-4);
            Assert.Equal(moved.Rear.LimitG!.Value - study.Limits.Rear.LimitG!.Value, effect.AtUpper.Rear, 3e-4);
        }
    }

    [Fact]
    public void A_car_that_would_roll_over_has_no_figures()
    {
        var car = WorkedCar.Make();
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.9, Radius));
        var derivatives = EquilibriumDerivatives.Create(solver, car, Left, 0.9)!;

        Assert.Null(derivatives.At(solver.With(car with { CentreOfGravityHeightMm = 1200 })!));
    }

    [Fact]
    public void The_solver_stays_in_its_turn()
    {
        var car = WorkedCar.Make();
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.7, Radius));
        var rollDeg = solver.RollDeg;
        var derivatives = EquilibriumDerivatives.Create(solver, car, Left, 0.7)!;
        derivatives.Beside(solver.With(car with { CentreOfGravityHeightMm = 560 })!);
        derivatives.At(solver.With(car with { CentreOfGravityHeightMm = 600 })!);

        Assert.Equal(rollDeg, solver.RollDeg, 1e-12);
        Assert.Equal(rollDeg, derivatives.Figures.RollDeg, 1e-12);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void By_lateral_acceleration_is_the_slope_along_the_path(bool isAtRadius)
    {
        var car = FollowedCars.Named("figures").Car;
        var path = isAtRadius ? TurnPath.AtRadius(TurnDirection.Right, Radius) : TurnPath.AtSpeed(TurnDirection.Right, 70);
        var solver = CorneringSolver.Create(car, TurnDirection.Right)!;
        var demand = path.At(0.6);
        Assert.Null(solver.Solve(0.6, demand.RadiusM));

        var by = EquilibriumDerivatives.Create(solver, car, path, 0.6)!.ByLateralG();

        var (more, less) = (At(0.601), At(0.599));
        for (var figure = 0; figure < TurnFigures.Count; figure++) Assert.Equal((more[figure] - less[figure]) / 0.002, by[figure], 1e-6 + (1e-4 * Math.Abs(by[figure])));

        TurnFigures At(double g)
        {
            Assert.Null(solver.Solve(g, path.At(g).RadiusM));
            return solver.Figures() with { LateralG = g };
        }
    }

    [Fact]
    public void Work_that_is_spent_ends_it()
    {
        var reading = FollowedCars.Named("figures");
        var budget = new WorkBudget(60);
        var solver = CorneringSolver.Create(reading.Car, TurnDirection.Left, budget)!;

        var effects = CorneringEffect.Compute(reading, solver, Left, 0.6);

        Assert.True(budget.IsSpent);
        Assert.Contains(effects, effect => effect.AtLower is null && effect.AtUpper is null);
    }

    private static EquilibriumDerivatives Derivatives(HandlingCar car, TurnDirection turn, double lateralG)
    {
        var solver = CorneringSolver.Create(car, turn)!;
        Assert.Null(solver.Solve(lateralG, Radius));
        return EquilibriumDerivatives.Create(solver, car, TurnPath.AtRadius(turn, Radius), lateralG)!;
    }

    private static TurnFigures Solved(HandlingCar car, TurnDirection turn, double lateralG) => SolvedOrNull(car, turn, lateralG)!.Value;

    private static TurnFigures? SolvedOrNull(HandlingCar car, TurnDirection turn, double lateralG)
    {
        var solver = CorneringSolver.Create(car, turn)!;
        return solver.Solve(lateralG, Radius) is null ? solver.Figures() with { LateralG = lateralG } : null;
    }
}
