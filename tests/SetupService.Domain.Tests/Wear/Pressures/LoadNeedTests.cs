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

    // The load as driven sets the floor; the plate's pressure stands beside it, and the axle's greatest load serves where nothing else is known.
    [Fact]
    public void The_load_as_driven_counts_before_the_axles_greatest()
    {
        var car = Car("225/45R17 91H", 1000, 150);
        var driven = LoadNeed.Compute(car with { Front = car.Front with { LoadKg = 800, PlacardPressureKpa = 230 } }, WheelPosition.FrontRight);

        Assert.Equal((400, true), (driven.LoadKg, driven.IsAsDriven));
        Assert.Equal(230, driven.PlateKpa);
        Assert.True(driven.FloorKpa < 193);
        Assert.Equal(540, LoadNeed.Compute(car with { CornerWeights = new(450, 540, null, null) }, WheelPosition.FrontRight).LoadKg);
        Assert.Equal(450, LoadNeed.Compute(car with { CornerWeights = new(450, 540, null, null) }, WheelPosition.FrontLeft).LoadKg);
    }

    [Fact]
    public void Where_no_load_is_known_the_plates_pressure_is_the_floor()
    {
        var car = Car("225/45R17 91H", null, 150);
        var need = LoadNeed.Compute(car with { Front = car.Front with { PlacardPressureKpa = 220 } }, WheelPosition.FrontLeft);

        Assert.Null(need.LeastColdKpa);
        Assert.Equal(220, need.FloorKpa);
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
