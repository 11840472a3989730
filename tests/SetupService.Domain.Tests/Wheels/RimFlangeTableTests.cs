using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class RimFlangeTableTests
{
    [Fact]
    public void Every_contour_has_the_flange_of_the_standard()
    {
        // Read in JIS D 4218:2021, Table 3, which is based on ISO 4000-2:2013.
        var rows = CsvTable.Rows("rim-flange.csv");

        Assert.All(rows, row => Assert.Equal(
            new RimFlange(
                row["contour"], row.Number("width_min"), row.Number("height"), row.Number("height_tolerance"), row.Number("radius_min")),
            RimFlangeTable.Find(row["contour"])));
        Assert.Equal(
            rows.Select(row => row["contour"]).Distinct(),
            RimFlangeTable.All.Select(flange => flange.Contour));
    }

    [Theory]
    [InlineData("j", true)]
    [InlineData("JJ", false)]
    [InlineData("", false)]
    public void A_contour_is_found_in_either_case(string contour, bool expected) =>
        Assert.Equal(expected, RimFlangeTable.Find(contour) is not null);
}
