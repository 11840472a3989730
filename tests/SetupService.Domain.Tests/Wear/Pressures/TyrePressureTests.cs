using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Pressures;

public sealed class TyrePressureTests
{
    private static readonly LoadNeed NoNeed = LoadNeed.Compute(null, WheelPosition.FrontLeft);

    private static readonly PressureConditions Day = new(18, 28, 101.325, new(2, 1, 2));

    // By hand: (260 + 101.325) / (210 + 101.325) = 1.16060; × 291.15 = 337.91 K = 64.76 °C. For 245 hot: 346.325 / 1.16060 − 101.325 = 197.08.
    // At 28 °C the gas comes to 74.76 °C = 347.91 K, and 346.325 × 301.15 / 347.91 − 101.325 = 198.45.
    [Fact]
    public void A_hot_aim_gives_the_settings_worked_by_hand()
    {
        var told = TyrePressureBuilder.Build(Read(210, 260, aimHot: 245), Day, NoNeed, null);

        Assert.Equal(64.76, told.HotGasC!.Value.Value, 0.01);
        Assert.Equal(197.08, told.ColdNow!.Value.SetKpa!.Value, 0.01);
        Assert.Equal(198.45, told.ColdNext!.Value.SetKpa!.Value, 0.01);
        Assert.Equal(245, told.ColdNext.Value.HotThenKpa!.Value.Value, 1e-9);
        Assert.Equal(-15, told.HotNow!.Value.ChangeKpa, 1e-9);
        Assert.Equal(197.08, told.HotNow.Value.ColdThenKpa.Value, 0.01);
    }

    // Where the hot gas does not follow the day at all, 28 °C asks for 346.325 × 301.15 / 337.91 − 101.325 = 207.33: the range must reach it.
    [Fact]
    public void The_range_reaches_a_day_the_hot_gas_does_not_follow()
    {
        var needed = TyrePressureBuilder.Build(Read(210, 260, aimHot: 245), Day, NoNeed, null).ColdNext!.Value.NeededKpa!.Value;

        Assert.InRange(207.33, needed.Lower, needed.Upper);
        Assert.True(needed.Upper - needed.Value > needed.Value - needed.Lower);
    }

    // On a day like the last there is nothing to follow: only the errors of the readings are left, alike either way.
    [Fact]
    public void A_day_like_the_last_leaves_the_errors_of_the_readings()
    {
        var told = TyrePressureBuilder.Build(Read(210, 260, aimHot: 245), Day with { NextColdC = Day.ColdC }, NoNeed, null);
        var (needed, hot) = (told.ColdNext!.Value.NeededKpa!.Value, told.UntouchedHotKpa!.Value);

        Assert.Equal(needed.Upper - needed.Value, needed.Value - needed.Lower, 1e-9);
        Assert.Equal(hot.Upper - hot.Value, hot.Value - hot.Lower, 1e-9);
        Assert.Equal(260, hot.Value, 1e-9);
    }

    [Fact]
    public void The_setting_and_the_bleeding_stop_at_what_the_load_needs()
    {
        var need = new LoadNeed(205, 500, false, LoadGap.None);
        var told = TyrePressureBuilder.Build(Read(210, 260, aimHot: 245), Day, need, null);

        Assert.Equal(205, told.ColdNow!.Value.SetKpa);
        Assert.True(told.ColdNow.Value.IsHeldByLoad);
        Assert.True(told.ColdNow.Value.HotThenKpa!.Value.Value > 245);
        Assert.Equal(205, told.HotNow!.Value.ColdThenKpa.Value, 1e-9);
        Assert.True(told.HotNow.Value.ChangeKpa is < 0 and > -15);
        Assert.Contains(PressureWords.Describe(told, Day, UnitSystem.Metric), text => text.Contains("cold is the safe minimum", StringComparison.Ordinal));
    }

    [Fact]
    public void No_setting_and_no_bleeding_goes_below_what_the_load_needs() =>
        Gen.Select(Gen.Double[80, 500], Gen.Double[80, 500], Gen.Double[80, 500], Gen.Double[150, 290], Gen.Double[-20, 45]).Sample((cold, hot, aim, least, nextC) =>
        {
            var told = TyrePressureBuilder.Build(Read(cold, hot, aimHot: aim), Day with { NextColdC = nextC }, new LoadNeed(least, 500, false, LoadGap.None), null);
            foreach (var setKpa in new[] { told.ColdNow?.SetKpa, told.ColdNext?.SetKpa, told.HotNow?.ColdThenKpa.Value })
                Assert.False(setKpa < least - 1e-9, $"{setKpa} below {least}");
        });

