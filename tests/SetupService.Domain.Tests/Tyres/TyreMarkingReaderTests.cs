using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class TyreMarkingReaderTests
{
    [Fact]
    public void A_full_marking_is_read_part_by_part()
    {
        var marking = Markings.Read("  225/45ZR17 (94Y) XL M+S AB ");

        Assert.Equal("225/45ZR17 (94Y) XL M+S AB", marking.Text);
        Assert.Equal(225, marking.NominalSectionWidthMm);
        Assert.Equal(45, marking.AspectRatioPct);
        Assert.Equal(TyreConstruction.Radial, marking.Construction);
        Assert.True(marking.IsZr);
        Assert.Equal(17, marking.RimDiameterIn);
        Assert.Equal(94, marking.LoadIndex);
        Assert.Null(marking.LoadIndexDual);
        Assert.Equal(670, marking.LoadCapacityKg);
        Assert.Equal('Y', marking.SpeedSymbol?.Letter);
        Assert.Equal(300, marking.MaximumSpeedKmh);
        Assert.True(marking.IsSpeedOpenEnded);
        Assert.Equal(LoadVersion.ExtraLoad, marking.LoadVersion);
        Assert.True(marking.HasMudAndSnowMark);
        Assert.True(marking.IsSnowTyre);
        Assert.Null(marking.IsRunFlat);
        Assert.False(marking.IsPMetric);
        Assert.Equal(["AB"], marking.UnreadMarks);
    }

    // The forms are the trade's and the standards' (ISO 4000-1 metric, P and LT sizes, high flotation): common practice, no source.
    [Theory]
    [InlineData("225/45R17 94W XL", "225/45R17 94W XL")]
    [InlineData("225/45 R 17 94 W", "225/45R17 94W")]
    [InlineData("225 / 45 r17 94w xl", "225/45R17 94W XL")]
    [InlineData("225/45R17 94WXL", "225/45R17 94W XL")]
    [InlineData("225/45R17 XL 94W", "225/45R17 94W XL")]
    [InlineData("225/45R17\t94W\u00a0XL", "225/45R17 94W XL")]
    [InlineData("225/45R17 94W RF", "225/45R17 94W XL")]
    [InlineData("225/45R17 94W Reinforced", "225/45R17 94W XL")]
    [InlineData("225/45R17 94W EXTRA LOAD", "225/45R17 94W XL")]
    [InlineData("225/45R17 94W XL XL", "225/45R17 94W XL")]
    [InlineData("225/45R17 91W SL", "225/45R17 91W")]
    [InlineData("225/45R17 91W LL", "225/45R17 91W LL")]
    [InlineData("225/45ZR17", "225/45ZR17")]
    [InlineData("225/45 zr 17 (94y)", "225/45ZR17 (94Y)")]
    [InlineData("225/45ZR17 94(Y)", "225/45ZR17 (94Y)")]
    [InlineData("225/45ZR17 ( 94 Y )", "225/45ZR17 (94Y)")]
    [InlineData("P225/60R16 97H", "P225/60R16 97H")]
    [InlineData("p 225/60r16 97h", "P225/60R16 97H")]
    [InlineData("P225/60R16 101H HL", "P225/60R16 101H HL")]
    [InlineData("LT265/70R17 121/118S", "LT265/70R17 121/118S")]
    [InlineData("265/70R17 LT 121/118S", "LT265/70R17 121/118S")]
    [InlineData("LT265/70R17 121/118S E", "LT265/70R17 121/118S LRE")]
    [InlineData("LT265/70R17C 112/109Q", "LT265/70R17 112/109Q LRC")]
    [InlineData("215/65R16C 109/107T", "215/65R16C 109/107T")]
    [InlineData("215/65R16C109/107T", "215/65R16C 109/107T")]
    [InlineData("215/65 R16 109 / 107 T c", "215/65R16C 109/107T")]
    [InlineData("225/75R16CP 118R", "225/75R16CP 118R")]
    [InlineData("195R14C 106/104S", "195R14C 106/104S")]
    [InlineData("HL 275/35R21 105Y", "HL275/35R21 105Y")]
    [InlineData("275/35R21 105Y HL", "HL275/35R21 105Y")]
    [InlineData("31x10.50R15LT 109Q", "31x10.50R15LT 109Q")]
    [InlineData("31X10,5 R15 LT", "31x10.50R15LT")]
    [InlineData("31 × 10.50 - 15 LT C 109Q", "31x10.50-15LT 109Q LRC")]
    [InlineData("205/55-16", "205/55-16")]
    [InlineData("205/55–16 91V", "205/55-16 91V")]
    [InlineData("205/55 D 16", "205/55-16")]
    [InlineData("205/55B16", "205/55B16")]
    [InlineData("235/85R16.5", "235/85R16.5")]
    [InlineData("235/85R16,5", "235/85R16.5")]
    [InlineData("205/55R16 91V RFT", "205/55R16 91V RFT")]
    [InlineData("205/55R16 91V runflat", "205/55R16 91V RFT")]
    [InlineData("205/55R16 91V RUN FLAT", "205/55R16 91V RFT")]
    [InlineData("205/55R16 91V RUN  -  FLAT", "205/55R16 91V RFT")]
    [InlineData("205/55R16 91V run-flat XL", "205/55R16 91V XL RFT")]
    [InlineData("205/55RF16 91V", "205/55R16 91V RFT")]
    [InlineData("205/55ZRF16 91W", "205/55ZR16 91W RFT")]
    [InlineData("205/55R16 91V M+S", "205/55R16 91V M+S")]
    [InlineData("205/55R16 91V M & S 3PMSF", "205/55R16 91V M+S 3PMSF")]
    [InlineData("205/55R16 91V m/s", "205/55R16 91V M+S")]
    [InlineData("205/55R16 91V MS", "205/55R16 91V M+S")]
    [InlineData("205/55R16 3pmsf 91V", "205/55R16 91V 3PMSF")]
    [InlineData("205/55R16 91V AB TL Q", "205/55R16 91V TL AB Q")]
    [InlineData("205/55R16 91V M", "205/55R16 91V M")]
    public void Markings_are_read_as_people_type_them(string text, string standardText)
    {
        var marking = Markings.Read(text);

        Assert.Equal(standardText, marking.StandardText);
        Assert.Equal(text.Trim(), marking.Text);
        Assert.Equal(marking, Markings.Read(standardText));
    }

    [Theory]
    [InlineData("225/45R17", LoadVersion.StandardLoad)]
    [InlineData("225/45R17 XL", LoadVersion.ExtraLoad)]
    [InlineData("225/45R17 LL", LoadVersion.LightLoad)]
    [InlineData("HL225/45R17", LoadVersion.HighLoad)]
    [InlineData("225/45R17C", LoadVersion.Commercial)]
    [InlineData("225/45R17CP", LoadVersion.CommercialCamper)]
    [InlineData("LT225/45R17", LoadVersion.LightTruck)]
    [InlineData("LT225/45R17 C", LoadVersion.LightTruck)]
    public void The_load_version_is_told_by_its_mark(string text, LoadVersion expected) =>
        Assert.Equal(expected, Markings.Read(text).LoadVersion);

    [Fact]
    public void Registered_sizes_and_service_descriptions_are_read()
    {
        // Read in the EU product register for energy labelling (EPREL).
        var read = 0;
        foreach (var row in CsvTable.Rows("service-descriptions.csv"))
        {
            var dual = row.NumberOrNull("load_index_dual") is { } index ? $"/{index}" : string.Empty;
            var text = $"{row["size"]} {row["load_index"]}{dual}{row["speed_symbol"]}";
            var marking = Markings.Read(text);
            Assert.Equal((int)row.Number("load_index"), marking.LoadIndex);
            Assert.Equal((int?)row.NumberOrNull("load_index_dual"), marking.LoadIndexDual);
            Assert.Equal(row.Number("speed_kmh"), marking.MaximumSpeedKmh);
            Assert.Equal(
                row["size"].EndsWith('C') ? LoadVersion.Commercial : row["size"].EndsWith("LT", StringComparison.Ordinal) ? LoadVersion.LightTruck : LoadVersion.StandardLoad,
                marking.LoadVersion);
            read++;
        }

        Assert.Equal(13, read);
    }

    [Fact]
    public void Markings_are_equal_when_they_stand_for_the_same_tyre()
    {
        var typed = Markings.Read("225/45 r 17 94w xl");
        var printed = Markings.Read("225/45R17 94W XL");

        Assert.Equal(printed, typed);
        Assert.Equal(printed.GetHashCode(), typed.GetHashCode());
        Assert.NotEqual(printed, Markings.Read("225/45R17 94W"));
        Assert.False(printed.Equals(null));
        Assert.Equal("225/45R17 94W XL", typed.ToString());
    }

    [Fact]
    public void Null_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentNullException>(() => TyreMarkingReader.Read(null!));
}
