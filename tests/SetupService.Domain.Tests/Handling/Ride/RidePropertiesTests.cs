using CsCheck;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>What must hold of any axle and spring.</summary>
public sealed class RidePropertiesTests
{
    private static readonly Gen<(double RateNPerMm, double Ratio)> Springs = Gen.Select(Gen.Double[10, 150], Gen.Double[0.5, 1.1]);

    // Flat ride: the rear 1.05 to 1.3 times as quick as the front, both ends included (common practice, no source).
    [Theory]
    [InlineData(1.05 - 1e-12, false)]
    [InlineData(1.05, true)]
    [InlineData(1.3, true)]
    [InlineData(1.3 + 1e-12, false)]
    public void The_ends_of_a_flat_ride_belong_to_it(double frequencyRatio, bool isFlat) => Assert.Equal(isFlat, new FlatRide(frequencyRatio).IsFlat);

    [Fact]
    public void A_spring_without_rate_holds_nothing_up()
    {
        var car = WorkedCar.Make();

        Assert.Null(RideAxleBuilder.Build(car with { Front = car.Front with { SpringRateNPerMm = 0 } }, CarAxle.Front, new Axle()));
    }

    // Any rate at all holds the car up, however far it sinks.
    [Fact]
    public void A_spring_of_half_a_newton_a_millimetre_still_holds()
    {
        var car = WorkedCar.Make();

        Assert.NotNull(RideAxleBuilder.Build(car with { Front = car.Front with { SpringRateNPerMm = 0.5 } }, CarAxle.Front, new Axle()));
    }

    // At rest the springs give by 1 g's worth; as much travel again to the stop is met at 2 g, and a wheel on its stop meets it at 1 g.
    [Theory]
    [InlineData(1, 2)]
    [InlineData(0.5, 1.5)]
    [InlineData(0, 1)]
    [InlineData(-0.2, 1)]
    public void The_stop_is_met_where_its_travel_is_used(double leftInDeflections, double expectedG)
    {
        var axle = RideAxleBuilder.Build(WorkedCar.Make(), CarAxle.Front, new Axle())!;

        Assert.Equal(expectedG, (axle with { BumpLeftMm = leftInDeflections * axle.StaticDeflectionMm }).StopMetAtG!.Value, 1e-12);
        Assert.Null((axle with { BumpLeftMm = null }).StopMetAtG);
    }

    // Worked by hand: a spring of 25 N/mm gives 3000 / 25 = 120 and 3250 / 25 = 130 mm; at a ratio of 0.8 the wheel moves 10 / 0.8 = 12.5 mm.
    // Another rate in the same seats with no free length known tells nothing.
    [Fact]
    public void The_same_spring_under_more_load_sinks()
    {
        var spring = new Spring { RateNPerMm = 25 };

        Assert.Equal(-12.5, SpringHeight.HeightChangeMm(spring, 3000, spring, 3250, 0.8, null)!.Value, 1e-9);
        Assert.Null(SpringHeight.HeightChangeMm(spring, 3000, new Spring { RateNPerMm = 30 }, 3250, 0.8, null));
    }

    [Fact]
    public void A_stiffer_spring_swings_faster_and_is_damped_less() =>
        Gen.Select(Springs, Gen.Double[1.05, 3]).Sample((spring, times) =>
        {
            var (soft, stiff) = (Axle(spring.RateNPerMm, spring.Ratio), Axle(times * spring.RateNPerMm, spring.Ratio));
            Assert.True(stiff.RideFrequencyHz > soft.RideFrequencyHz);
            Assert.Equal(soft.MeanRatio!.Value / Math.Sqrt(times), stiff.MeanRatio!.Value, 1e-12);
            Assert.Equal(soft.StaticDeflectionMm / times, stiff.StaticDeflectionMm, 1e-9);
        }, iter: 200);

    // f = √(g/deflection)/2π, a textbook form of the same.
    [Fact]
    public void Frequency_and_static_deflection_say_the_same() =>
        Springs.Sample(spring =>
        {
            var axle = Axle(spring.RateNPerMm, spring.Ratio);
            Assert.Equal(Math.Sqrt(9806.65 / axle.StaticDeflectionMm) / (2 * Math.PI), axle.SpringFrequencyHz, 1e-9);
        }, iter: 200);

    [Fact]
    public void Springs_in_the_same_seats_change_the_height_by_their_length_under_load_over_the_motion_ratio() =>
        Gen.Select(Springs, Gen.Double[10, 150], Gen.Double[200, 400], Gen.Double[200, 400], Gen.Double[1000, 6000]).Sample((spring, newRate, free, newFree, forceN) =>
        {
            var before = new Spring { RateNPerMm = spring.RateNPerMm, FreeLengthMm = free };
            var after = new Spring { RateNPerMm = newRate, FreeLengthMm = newFree };
            var there = SpringHeight.HeightChangeMm(before, forceN, after, forceN, spring.Ratio, null)!.Value;
            Assert.Equal(((newFree - (forceN / newRate)) - (free - (forceN / spring.RateNPerMm))) / spring.Ratio, there, 1e-9);
            Assert.Equal(0, there + SpringHeight.HeightChangeMm(after, forceN, before, forceN, spring.Ratio, null)!.Value, 1e-9);
        }, iter: 200);

    [Fact]
    public void More_preload_raises_the_car_by_itself_over_the_motion_ratio() =>
        Gen.Select(Springs, Gen.Double[0, 40], Gen.Double[0, 40]).Sample((spring, preload, more) =>
        {
            var before = new Spring { RateNPerMm = spring.RateNPerMm, PreloadMm = preload };
            var after = before with { PreloadMm = preload + more + 0.1 };
            Assert.Equal((more + 0.1) / spring.Ratio, SpringHeight.HeightChangeMm(before, 3000, after, 3000, spring.Ratio, null)!.Value, 1e-9);
        }, iter: 200);

    private static RideAxle Axle(double rateNPerMm, double motionRatio)
    {
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { SpringRateNPerMm = rateNPerMm, MotionRatio = motionRatio } };
        return RideAxleBuilder.Build(car, CarAxle.Front, new Axle { Damper = new Damper { BumpNsPerM = 1500, ReboundNsPerM = 3000 } })!;
    }
}
