using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Oracle;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>The rate at the wheel is what the force at the wheel grows by.</summary>
public sealed class WheelRateTests
{
    private const double StepMm = 1;

    public static TheoryData<string, string> Cars() => HandlingCases.Names("withPoints");

    // By virtual work the spring's force at the wheel is its force times the motion ratio there; its slope is taken here by differences.
    [Theory]
    [MemberData(nameof(Cars))]
    public void The_rate_is_the_slope_of_the_force_at_the_wheel(string part, string name)
    {
        var car = HandlingCases.Car(HandlingCases.Named(part, name));
        var axle = car.Front;
        var ride = RideAxleBuilder.Build(car, CarAxle.Front, new Axle());
        Assert.NotNull(ride);

        var rates = RideAxleBuilder.RatesOverTravel(car, CarAxle.Front);

        Assert.True(rates.Count >= 3, $"{rates.Count} rates");
        foreach (var rate in rates)
        {
            var slope = (ForceN(rate.TravelMm + StepMm) - ForceN(rate.TravelMm - StepMm)) / (2 * StepMm);
            Assert.Equal(1, rate.WheelRateNPerMm / slope, 1e-3);
        }

        double ForceN(double travelMm)
        {
            var motion = axle.Suspension.MotionOf(axle.SetupOf(CarAxle.Front, WheelSide.Left))!;
            var state = motion.Origin;
            Assert.True(motion.TryAt(travelMm, 0, ref state, out var wheel));
            return Math.Max(0, ride.SpringForceN + (axle.SpringRateNPerMm * wheel.SpringTravelMm)) * wheel.SpringMotionRatio;
        }
    }
}
