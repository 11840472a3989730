using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Tests.Drawings.Charts;

public sealed class ChartNumberTests
{
    [Theory]
    [InlineData(20, 20, "20")]
    [InlineData(-0.4, 0.2, "−0.4")]
    [InlineData(0.25, 0.25, "0.25")]
    [InlineData(1, 0.5, "1.0")]
    [InlineData(0.30000000000000004, 0.1, "0.3")]
    [InlineData(-1e-17, 0.05, "0.00")]
    [InlineData(-0.0, 10, "0")]
    [InlineData(-2000000, 500000, "−2e6")]
    [InlineData(-0.0000025, 0.0000005, "−2.5e−6")]
    [InlineData(0.00025, 0.00025, "0.00025")]
    public void A_tick_has_the_decimals_of_its_step(double value, double step, string text) => Assert.Equal(text, ChartNumber.AtTick(value, step));

    [Theory]
    [InlineData(-0.745, "°", 3, "−0.75°")]
    [InlineData(69.37, "mm", 300, "69.4 mm")]
    [InlineData(0.9423, "", 0.05, "0.9423")]
    [InlineData(0.94, "", 0, "0.94")]
    public void A_value_is_read_as_the_sentences_have_it(double value, string unit, double span, string text) =>
        Assert.Equal(text, ChartNumber.Read(value, unit, span));
}
