using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Wear.Temperatures;

/// <summary>What a careful technician does first, in an amount one dares; the order and the step are common practice, no source.</summary>
public sealed class HeatActionsTests
{
    private static readonly PressureConditions Day = new(16, null, 101.3, new(1.5, 0.2, 2));

    [Fact]
    public void Nothing_wrong_changes_nothing() =>
        Assert.Equal([HeatActionKind.Keep], Kinds(List(new TyreHeat(WheelPosition.FrontLeft, Tread(WheelPosition.FrontLeft, 80, 82, 85), null))));

    [Fact]
    public void What_is_unsafe_comes_first_then_readings_then_pressures_then_alignment()
    {
        var actions = HeatActions.List(
        [
            new(WheelPosition.FrontLeft, Tread(WheelPosition.FrontLeft, 98, 88, 80), Pressure(180, 240, 230, 194)),
            new(WheelPosition.FrontRight, Tread(WheelPosition.FrontRight, 97, 88, 80), Pressure(230, 290, 275, 194)),
            new(WheelPosition.RearLeft, Tread(WheelPosition.RearLeft, 10, 10, 10), Pressure(230, 200, 240, 194)),
            new(WheelPosition.RearRight, Tread(WheelPosition.RearRight, 80, 82, 85) with { SecondsAfterLap = null }, null),
        ],
            "Do not drive on the rear right tyre.",
            Day,
            airC: 40,
            UnitSystem.Metric);

        Assert.Equal([HeatActionKind.MakeSafe, HeatActionKind.RaisePressure, HeatActionKind.ReadAgain, HeatActionKind.SetPressure, HeatActionKind.MeasureAlignment], Kinds(actions));
        Assert.Equal(194, actions[1].Steps[0].ToKpa);
        Assert.Equal([WheelPosition.FrontRight], actions[3].Tyres);
    }

    // 230 cold came to 290 hot; 240 hot would want some 188: a step of 20 first, and where the load needs 194 it goes no lower than that in the end.
    [Fact]
    public void A_setting_goes_by_steps_and_an_aim_out_of_reach_says_by_how_much()
    {
        var action = List(new TyreHeat(WheelPosition.FrontLeft, null, Pressure(230, 290, 240, 194)))[0];

        var step = Assert.Single(action.Steps);
        Assert.Equal((230, 210), (step.FromKpa, step.ToKpa));
        Assert.Equal(194, step.TowardsKpa, 1e-9);
        Assert.Contains("a first step towards 194 kPa", action.Text, StringComparison.Ordinal);

        // (194 + 101.3) (290 + 101.3) / (230 + 101.3) − 101.3 = 247.48 hot.
        Assert.Contains("out of reach: front left by 7 kPa", action.Text, StringComparison.Ordinal);
    }

    // The judge of a pressure far too low: at once to what the load needs, not by a step.
    [Theory]
    [InlineData(85, 230, 193.0, 193)]
    [InlineData(230, 190, 150.0, 210)]
    [InlineData(230, 245, null, 245)]
    [InlineData(200, 260, null, 220)]
    [InlineData(196, 193, 193.0, 193)]
    public void A_step_is_at_most_twenty_but_never_leaves_a_tyre_below_its_load(double coldKpa, double setKpa, double? floorKpa, double toKpa) =>
        Assert.Equal(toKpa, ColdSetting.Step(coldKpa, setKpa, floorKpa));

    [Fact]
    public void A_step_never_goes_below_the_floor_nor_away_from_the_setting() => Gen.Select(Gen.Double[80, 500], Gen.Double[80, 500], Gen.Double[80, 400]).Sample((cold, set, floor) =>
    {
        var aim = Math.Max(set, floor);
        var to = ColdSetting.Step(cold, aim, floor);
        Assert.True(to >= Math.Min(floor, Math.Max(cold, aim)) - 1e-9);
        Assert.True(Math.Abs(to - aim) <= Math.Abs(cold - aim) + 1e-9);
        Assert.True(cold < floor || Math.Abs(to - cold) <= ColdSetting.MostStepKpa + 1e-9);
    });

    // Only the hot pressure was read: what it leaves cold rests on the usual rise, with its range. By hand: (245 + 101.3) / (1 + 45/289.15) − 101.3 = 198.4.
    [Fact]
    public void A_hot_pressure_alone_is_set_by_a_step_and_its_cold_is_told_roughly()
    {
        var tyre = TyrePressureBuilder.Build(new(null, 262, null, 245), Day, LoadNeed.Compute(null, WheelPosition.FrontLeft), null);

        Assert.True(tyre.IsRiseAssumed);
        Assert.Equal(198.4, tyre.HotNow!.Value.ColdThenKpa.Value, 0.1);
        Assert.True(tyre.HotNow.Value.ColdThenKpa.Upper - tyre.HotNow.Value.ColdThenKpa.Lower > 40);
        var action = List(new TyreHeat(WheelPosition.FrontLeft, null, tyre))[0];
        Assert.Equal((262, 245, true), (action.Steps[0].FromKpa, action.Steps[0].ToKpa, action.Steps[0].IsHot));
        Assert.Contains("Measure cold before driving again", action.Text, StringComparison.Ordinal);
    }

    private static HeatActionKind[] Kinds(IReadOnlyList<HeatAction> actions) => [.. actions.Select(action => action.Kind)];

    private static IReadOnlyList<HeatAction> List(params TyreHeat[] tyres) => HeatActions.List(tyres, null, Day, null, UnitSystem.Metric);

    private static TyrePressure Pressure(double coldKpa, double hotKpa, double aimHotKpa, double floorKpa) =>
        TyrePressureBuilder.Build(new(coldKpa, hotKpa, null, aimHotKpa), Day, new LoadNeed(floorKpa, 450, true, LoadGap.None), null);

    private static TreadReading Tread(WheelPosition position, double outerC, double centreC, double innerC) =>
        new(position, new(outerC, centreC, innerC), Thermometer.Probe, 20, null);
}
