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
    [Theory]
    [InlineData("figures")]
    [InlineData("readings")]
    [InlineData("strut and wishbone")]
    [InlineData("five links and arm")]
    [InlineData("strut and beam")]
    public void There_the_outer_wheel_has_no_travel_left_and_just_below_it_has_some(string name) => Assert.All(new[] { 6.0, 9, 12 }, bumpMm =>
    {
        var car = FollowedCars.Named(name).Car;
        car = car with { Front = car.Front with { BumpTravelMm = bumpMm }, Rear = car.Rear with { BumpTravelMm = bumpMm + 3 } };

        var met = StopMetInTurn.Compute(car);

        Hold(CarAxle.Front, met.FrontG!.Value);
        Hold(CarAxle.Rear, met.RearG!.Value);

        void Hold(CarAxle axle, double g)
        {
            Assert.Equal(0, Left(g), 1e-5);
            Assert.True(Left(g - 0.001) > 0 && Left(g + 0.001) < 0);

            double Left(double lateralG)
            {
                var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
                Assert.Null(solver.Solve(lateralG, 60));
                return solver.Attitude(new(lateralG, 60, TurnDirection.Left)).Outer(axle).BumpLeftMm!.Value;
            }
        }
    });

    // Stops of both axles near and far, so that many cars meet one before the other, leave it again, or roll over before. The car is followed from rest in steps of a hundredth of a g: a
    // turn solved at once may be another, where a lifted wheel lets a car stand in two ways; where it goes from one to the other hangs on the steps, by some hundredths of a g. In the last
    // hundredths before it rolls over nothing is held. Of 2,000 cars asked once, two were told otherwise: four of 150 are a fault.
    [Fact]
    public void Of_nearly_every_car_the_stop_is_first_met_where_it_is_said_and_nowhere_it_is_not()
    {
        const double Step = 0.01, Jump = 0.03;
        var missed = new System.Collections.Concurrent.ConcurrentQueue<string>();
        Gen.Select(AnyCar.Cars, Gen.Double[5, 110], Gen.Double[5, 110]).Sample((any, frontMm, rearMm) =>
        {
            var car = any with { Front = any.Front with { BumpTravelMm = frontMm }, Rear = any.Rear with { BumpTravelMm = rearMm } };
            var met = StopMetInTurn.Compute(car);
            if (!Holds(CarAxle.Front, met.FrontG) || !Holds(CarAxle.Rear, met.RearG)) missed.Enqueue($"{car} says {met}");

            bool Holds(CarAxle axle, double? metG)
            {
                var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
                for (var lateralG = Step; lateralG < 3; lateralG += Step)
                {
                    if (solver.Solve(lateralG, 60) is not null) return metG is null || metG > lateralG - Jump - Step;
                    if (solver.Attitude(new(lateralG, 60, TurnDirection.Left)).Outer(axle).BumpLeftMm > 0) continue;
                    return metG is { } g ? g > lateralG - Step - Jump && g < lateralG + Jump : solver.Solve(lateralG + (2 * Jump), 60) is not null;
                }

                return metG is null;
            }
        }, iter: 150);

        Assert.True(missed.Count < 4, string.Join('\n', missed));
    }

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
