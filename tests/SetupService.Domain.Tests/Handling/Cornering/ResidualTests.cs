using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>The equilibrium as a system of equations is the one the solver balances.</summary>
public sealed class ResidualTests
{
    [Fact]
    public void At_a_solved_turn_nothing_is_out_of_balance_and_beside_it_something_is() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.1, 1.3], Gen.Double[8, 300], Gen.Int[0, CorneringSolver.UnknownCount - 1]).Sample((car, lateralG, radiusM, unknown) =>
        {
            var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
            if (solver.Solve(lateralG, radiusM) is not null) return;
            var (state, residuals) = (new double[CorneringSolver.UnknownCount], new double[CorneringSolver.UnknownCount]);
            solver.CopyState(state);

            Assert.True(solver.TryResiduals(state, lateralG, radiusM, residuals));
            Assert.InRange(Largest(residuals), 0, 1e-7 * car.MassKg * HandlingCar.StandardGravity);

            // A step of 1000 differences' steps moves some residual by far more than the solution leaves.
            var before = Largest(residuals);
            state[unknown] += 1000 * CorneringSolver.UnknownSteps[unknown];
            if (solver.TryResiduals(state, lateralG, radiusM, residuals)) Assert.True(Largest(residuals) > 1000 * before, $"{unknown}: {before}, {Largest(residuals)}");
        }, iter: 500);

    [Fact]
    public void The_system_of_a_turn_braked_or_driven_through_is_balanced_too() =>
        Gen.Select(AnyCar.Cars, Gen.Double[0.1, 0.7], Gen.Double[-0.5, 0.3], Gen.Double[0, 100]).Sample((car, lateralG, longitudinalG, share) =>
        {
            car = car with { DriveShareFrontPct = share, Differential = Differential.LimitedSlip(2), Aero = new(120, 200, 300, 400) };
            var demand = TurnPath.AtRadius(TurnDirection.Left, 60).WithLongitudinal(longitudinalG).At(lateralG);
            var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
            if (solver.Solve(demand) is not null) return;
            var (state, residuals) = (new double[CorneringSolver.UnknownCount], new double[CorneringSolver.UnknownCount]);
            solver.CopyState(state);

            Assert.True(solver.TryResiduals(state, demand, residuals));
            Assert.InRange(Largest(residuals), 0, 1e-7 * car.MassKg * HandlingCar.StandardGravity);
        }, iter: 300);

    [Fact]
    public void Putting_a_car_into_a_state_allocates_nothing_and_the_next_turn_is_solved_from_there()
    {
        var solver = CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.7, 60));
        var rollDeg = solver.RollDeg;
        var (state, residuals) = (new double[CorneringSolver.UnknownCount], new double[CorneringSolver.UnknownCount]);
        solver.CopyState(state);
        state[0] += 0.01;
        solver.TryResiduals(state, 0.7, 60, residuals);
        var allocated = GC.GetAllocatedBytesForCurrentThread();

        solver.TryResiduals(state, 0.7, 60, residuals);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - allocated);
        Assert.Equal(double.RadiansToDegrees(Math.Asin(state[0])), solver.RollDeg, 1e-12);
        Assert.Null(solver.Solve(0.7, 60));
        Assert.Equal(rollDeg, solver.RollDeg, 1e-8);
    }

    private static double Largest(double[] residuals) => residuals.Max(Math.Abs);
}
