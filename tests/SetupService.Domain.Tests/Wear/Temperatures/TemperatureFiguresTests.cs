using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Wear.Temperatures;

public sealed class TemperatureFiguresTests
{
    [Fact]
    public void The_figures_are_those_worked_by_hand()
    {
        var tread = Tread(78, 82, 90);

        Assert.Equal(-12, TemperatureFigures.OuterLessInnerC(tread).Value);
        Assert.Equal(12, TemperatureFigures.WidestSpreadC(tread).Value);
        Assert.Equal(-2, TemperatureFigures.CentreLessShouldersC(tread).Value);
        Assert.Equal(250 / 3.0, TemperatureFigures.MeanC(tread).Value, 1e-12);

        // A degree a reading: a difference of two has √2, one less the mean of two √(1 + 1/2), and what all three share stays whole in their mean.
        Assert.Equal(1.5 * Math.Sqrt(2), TemperatureFigures.OuterLessInnerC(tread).StandardError, 1e-12);
        Assert.Equal(1.5 * Math.Sqrt(2), TemperatureFigures.WidestSpreadC(tread).StandardError, 1e-12);
        Assert.Equal(1.5 * Math.Sqrt(1.5), TemperatureFigures.CentreLessShouldersC(tread).StandardError, 1e-12);
        Assert.Equal(1.5, TemperatureFigures.MeanC(tread).StandardError);
    }

    // Inner 3 to 8 °C hotter, spread to 10 °C, centre within 3 °C: common practice, no source. Both edges belong to the range.
    // Beyond it only by more than the thermometer errs: a needle by 3.5 °C between shoulders, 3.0 °C for the middle (1.645 × 1.5 × √2, √1.5).
    [Theory]
    [InlineData(80, 83, 85, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(80, 81.5, 83, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(80, 84, 88, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(80, 84, 88.1, RangeVerdict.Unknown, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(80, 84, 91, RangeVerdict.Unknown, RangeVerdict.Unknown, RangeVerdict.Within)]
    [InlineData(80, 87, 94, RangeVerdict.Below, RangeVerdict.Above, RangeVerdict.Within)]
    [InlineData(80, 81, 82, RangeVerdict.Unknown, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(90, 85, 80, RangeVerdict.Above, RangeVerdict.Within, RangeVerdict.Within)]
    [InlineData(80, 88, 85, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Unknown)]
    [InlineData(80, 90, 85, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Above)]
    [InlineData(80, 78, 85, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Unknown)]
    [InlineData(80, 75.9, 85, RangeVerdict.Within, RangeVerdict.Within, RangeVerdict.Below)]
    public void Each_figure_is_held_to_its_range(double outerC, double centreC, double innerC, RangeVerdict across, RangeVerdict spread, RangeVerdict centre)
    {
        var findings = TemperatureFigures.Judge(Tread(outerC, centreC, innerC));

        Assert.Equal([across, spread, centre, RangeVerdict.Unknown], findings.Select(one => one.Verdict));
    }

    // Two readings of a needle differ by 1.645 × √2 × 1 = 2.3 °C nine times in ten, of infrared by 5.8 °C.
    [Theory]
    [InlineData(15, Thermometer.Probe, true)]
    [InlineData(10, Thermometer.Probe, false)]
    [InlineData(15, Thermometer.Infrared, true)]
    [InlineData(13, Thermometer.Infrared, false)]
    public void A_thermometer_settles_what_lies_beyond_its_error(double hotterInside, Thermometer by, bool isClear) =>
        Assert.Equal(isClear, TemperatureFigures.Judge(Tread(80, 85, 80 + hotterInside) with { By = by })[0].IsClear);

    [Fact]
    public void After_two_minutes_nothing_is_judged()
    {
        var late = Tread(80, 90, 99) with { SecondsAfterLap = 121, WindowC = new(70, 90) };

        Assert.All(TemperatureFigures.Judge(late), one => Assert.Equal(RangeVerdict.Unknown, one.Verdict));
        Assert.Contains("too far to show", TreadWords.Describe(late, TemperatureFigures.Judge(late)[0], UnitSystem.Metric), StringComparison.Ordinal);
        Assert.All(TemperatureFigures.Judge(late with { SecondsAfterLap = 120 }), one => Assert.NotEqual(RangeVerdict.Unknown, one.Verdict));
    }

    [Fact]
    public void The_words_quote_the_case_in_either_units()
    {
        var tread = Tread(74, 79, 86) with { WindowC = new(70, 84) };
        var findings = TemperatureFigures.Judge(tread);

        Assert.Equal(
            "The inner shoulder is 12 °C hotter than the outer one (±3.5 °C for the thermometer). More than the usual 3 °C to 8 °C: the inner shoulder works too hard, as with too much negative camber or toe-out.",
            TreadWords.Describe(tread, findings[0], UnitSystem.Metric));
        Assert.StartsWith("The inner shoulder is 21.6 °F hotter than the outer one (±6.3 °F", TreadWords.Describe(tread, findings[0], UnitSystem.Us), StringComparison.Ordinal);
        Assert.Equal(
            "The tread averages 79.7 °C (±2.5 °C). That is in its range of 70 °C to 84 °C, but its hottest place, at 86 °C, is beyond.",
            TreadWords.Describe(tread, findings[3], UnitSystem.Metric));
    }

    [Theory]
    [InlineData(60.0, "It had cooled for 60 s; on the lap it was hotter.")]
    [InlineData(null, "How long it had cooled is not given; on the lap it was hotter.")]
    public void A_cold_tread_says_how_long_it_cooled(double? afterS, string expected)
    {
        var tread = Tread(72, 75, 77, afterS: afterS) with { WindowC = new(80, 95) };

        Assert.Contains(expected, TreadWords.Describe(tread, TemperatureFigures.Judge(tread)[3], UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Turning_the_tyre_on_its_rim_turns_the_sign_and_nothing_else() => Gen.Select(Gen.Double[-40, 250], Gen.Double[-40, 250], Gen.Double[-40, 250]).Sample((outer, centre, inner) =>
    {
        var (one, turned) = (Tread(outer, centre, inner), Tread(inner, centre, outer));

        Assert.Equal(TemperatureFigures.OuterLessInnerC(one).Value, -TemperatureFigures.OuterLessInnerC(turned).Value);
        Assert.Equal(TemperatureFigures.WidestSpreadC(one), TemperatureFigures.WidestSpreadC(turned));
        Assert.True(TemperatureFigures.WidestSpreadC(one).Value >= Math.Abs(TemperatureFigures.OuterLessInnerC(one).Value));
        Assert.Equal(TemperatureFigures.CentreLessShouldersC(one).Value, TemperatureFigures.CentreLessShouldersC(turned).Value, 1e-9);
    });

    internal static TreadReading Tread(double outerC, double centreC, double innerC, WheelPosition at = WheelPosition.FrontLeft, double? afterS = null) =>
        new(at, new(outerC, centreC, innerC), Thermometer.Probe, afterS, null);
}
