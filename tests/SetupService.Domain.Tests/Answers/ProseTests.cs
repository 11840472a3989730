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

    // Worked by hand with the definitions above: half away from zero, a pressure to be set is rounded up, a needless zero is left out where the
    // remarks say so; 8 mm / 25.4 · 32 = 10.0787 thirty-seconds, 60 m / 0.3048 = 196.85 ft, 241.5 kPa / 6.894757 = 35.0266 psi, 57.15 mm = 2.25 in.
    [Theory]
    [InlineData("mm", 12.35, "12.4 mm", "0.49 in")]
    [InlineData("gap", 25.4, "25.4 mm", "1 in")]
    [InlineData("gap", 5.04, "5 mm", "0.2 in")]
    [InlineData("fit", 57.15, "57.15 mm", "2.25 in")]
    [InlineData("fit", 57.126, "57.13 mm", "2.249 in")]
    [InlineData("fit", 1.0, "1 mm", "0.039 in")]
    [InlineData("tread", 3.96875, "4.0 mm", "5/32 in")]
    [InlineData("tread", 8.0, "8.0 mm", "10.1/32 in")]
    [InlineData("treadFine", 8.0, "8 mm", "10.08/32 in")]
    [InlineData("treadFine", 1.2344, "1.23 mm", "1.56/32 in")]
    [InlineData("kg", 615.06, "615.1 kg", "1356 lb")]
    [InlineData("kg", 615.04, "615 kg", "1356 lb")]
    [InlineData("kg", 9.6, "9.6 kg", "21.2 lb")]
    [InlineData("kPaUp", 241.5, "242 kPa", "35.1 psi")]
    [InlineData("kPaUp", 200.000000001, "200 kPa", "29.1 psi")]
    [InlineData("kPaUp", 241.31650526089264, "242 kPa", "35.0 psi")]
    [InlineData("kPa", 240.6, "241 kPa", "34.9 psi")]
    [InlineData("kPa", 240.5, "241 kPa", "34.9 psi")]
    [InlineData("kmh", 160.9344, "160.9 km/h", "100 mph")]
    [InlineData("kmh", 160.04, "160 km/h", "99 mph")]
    [InlineData("km", 1609.344, "1609 km", "1000 miles")]
    [InlineData("km", 12345.6, "12346 km", "7671 miles")]
    [InlineData("m", 60.0, "60 m", "197 ft")]
    [InlineData("m", 45.26, "45.3 m", "148 ft")]
    [InlineData("cDiff", 1.26, "1.3 °C", "2.3 °F")]
    [InlineData("pct", 12.346, "12.35 %", "12.35 %")]
    [InlineData("pct0", 45.5, "46 %", "46 %")]
    [InlineData("angle", -1.26, "−1.3°", "−1.3°")]
    [InlineData("deg", 0.126, "0.13°", "0.13°")]
    [InlineData("in", 17.1254, "17.125 in", "17.125 in")]
    [InlineData("n", 1.236, "1.24", "1.24")]
    [InlineData("n", 8.9e12, "8900000000000", "8900000000000")]
    [InlineData("pct0", 8.9e15, "8900000000000000 %", "8900000000000000 %")]
    [InlineData("pct0", 9.5e15, "9.500E+015 %", "9.500E+015 %")]
    public void Each_quantity_has_its_unit_and_its_digits(string format, double value, string metric, string us)
    {
        Assert.Equal(metric, Written(UnitSystem.Metric));
        Assert.Equal(us, Written(UnitSystem.Us));

        string Written(UnitSystem units)
        {
            var prose = new Prose(0, 1, units);
            prose.AppendFormatted(value, format);
            return Prose.Write(units, ref prose);
        }
    }

    [Fact]
    public void A_long_text_is_whole()
    {
        var text = new string('a', 3000);

        Assert.Equal($"{text} 1.0 mm {text}", Prose.Write(UnitSystem.Metric, $"{text} {1.0:mm} {text}"));
    }

    [Theory]
    [InlineData("needs a", "a")]
    [InlineData("needs a and b", "a", "b")]
    [InlineData("needs a, b and c", "a", "b", "c")]
    public void What_is_missing_is_listed(string expected, params string[] missing) => Assert.Equal(expected, Needs.Describe(missing));

    [Fact]
    public void Six_sentences_may_stand_in_each_other() =>
        Assert.Equal("1 2 3 4 5 6", Prose.Write(UnitSystem.Metric,
            $"1 {Prose.Write(UnitSystem.Metric, $"2 {Prose.Write(UnitSystem.Metric, $"3 {Prose.Write(UnitSystem.Metric, $"4 {Prose.Write(UnitSystem.Metric, $"5 {Prose.Write(UnitSystem.Metric, $"{6}")}")}")}")}")}"));

    // A string of 6 characters takes 40 bytes at most with its head; the buffer of a sentence takes 2,048 and is taken again.
    [Fact]
    public void A_sentence_costs_its_string_alone()
    {
        for (var warm = 0; warm < 10; warm++) Prose.Write(UnitSystem.Metric, $"{1.5:mm}");
        var before = GC.GetAllocatedBytesForCurrentThread();

        for (var time = 0; time < 100; time++) Prose.Write(UnitSystem.Metric, $"{1.5:mm}");

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 100, 100 * 64);
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
