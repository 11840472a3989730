using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>Roll stiffness against the textbook form k t²/2 (Barton and Fieldhouse, Automotive Chassis Engineering, 2018), worked by hand for <see cref="WorkedCar"/>.</summary>
public sealed class RollStiffnessTests
{
    // By hand, N m/rad: springs 28000·1.52²/2 and 26000·1.50²/2; bars 32990.167 and 12097.678; tyres 220000 t²/2 in series.
    [Theory]
    [InlineData(true, 32345.6, 65335.767, 51974.162)]
    [InlineData(false, 29250.0, 41347.678, 35428.882)]
    public void Springs_bar_and_tyres_add_up_as_worked_by_hand(bool isFront, double springs, double suspension, double total)
    {
        var car = WorkedCar.Make();
        var stiffness = RollStiffness.Compute(isFront ? car.Front : car.Rear);

        Assert.Equal(springs, PerRadian(stiffness.SpringsNmPerDeg), 0.001);
        Assert.Equal(suspension, PerRadian(stiffness.SuspensionNmPerDeg), 0.001);
        Assert.Equal(total, PerRadian(stiffness.TotalNmPerDeg), 0.001);
    }

    [Fact]
    public void The_front_s_share_is_of_both_axles_with_their_tyres() =>
        Assert.Equal(100 * 51974.162 / (51974.162 + 35428.882), RollStiffness.FrontSharePct(WorkedCar.Make()), 1e-6);

    // Barton and Fieldhouse: roll per m/s² is m d/(K − m g d); with the tyre in series, which the equilibrium exceeds by a few percent,
    // for there a tyre gives under the whole load transfer.
    [Fact]
    public void The_equilibrium_rolls_a_few_percent_more_than_the_series_form()
    {
        var car = WorkedCar.Make();
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        var turn = SteadyTurn.Solve(solver, new(0.05, 200, TurnDirection.Left), out _)!.Value;
        var stiffness = PerRadian(RollStiffness.Compute(car.Front).TotalNmPerDeg + RollStiffness.Compute(car.Rear).TotalNmPerDeg);
        const double G = 9.80665;
        var series = double.RadiansToDegrees(1180 * G * 0.4415385 / (stiffness - (1180 * G * 0.4415385)));

        Assert.InRange(turn.RollDegPerG!.Value / series, 1.0, 1.08);
    }

    // The gradient against a plain difference of two turns.
    [Fact]
    public void The_roll_gradient_is_the_slope_of_roll_over_lateral_acceleration()
    {
        var solver = CorneringSolver.Create(WorkedCar.Make(), TurnDirection.Left)!;
        var turn = SteadyTurn.Solve(solver, new(0.6, 200, TurnDirection.Left), out _)!.Value;
        var difference = Roll(0.61) - Roll(0.59);

        Assert.Equal(difference / 0.02, turn.RollDegPerG!.Value, 1e-3);

        double Roll(double lateralG) => SteadyTurn.SolveAttitude(solver, new(lateralG, 200, TurnDirection.Left), out _)!.Value.RollDeg;
    }

    private static double PerRadian(double perDegree) => double.RadiansToDegrees(perDegree);
}