    [Fact]
    public void What_is_told_lies_in_the_range_of_pressures_and_is_finite() =>
        Gen.Select(Gen.Double[80, 500], Gen.Double[80, 500], Gen.Double[80, 500], Gen.Double[-40, 250], Gen.Double[-40, 250], Gen.Double[50, 110], Gen.Double[0, 20])
            .Sample((cold, hot, aim, coldC, nextC, air, gauge) =>
            {
                var told = TyrePressureBuilder.Build(Read(cold, hot, aim, aim), new(coldC, nextC, air, new(gauge, 3, 2)), NoNeed, 90);
                foreach (var kpa in new[] { told.ColdNow?.SetKpa, told.ColdNext?.SetKpa, told.ColdNow?.NeededKpa?.Value, told.ColdNext?.NeededKpa?.Value, told.UntouchedColdKpa?.Value, told.UntouchedHotKpa?.Value })
                    Assert.True(kpa is null || PlausiblePressures.Include(kpa.Value), $"{kpa}");
                foreach (var range in new[] { told.HotGasC?.Ninety, told.HotOnColdAimKpa?.Ninety, told.UntouchedHotKpa, told.ColdNext?.NeededKpa, told.ColdNext?.HotThenKpa })
                    Assert.True(range is not { } one || (double.IsFinite(one.Lower) && double.IsFinite(one.Upper) && one.Lower <= one.Value && one.Value <= one.Upper));
                foreach (var text in PressureWords.Describe(told, new(coldC, nextC, air, new(gauge, 3, 2)), UnitSystem.Us)) Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            });

    // The gauge's error of two readings is 1.645 × √2 × 2 = 4.7 kPa.
    [Theory]
    [InlineData(210, 206, null, PressureContradiction.None)]
    [InlineData(210, 204, null, PressureContradiction.HotBelowCold)]
    [InlineData(210, 204, 60.0, PressureContradiction.HotBelowCold)]
    [InlineData(210, 204, 10.0, PressureContradiction.None)]
    [InlineData(100, 480, 60.0, PressureContradiction.GasBeyondReason)]
    public void Readings_that_cannot_be_of_one_warm_filling_are_named(double coldKpa, double hotKpa, double? treadC, PressureContradiction expected)
    {
        var told = TyrePressureBuilder.Build(Read(coldKpa, hotKpa, aimHot: 240), Day, NoNeed, treadC);

        Assert.Equal(expected, told.Contradiction);
        Assert.Equal(expected == PressureContradiction.None, told.ColdNow is not null);
        var words = PressureWords.Describe(told, Day, UnitSystem.Metric)[0];
        Assert.Equal(expected == PressureContradiction.HotBelowCold, words.StartsWith("204 kPa hot is below 210 kPa cold", StringComparison.Ordinal));
        Assert.Equal(expected == PressureContradiction.GasBeyondReason, words.StartsWith("From 100 kPa at 18 °C to 480 kPa the gas would be at a temperature no tyre has.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_setting_below_what_is_told_is_said_and_not_given()
    {
        var told = TyrePressureBuilder.Build(Read(210, 300, aimHot: 90), Day, NoNeed, null);

        Assert.Null(told.ColdNow!.Value.SetKpa);
        Assert.Null(told.HotNow);
        Assert.Contains(PressureWords.Describe(told, Day, UnitSystem.Metric), text => text.Contains("outside 80 kPa to 500 kPa", StringComparison.Ordinal));
    }

    [Fact]
    public void Aims_that_do_not_go_together_are_named()
    {
        Assert.True(TyrePressureBuilder.Build(Read(210, 260, aimCold: 230, aimHot: 245), Day, NoNeed, null).AimsDisagree);
        Assert.False(TyrePressureBuilder.Build(Read(210, 260, aimCold: 198, aimHot: 245), Day, NoNeed, null).AimsDisagree);
    }

    // By hand, one standard deviation: the gas 1.87, 2.17 and 2.32 °C by hot, cold and its temperature, together 3.69; the setting 1.92 and 1.65, together 2.53 kPa.
    [Fact]
    public void The_words_quote_the_case()
    {
        var told = TyrePressureBuilder.Build(Read(210, 260, aimHot: 245), Day, NoNeed, null);
        var words = PressureWords.Describe(told, Day, UnitSystem.Metric);

        Assert.Equal("From 210 kPa at 18 °C to 260 kPa the gas came to 64.8 °C (58.7 °C to 70.8 °C); that is the gas, not the tread.", words[0]);
        Assert.StartsWith("On a day like this set 197 kPa (193 kPa to 201 kPa) for 245 kPa hot.", words[1], StringComparison.Ordinal);
        Assert.Contains(words, text => text.StartsWith("While it is as hot as read, let 15 kPa out, to 245 kPa; cold it will then read 197 kPa", StringComparison.Ordinal));
        Assert.Contains(PressureCautions.For([told]), caution => caution.Code == "loadNotChecked");
    }

    [Fact]
    public void A_cold_pressure_below_the_loads_need_comes_first()
    {
        var told = TyrePressureBuilder.Build(Read(180, 220), Day, new LoadNeed(193.2, 500, false, LoadGap.None), null);

        Assert.Equal("Raise the pressure before driving: 180 kPa cold is below the 194 kPa that 500 kg on this tyre needs.", PressureWords.Describe(told, Day, UnitSystem.Metric)[0]);
        Assert.Equal("belowLoad", PressureCautions.For([told])[0].Code);
    }

    private static TyrePressures Read(double? cold, double? hot, double? aimCold = null, double? aimHot = null) => new(cold, hot, aimCold, aimHot);
}
