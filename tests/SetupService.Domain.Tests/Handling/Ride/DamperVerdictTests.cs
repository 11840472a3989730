using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>
/// Whether dampers can stay, worked by hand: damping ratio = damping at the wheel / (2 √(wheel rate × sprung corner mass)), any textbook of
/// vibration; damping at the wheel = damping at the damper × motion ratio².
/// </summary>
public sealed class DamperVerdictTests
{
    // The worked car's front: 1180 · 1.4 / 2.6 = 635.385 kg sprung, 317.692 kg a corner; spring 28 N/mm at a ratio of 1.
    // Critical damping 2 √(28,000 · 317.692) = 2 √8,895,385 = 2 · 2,982.513 = 5,965.03 N s/m.
    //   keep        1,500 and 3,000, ratio 1:   mean 2,250               / 5,965.03 = 0.37720
    //   keep        2,400 and 4,800, ratio 1:   mean 3,600               / 5,965.03 = 0.60352, under 0.7 − 0.07
    //   borderline  1,000 and 2,200, ratio 1:   mean 1,600               / 5,965.03 = 0.26823, over 0.25 and under 0.25 + 0.025
    //   borderline  2,700 and 5,300, ratio 1:   mean 4,000               / 5,965.03 = 0.67058, over 0.7 − 0.07 and under 0.7
    //   replace     1,500 and 3,000, ratio 0.8: mean 2,250 · 0.64 = 1,440 / 5,965.03 = 0.24141, too soft
    //   replace     3,000 and 5,400, ratio 1:   mean 4,200               / 5,965.03 = 0.70410, too hard
    [Theory]
    [InlineData(1500, 3000, 1, 0.37720, DamperVerdict.Keep)]
    [InlineData(2400, 4800, 1, 0.60352, DamperVerdict.Keep)]
    [InlineData(1000, 2200, 1, 0.26823, DamperVerdict.Borderline)]
    [InlineData(2700, 5300, 1, 0.67058, DamperVerdict.Borderline)]
    [InlineData(1500, 3000, 0.8, 0.24141, DamperVerdict.Replace)]
    [InlineData(3000, 5400, 1, 0.70410, DamperVerdict.Replace)]
    public void Dampers_are_judged_by_their_ratio(double bumpNsPerM, double reboundNsPerM, double motionRatio, double expectedRatio, DamperVerdict expected)
    {
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { DamperMotionRatio = motionRatio } };

        var axle = RideAxleBuilder.Build(car, CarAxle.Front, new Axle { Damper = new Damper { BumpNsPerM = bumpNsPerM, ReboundNsPerM = reboundNsPerM } })!;

        Assert.Equal(expectedRatio, axle.MeanRatio!.Value, 5e-6);
        Assert.Equal(expected, DampingRange.RoadAndTrack.Judge(axle.MeanRatio));
    }

    // A stiffer spring asks more of the same dampers: 70 N/mm makes critical damping 2 √(70,000 · 317.692) = 9,431.5, the ratio 2,250 / 9,431.5 = 0.23856.
    [Fact]
    public void A_stiffer_spring_makes_the_same_dampers_too_soft()
    {
        var car = WorkedCar.Make();
        car = car with { Front = car.Front with { SpringRateNPerMm = 70 } };

        var axle = RideAxleBuilder.Build(car, CarAxle.Front, new Axle { Damper = new Damper { BumpNsPerM = 1500, ReboundNsPerM = 3000 } })!;

        Assert.Equal(0.23856, axle.MeanRatio!.Value, 5e-6);
        Assert.Equal(DamperVerdict.Replace, DampingRange.RoadAndTrack.Judge(axle.MeanRatio));
    }

    // An end of the range belongs to it; a tenth of an end from it, the damper's own tolerance no longer decides.
    [Theory]
    [InlineData(0.25, DamperVerdict.Borderline)]
    [InlineData(0.25 - 1e-12, DamperVerdict.Replace)]
    [InlineData(0.25 * 1.1, DamperVerdict.Keep)]
    [InlineData((0.25 * 1.1) - 1e-12, DamperVerdict.Borderline)]
    [InlineData(0.7, DamperVerdict.Borderline)]
    [InlineData(0.7 + 1e-12, DamperVerdict.Replace)]
    [InlineData(0.7 * (1 - 0.1), DamperVerdict.Keep)]
    [InlineData((0.7 * (1 - 0.1)) + 1e-12, DamperVerdict.Borderline)]
    [InlineData(null, DamperVerdict.Unknown)]
    public void A_ratio_is_judged_at_the_ends(double? ratio, DamperVerdict expected) => Assert.Equal(expected, DampingRange.RoadAndTrack.Judge(ratio));

    [Fact]
    public void Dampers_nobody_measured_are_unknown()
    {
        var axle = RideAxleBuilder.Build(WorkedCar.Make(), CarAxle.Front, new Axle())!;

        Assert.Null(axle.MeanRatio);
        Assert.Equal(DamperVerdict.Unknown, DampingRange.RoadAndTrack.Judge(axle.MeanRatio));
    }
}
