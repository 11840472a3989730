using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Vehicles;

/// <summary>What wheels carry at rest: by the scales, else by halves of the axle's load; and when the two contradict each other.</summary>
public sealed class StaticLoadsTests
{
    // Two per cent of 600 kg are 12 kg: common practice, no source.
    [Theory]
    [InlineData(306, 306, false)]
    [InlineData(294, 294, false)]
    [InlineData(306, 306.01, true)]
    [InlineData(294, 293.99, true)]
    public void Scales_may_differ_from_the_axles_load_by_two_per_cent(double leftKg, double rightKg, bool expected)
    {
        var vehicle = Vehicle(new(leftKg, rightKg, null, null));

        var contradiction = StaticLoads.Contradiction(vehicle, CarAxle.Front);

        Assert.Equal(expected ? (leftKg + rightKg, 600) : null, contradiction);
        Assert.Null(StaticLoads.Contradiction(vehicle, CarAxle.Rear));
    }

    [Fact]
    public void Scales_of_both_wheels_count_before_halves()
    {
        var loads = StaticLoads.Compute(Vehicle(new(310, 295, 200, null)), CarAxle.Front)!.Value;
        Assert.Equal((310 * 9.80665, 295 * 9.80665), (loads.LeftN, loads.RightN));

        var halves = StaticLoads.Compute(Vehicle(new(310, 295, 200, null)), CarAxle.Rear)!.Value;
        Assert.Equal((250 * 9.80665, 250 * 9.80665), (halves.LeftN, halves.RightN));
        Assert.True(StaticLoads.AreHalved(Vehicle(new(310, 295, 200, null)), CarAxle.Rear));
        Assert.False(StaticLoads.AreHalved(Vehicle(new(310, 295, 200, null)), CarAxle.Front));
    }

    [Fact]
    public void The_car_weighs_what_its_wheels_carry()
    {
        Assert.Equal((310 + 295) * 9.80665, StaticLoads.Compute(Vehicle(new(310, 295, 200, null)), CarAxle.Front)!.Value.SumN, 1e-9);
        Assert.Equal(310 + 295 + 500, StaticLoads.CarMassKg(Vehicle(new(310, 295, 200, null)))!.Value, 1e-9);
    }

    private static Vehicle Vehicle(CornerWeights weights) => new() { CornerWeights = weights, Front = new Axle { LoadKg = 600 }, Rear = new Axle { LoadKg = 500 } };
}
