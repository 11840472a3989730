using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class RollingCircumferenceTests
{
    [Fact]
    public void Published_rolling_radii_are_reproduced_to_the_mm() =>

        // Quoted by a vehicle-theory textbook with the ETRTO factor 3.05. Two of the five need H rounded to whole mm first.
        Assert.All(CsvTable.Rows("rolling-radius.csv"), row =>
        {
            var marking = Markings.Read(row["size"]);
            Assert.Equal(
                row.Number("rolling_radius_mm"),
                Math.Round(RollingCircumference.Mm(marking.Dimensions, marking.Construction) / (2 * Math.PI)));
        });

    [Fact]
    public void A_205_55R16_covers_1927_6_mm()
    {
        // Worked by hand from the quoted factor and speed correction: 3.05 × 632; at 160 km/h 1 % more.
        var marking = Markings.Read("205/55R16");

        Assert.Equal(1927.6, marking.RollingCircumferenceMm, 1e-9);
        Assert.Equal(518.8, RollingCircumference.RevolutionsPerKm(marking.RollingCircumferenceMm), 0.05);
        Assert.Equal(1946.9, RollingCircumference.AtSpeedMm(marking.RollingCircumferenceMm, 160), 0.05);
        Assert.Equal(1927.6, RollingCircumference.AtSpeedMm(marking.RollingCircumferenceMm, 60), 1e-9);
    }

    [Theory]
    [InlineData("205/55R16", 3.05)]
    [InlineData("205/55D16", 2.99)]
    [InlineData("205/55B16", 2.99)]
    public void The_factor_goes_with_the_construction(string text, double factor)
    {
        // Quoted by the same textbook for radial and bias tyres; bias-belted counted with the latter, from memory.
        var marking = Markings.Read(text);

        Assert.Equal(factor * 632, marking.RollingCircumferenceMm, 1e-9);
    }

    [Fact]
    public void The_loaded_radius_sinks_with_load()
    {
        // By the definition of a rate: 632 / 2 − 4000 / 210.
        Assert.Equal(296.952, LoadedRadius.FromVerticalRateMm(632, 4000, 210), 5e-4);
        Assert.Equal(316, LoadedRadius.FromVerticalRateMm(632, 0, 210));
    }

    // Worked by hand: 225/45R17 has 432 + 2 × 101 = 634 mm of outer diameter (whole mm, as in the standard's tables), 317 mm of free radius;
    // 0.93 of it is 294.81 mm, within the 0.91 to 0.94 of the radial rows of GOST R 52899.
    [Fact]
    public void Without_load_or_load_index_the_standing_height_is_the_usual_share() =>
        Assert.Equal(294.81, LoadedRadius.StaticEstimateMm(Markings.Read("225/45R17"), null, null), 1e-9);
}
