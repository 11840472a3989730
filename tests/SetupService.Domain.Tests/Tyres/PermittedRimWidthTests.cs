using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class PermittedRimWidthTests
{
    [Fact]
    public void Recalled_sizes_are_listed() =>

        // From memory: no published list could be read.
        Assert.All(CsvTable.Rows("permitted-rim-width-recalled.csv"), row =>
        {
            var marking = Markings.Read(row["size"]);
            Assert.Equal(row.Number("measuring_rim_in"), marking.Dimensions.MeasuringRimWidthIn);
            Assert.Equal(
                new PermittedRimWidth(row.Number("minimum_in"), row.Number("maximum_in"), true, PermittedRimWidthTable.ListedSource),
                marking.PermittedRimWidth);
        });

    [Theory]
    [InlineData("215/45R17", 6.5, 8.0)]
    [InlineData("205/55R15", 6.0, 7.5)]
    [InlineData("31x10.50R15LT", 8.0, 9.5)]
    public void Other_sizes_follow_the_pattern_and_say_so(string text, double minimumIn, double maximumIn) =>
        Assert.Equal(
            new PermittedRimWidth(minimumIn, maximumIn, false, PermittedRimWidthTable.PatternSource),
            Markings.Read(text).PermittedRimWidth);

    [Theory]
    [InlineData(6.5, false)]
    [InlineData(7.0, true)]
    [InlineData(8.5, true)]
    [InlineData(9.0, false)]
    public void Both_limits_are_included(double rimWidthIn, bool expected) =>
        Assert.Equal(expected, Markings.Read("225/45R17").PermittedRimWidth.Includes(rimWidthIn));
}
