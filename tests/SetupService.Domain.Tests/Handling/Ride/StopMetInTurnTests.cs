using CsCheck;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Tests.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>The lateral acceleration at which a bump stop is met, against the turns solved there.</summary>
public sealed class StopMetInTurnTests
{
    [Fact]
    public void There_the_outer_wheel_has_no_travel_left_and_just_below_it_has_some() =>
        AnyCar.Cars.Sample(car =>
        {
            var met = StopMetInTurn.Compute(car);
            foreach (var (axle, g) in new[] { (CarAxle.Front, met.FrontG), (CarAxle.Rear, met.RearG) })
            {
                // Right at roll-over not every search from rest arrives.
                if (g is not { } at || CorneringSolver.Create(car, TurnDirection.Left)!.Solve(at + 0.002, 60) is not null) continue;
                // A body its springs do not hold falls on its stop: there is travel left just before and none just after, and nothing between.
                Assert.True(Math.Abs(Left(at)) < 1e-6 || Left(at + 0.002) < 0);
                Assert.True(Left(at - 0.001) > 0 && Left(0.5 * at) > 0);

                double Left(double lateralG)
                {
                    var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
                    Assert.Null(solver.Solve(lateralG, 60));
                    return solver.Attitude(new(lateralG, 60, TurnDirection.Left)).Outer(axle).BumpLeftMm!.Value;
                }
            }
        }, iter: 100);

    [Fact]
    public void A_car_without_stops_meets_none_and_one_on_its_stop_has_met_it()
    {
        var car = WorkedCar.Make();

        Assert.Equal(default, StopMetInTurn.Compute(car));
        Assert.Equal(0, StopMetInTurn.Compute(car with { Front = car.Front with { BumpTravelMm = 0 } }).FrontG);
        Assert.Equal(default, StopMetInTurn.Compute(car with { WheelbaseMm = null, Front = car.Front with { BumpTravelMm = 20 } }));
        Assert.Null(StopMetInTurn.Compute(car with { CentreOfGravityHeightMm = 700, Front = car.Front with { BumpTravelMm = 300 } }).FrontG);
        Assert.Null(StopMetInTurn.Compute(car with { Front = car.Front with { BumpTravelMm = 20 } }, new WorkBudget(5)).FrontG);
    }
}
