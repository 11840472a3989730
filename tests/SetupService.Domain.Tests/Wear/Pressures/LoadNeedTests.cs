using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Domain.Tests.Wear.Pressures;

public sealed class LoadNeedTests
{
    // Index 91 stands for 615 kg at 250 kPa; 500 kg need 250 × (500/615)^1.25 = 193.0 kPa (docs/methods/tyre-load.md, formula of the handbook named there).
    [Fact]
    public void A_load_needs_the_pressure_of_the_load_formula()
    {
        var need = LoadNeed.Compute(Car("225/45R17 91H", 1000, topSpeedKmh: 150), WheelPosition.FrontLeft);

        Assert.Equal(193.0, need.LeastColdKpa!.Value, 0.05);
        Assert.Equal(500, need.LoadKg);
        Assert.False(need.IsAsDriven);
    }

    // The same handbook adds 30 kPa from 210 km/h for symbols up to V; above the reference pressure it is not asked.
    [Theory]
    [InlineData(1000, 210, 223.0)]
    [InlineData(1160, 210, 250)]
    public void Sustained_speed_asks_for_more_up_to_the_reference(double maximumKg, double topSpeedKmh, double kpa) =>
        Assert.Equal(kpa, LoadNeed.Compute(Car("225/45R17 91H", maximumKg, topSpeedKmh), WheelPosition.FrontLeft).LeastColdKpa!.Value, 0.05);

    [Fact]
    public void A_light_load_needs_what_the_table_begins_with() =>
        Assert.Equal(150, LoadNeed.Compute(Car("225/45R17 91H", 400, 150), WheelPosition.FrontLeft).LeastColdKpa);

    [Fact]
    public void The_heavier_of_scale_and_half_the_plate_counts()
    {
        var car = Car("225/45R17 91H", 1000, 150) with { CornerWeights = new(450, 540, null, null) };

        Assert.Equal(500, LoadNeed.Compute(car, WheelPosition.FrontLeft).LoadKg);
        Assert.Equal(540, LoadNeed.Compute(car, WheelPosition.FrontRight).LoadKg);
    }

    [Fact]
    public void Without_the_plate_the_load_as_driven_stands()
    {
        var car = Car("225/45R17 91H", null, 150);
        var need = LoadNeed.Compute(car with { Front = car.Front with { LoadKg = 800 } }, WheelPosition.FrontRight);

        Assert.Equal(400, need.LoadKg);
        Assert.True(need.IsAsDriven);
    }

    [Theory]
    [InlineData("225/45R17", 1000.0, 150, LoadGap.MarkingSilent)]
    [InlineData("225/45R17 91H", null, 150, LoadGap.NoLoad)]
    [InlineData("225/45R17 91H", 1300.0, 150, LoadGap.BeyondLoad)]
    [InlineData("225/45R17 91H", 1000.0, 240, LoadGap.BeyondSpeed)]
    [InlineData("225/45R17 91V", 1200.0, 240, LoadGap.BeyondLoad)]
    [InlineData("195/70R15C 104/102R", 1000.0, 150, LoadGap.ReferenceUnknown)]
    public void What_is_not_known_is_named(string marking, double? maximumKg, double topSpeedKmh, LoadGap gap)
    {
        var need = LoadNeed.Compute(Car(marking, maximumKg, topSpeedKmh), WheelPosition.FrontLeft);

        Assert.Null(need.LeastColdKpa);
        Assert.Equal(gap, need.Gap);
        Assert.NotEmpty(PressureWords.Gap(gap));
    }

    [Fact]
    public void Without_car_or_tyre_it_is_not_told()
    {
        Assert.Equal(LoadGap.NoVehicle, LoadNeed.Compute(null, WheelPosition.RearLeft).Gap);
        Assert.Equal(LoadGap.NoTyre, LoadNeed.Compute(Car("225/45R17 91H", 1000, 150), WheelPosition.RearLeft).Gap);
    }

    internal static Vehicle Car(string marking, double? maximumKg, double? topSpeedKmh) => new()
    {
        TopSpeedKmh = topSpeedKmh,
        Front = new() { Tyre = new Tyre(TyreMarkingReader.Read(marking).Value!), MaximumLoadKg = maximumKg },
    };
}
