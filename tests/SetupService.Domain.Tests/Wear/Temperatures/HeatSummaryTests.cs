using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Wear.Temperatures;

public sealed class HeatSummaryTests
{
    private static readonly PressureConditions Day = new(16, 27, 101.3, new(1.5, 0.2, 2));

    [Fact]
    public void Readings_as_usual_ask_for_nothing() =>
        Assert.Equal("All readings are as usual.", Write([new(WheelPosition.FrontLeft, Tread(WheelPosition.FrontLeft, 80, 83, 85), null)]));

    [Fact]
    public void The_tread_that_stands_out_most_is_named_and_the_others_counted()
    {
        var text = Write(
        [
            new(WheelPosition.FrontLeft, Tread(WheelPosition.FrontLeft, 86, 83, 80), null),
            new(WheelPosition.FrontRight, Tread(WheelPosition.FrontRight, 96, 88, 80), null),
        ]);

        Assert.StartsWith("Front right: the outer shoulder is 16 °C hotter than the inner one, as with too little negative camber", text, StringComparison.Ordinal);
        Assert.Contains("; 2 more figures are outside the usual range.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Front left", text, StringComparison.Ordinal);
    }

    // What can hurt comes first, whatever the treads say.
    [Fact]
    public void A_pressure_below_what_the_load_needs_comes_first()
    {
        var low = new TyrePressure { Reading = new(180, null, null, null), Need = new LoadNeed(194, 500, false, LoadGap.None) };

        var text = Write([new(WheelPosition.RearLeft, Tread(WheelPosition.RearLeft, 96, 88, 80), low)]);

        Assert.StartsWith("Do not drive before this is put right: the rear left cannot carry the load at its cold pressure.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tread_colder_than_the_air_is_read_again_before_anything_is_set()
    {
        var text = Write([new(WheelPosition.FrontLeft, Tread(WheelPosition.FrontLeft, 10, 10, 10), null)], airC: 40);

        Assert.StartsWith("The readings of the front left contradict each other: read them again first.", text, StringComparison.Ordinal);
    }

    private static TreadReading Tread(WheelPosition position, double outerC, double centreC, double innerC) =>
        new(position, new(outerC, centreC, innerC), Thermometer.Probe, 20, null);

    private static string Write(TyreHeat[] tyres, double? airC = null) => HeatSummary.Write(tyres, [], HeatActions.List(tyres, null, Day, airC, UnitSystem.Metric), airC, UnitSystem.Metric);
}
