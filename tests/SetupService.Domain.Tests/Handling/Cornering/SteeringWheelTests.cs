using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>What the driver steers, with what travel and give of the suspension do to it. Directions: common practice, no source.</summary>
public sealed class SteeringWheelTests
{
    // Toe-out in bump in front: the outer wheel is steered out of the turn as the body rolls, so that the driver steers more for the same heading.
    [Fact]
    public void A_front_that_rolls_into_understeer_needs_more_lock()
    {
        var (even, rolling) = (Attitude(WithToe(0)), Attitude(WithToe(-0.3)));

        Assert.Equal(even.SteerDeg, rolling.SteerDeg, 0.05);
        Assert.InRange(rolling.SteeredDeg - even.SteeredDeg, 0.1, 1.5);
        Assert.Equal(even.SteerDeg, even.SteeredDeg, 0.02);

        static HandlingCar WithToe(double perFortyMm)
        {
            var car = WorkedCar.Make();
            double[] travels = [-80, -40, 0, 40, 80];
            var readings = new CornerReadings { Travel = [.. travels.Select(mm => new TravelReading(mm, -1 - (mm * 0.02), perFortyMm * mm / 40))] };
            return car with { Front = car.Front with { Suspension = SuspensionModel.From(readings) } };
        }
    }

    [Fact]
    public void A_rear_that_toes_out_under_side_force_needs_less_lock_and_a_front_that_does_more()
    {
        var car = WorkedCar.Make();
        var stiff = Attitude(car).SteeredDeg;

        Assert.InRange(stiff - Attitude(car with { Rear = car.Rear with { ToeComplianceDegPerKn = 0.05 } }).SteeredDeg, 0.05, 1);
        Assert.InRange(Attitude(car with { Front = car.Front with { ToeComplianceDegPerKn = 0.05 } }).SteeredDeg - stiff, 0.05, 1);
    }

    // At the radius held, the turn's own geometry asks for what it asks for at a crawl: what comes on top per g is ISO 8855's understeer gradient.
    [Theory]
    [InlineData("figures")]
    [InlineData("strut and wishbone")]
    [InlineData("five links and arm")]
    public void Its_slope_over_lateral_acceleration_is_the_understeer_gradient(string name)
    {
        var run = CorneringRun.Create(FollowedCars.Named(name).Car, TurnPath.AtRadius(TurnDirection.Left, 200))!;
        var (less, at, more) = (run.At(0.395, out _)!.Value, run.At(0.4, out _)!.Value, run.At(0.405, out _)!.Value);

        Assert.Equal(at.UndersteerDegPerG!.Value, (more.Attitude.SteeredDeg - less.Attitude.SteeredDeg) / 0.01, 0.01);
    }

    private static CorneringAttitude Attitude(HandlingCar car)
    {
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(0.6, 60));
        return solver.Attitude(new(0.6, 60, TurnDirection.Left));
    }
}
