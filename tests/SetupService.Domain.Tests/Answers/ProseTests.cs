using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Tests.Answers;

public sealed class ProseTests
{
    [Theory]
    [InlineData(4.94, UnitSystem.Metric, "4.9 mm")]
    [InlineData(4.95, UnitSystem.Metric, "5.0 mm")]
    [InlineData(-0.04, UnitSystem.Metric, "0.0 mm")]
    [InlineData(-7.25, UnitSystem.Metric, "−7.3 mm")]
    [InlineData(25.4, UnitSystem.Us, "1.00 in")]
    [InlineData(1e20, UnitSystem.Metric, "1.000E+020 mm")]
    public void A_length_is_rounded_for_people(double lengthMm, UnitSystem units, string expected) =>
        Assert.Equal(expected, Prose.Write(units, $"{lengthMm:mm}"));

    // Exact by definition: 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg, 1 mile = 1.609 344 km (international yard and
    // pound agreement of 1959, in NIST SP 811 appendix B); 1 psi = 6.894 757 kPa (same table).
    [Fact]
    public void Us_units_follow_the_international_definitions()
    {
        Assert.Equal("1000 lb", Prose.Write(UnitSystem.Us, $"{453.59237:kg}"));
        Assert.Equal("100 mph", Prose.Write(UnitSystem.Us, $"{160.9344:kmh}"));
        Assert.Equal("35.0 psi", Prose.Write(UnitSystem.Us, $"{241.3165:kPa}"));
        Assert.Equal("17 in", Prose.Write(UnitSystem.Metric, $"{17.0:in}"));
        Assert.Equal("16.5 in", Prose.Write(UnitSystem.Us, $"{16.5:in}"));
    }

    // 0 °C = 32 °F, 100 °C = 212 °F, −40 in both: the definition (NIST SP 811, appendix B.8: t/°C = (t/°F − 32) / 1.8).
    [Theory]
    [InlineData(0, "0 °C", "32 °F")]
    [InlineData(100, "100 °C", "212 °F")]
    [InlineData(-40, "−40 °C", "−40 °F")]
    [InlineData(79.66, "79.7 °C", "175 °F")]
    public void A_temperature_has_its_own_zero(double temperatureC, string metric, string us)
    {
        Assert.Equal(metric, Prose.Write(UnitSystem.Metric, $"{temperatureC:c}"));
        Assert.Equal(us, Prose.Write(UnitSystem.Us, $"{temperatureC:c}"));
    }

    [Theory]
    [InlineData(0, "0 °C", "0 °F")]
    [InlineData(10, "10 °C", "18 °F")]
    [InlineData(-2.5, "−2.5 °C", "−4.5 °F")]
    public void A_difference_of_temperatures_has_none(double differenceC, string metric, string us)
    {
        Assert.Equal(metric, Prose.Write(UnitSystem.Metric, $"{differenceC:cDiff}"));
        Assert.Equal(us, Prose.Write(UnitSystem.Us, $"{differenceC:cDiff}"));
    }

    [Fact]
    public void A_sentence_may_hold_another_one()
    {
        var nested = Prose.Write(UnitSystem.Metric, $"a {Prose.Write(UnitSystem.Us, $"b {25.4:mm} {Prose.Write(UnitSystem.Metric, $"c {1.0:mm}")}")} d {3}");

        Assert.Equal("a b 1.00 in c 1.0 mm d 3", nested);
    }

    [Fact]
    public void Culture_does_not_reach_texts()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "minus";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal("−1.5 mm and -3", Prose.Write(UnitSystem.Metric, $"{-1.5:mm} and {-3}"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
