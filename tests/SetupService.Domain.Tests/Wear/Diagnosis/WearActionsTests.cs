using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>By how much a cold pressure is to be changed, worked by hand.</summary>
public sealed class WearActionsTests
{
    // Absolute pressures scale alike when a tyre warms (ideal gas law at constant volume), so a change hot is (200 + 101.325) / (240 + 101.325)
    // = 0.882810 of it cold; without a cold pressure the usual share of 0.88 (20 °C to 60 °C: 293 / 333 K = 0.880).
    [Theory]
    [InlineData(200.0, 240.0, 220.0, -20 * 0.882810)]
    [InlineData(200.0, 240.0, 250.0, 10 * 0.882810)]
    [InlineData(null, 240.0, 220.0, -20 * 0.88)]
    public void A_hot_aim_changes_the_cold_setting_by_the_warming(double? coldKpa, double hotKpa, double aimHotKpa, double changeKpa)
    {
        var action = Assert.Single(Actions(new(coldKpa, hotKpa, null, aimHotKpa)));

        Assert.Equal(changeKpa, action.ColdPressureKpa!.Value.Value, 1e-4);
        Assert.Contains("never below what the load needs", action.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cold_aim_counts_before_a_hot_one() =>
        Assert.Equal(15, Assert.Single(Actions(new(200, 240, 215, 250))).ColdPressureKpa!.Value.Value, 1e-12);

    [Fact]
    public void Without_an_aim_no_amount_is_told() => Assert.Null(Assert.Single(Actions(new(200, 240, null, null))).ColdPressureKpa);

    private static IReadOnlyList<WearAction> Actions(TyrePressures pressures)
    {
        var tyre = new TyreReading { Position = WheelPosition.FrontLeft, GaugeErrorMm = 0.2, Zones = TreadZone.FromDepths(new AcrossTread<double>(5, 5, 5)), Pressure = pressures };
        var finding = new CauseFinding(WearCause.UnderInflation, CarAxle.Front, 0.6, [WheelPosition.FrontLeft], []);
        return WearActions.Build(new WearCase { Use = new WearUse(1000, 10, 3), Tyres = [tyre] }, finding, null, UnitSystem.Metric);
    }
}
