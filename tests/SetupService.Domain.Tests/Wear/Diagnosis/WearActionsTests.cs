using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

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

    // The camber that lasts longest has no better one beside it: set so, the car is told to go no further; a degree off it, how far and what that brings.
    [Fact]
    public void More_camber_is_told_by_what_it_does_to_the_life()
    {
        var best = Axle(Axle(0).LongestLifeChangeDeg());
        var upright = Axle(best.Axle.Left.CamberDeg + 1);

        Assert.Equal(0, best.LongestLifeChangeDeg());
        Assert.Equal(-1, upright.LongestLifeChangeDeg(), 1e-9);
        Assert.True(upright.LifeRatio(-1) > 1);
        Assert.Equal(1, upright.LifeRatio(-1) * best.LifeRatio(1), 1e-9);
        Assert.EndsWith($"the axle's tyres wear out {Sooner(best.LifeRatio(-best.CamberShortDeg.Value))} at the use stated; they last longest with no more camber.", Text(best), StringComparison.Ordinal);
        Assert.EndsWith(
            $"wears out {Sooner(upright.LifeRatio(-upright.CamberShortDeg.Value))} at the use stated; it lasts longest with 1.0° more negative camber ({Sooner(upright.LifeRatio(-1))}).",
            Text(upright),
            StringComparison.Ordinal);

        static string Text(LearnedTread learned) => Assert.Single(WearActions.Build(
            new WearCase { Tyres = [] }, new CauseFinding(WearCause.LowNegativeCamber, CarAxle.Front, 0.6, [], []), learned, UnitSystem.Metric)).Text;

        static string Sooner(double ratio) => ratio < 1 ? FormattableString.Invariant($"{100 * (1 - ratio):0} % sooner") : FormattableString.Invariant($"{100 * (ratio - 1):0} % later");
    }

    [Fact]
    public void A_tyre_that_did_nothing_has_no_life_to_tell_of()
    {
        var idle = LearnedTread.Fit(Axle(-1).Axle, null, null, 0, 0)!;
        var action = Assert.Single(WearActions.Build(new WearCase { Tyres = [] }, new CauseFinding(WearCause.LowNegativeCamber, CarAxle.Front, 0.6, [], []), idle, UnitSystem.Metric));

        Assert.DoesNotContain("wear", action.Text, StringComparison.Ordinal);
        Assert.Equal(-idle.CamberShortDeg.Value, action.CamberDeg!.Value.Value, 1e-12);
    }

    // Road wears most; the bends lean the outer wheel outward by 3°, the inner one inward: short of camber there, while the straight wants little.
    private static LearnedTread Axle(double camberDeg)
    {
        var wheel = new WheelUse
        {
            Corners = [new(0.8, 5500, camberDeg + 3, 1, true), new(0.2, 1500, camberDeg - 3, 1, false)],
            CamberDeg = camberDeg,
            ToeDeg = 0.05,
            LoadN = 3500,
            TyreRateNPerMm = 210,
            TreadWidthMm = 190,
            RadiusMm = 305,
        };
        return LearnedTread.Fit(new AxleUse(CarAxle.Front, wheel, wheel), null, null, 20_000, 60)!;
    }

    private static IReadOnlyList<WearAction> Actions(TyrePressures pressures)
    {
        var tyre = new TyreReading { Position = WheelPosition.FrontLeft, GaugeErrorMm = 0.2, Zones = TreadZone.FromDepths(new AcrossTread<double>(5, 5, 5)), Pressure = pressures };
        var finding = new CauseFinding(WearCause.UnderInflation, CarAxle.Front, 0.6, [WheelPosition.FrontLeft], []);
        return WearActions.Build(new WearCase { Use = new WearUse(1000, 10, 3), Tyres = [tyre] }, finding, null, UnitSystem.Metric);
    }
}
