using CsCheck;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Wear.Temperatures;

public sealed class TreadCoolingTests
{
    // By hand: 20 + (80 − 20) e^(60/600) = 20 + 60 × 1.105171 = 86.31 °C; with τ 200 s 20 + 60 × 1.349859 = 100.99, with 1800 s 82.03.
    [Fact]
    public void A_reading_goes_back_to_the_end_of_the_lap_as_worked_by_hand()
    {
        var end = TreadCooling.AtLapEndC(80, 0, 20, 60, Thermometer.Probe)!.Value;

        Assert.Equal(86.31, end.Value, 0.005);
        Assert.Equal(100.99, end.Upper, 0.005);
        Assert.Equal(82.03, end.Lower, 0.005);
    }

    [Fact]
    public void Read_at_once_it_is_what_was_read_within_the_thermometers_error() => Gen.Select(Gen.Double[20, 250], Gen.Double[0, 3]).Sample((readC, errorC) =>
    {
        var end = TreadCooling.AtLapEndC(readC, errorC, 20, 0, Thermometer.Infrared)!.Value;

        Assert.Equal(readC, end.Value, 1e-9);
        Assert.Equal(1.6448536 * errorC, end.Upper - end.Value, 1e-6);
    });

    [Fact]
    public void It_was_never_colder_and_waiting_leaves_more_open() =>
        Gen.Select(Gen.Double[-40, 250], Gen.Double[-40, 250], Gen.Double[0, 119], Gen.Enum<Thermometer>()).Sample((oneC, otherC, seconds, by) =>
        {
            var (airC, readC) = (Math.Min(oneC, otherC), Math.Max(oneC, otherC));
            var soon = TreadCooling.AtLapEndC(readC, 1, airC, seconds, by)!.Value;
            var late = TreadCooling.AtLapEndC(readC, 1, airC, seconds + 1, by)!.Value;

            Assert.True(soon.Value >= readC - 1e-9 && soon.Lower <= soon.Value && soon.Upper >= soon.Value);
            Assert.True(late.Upper - late.Lower >= soon.Upper - soon.Lower - 1e-9);
        });

    [Theory]
    [InlineData(80, 20, 120.001)]
    [InlineData(19, 20, 30)]
    public void Too_late_or_colder_than_the_air_it_is_not_told(double readC, double airC, double seconds) =>
        Assert.Null(TreadCooling.AtLapEndC(readC, 1, airC, seconds, Thermometer.Probe));
}
