using CsCheck;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Tyres;

public class TyreMarkingTableTests
{
    private static readonly IReadOnlyList<TypedMarking> Table = TypedMarkings.Rows("tyre-markings.csv");

    public static TheoryData<string> Texts => [.. Table.Select(row => row.Text)];

    // The source of each form stands in the table, dimensions are worked there by d + 2H (a lecture note's rule) and 82 % (UK MOT inspection manual).
    [Theory]
    [MemberData(nameof(Texts))]
    public void Every_marking_of_the_table_means_what_it_says_there(string text)
    {
        var row = Table.Single(one => one.Text == text);
        if (row.Standard is not { } standard)
        {
            var fault = Markings.Fault(text);
            Assert.Equal(row.RefusedPart, fault.Part);
            Assert.Equal(fault.Part, text.Substring(fault.Position, fault.Part.Length));
            return;
        }

        var marking = Markings.Read(text);
        Assert.Equal(standard, marking.StandardText);
        Assert.Equal(row.Number("widthMm")!.Value, marking.NominalSectionWidthMm, 1e-6);
        Assert.Equal(row.Number("aspectPct"), marking.AspectRatioPct);
        Assert.Equal(row.Number("rimIn")!.Value, marking.RimDiameterIn, 1e-5);
        Assert.Equal(row.Number("loadIndex"), marking.LoadIndex);
        Assert.Equal(row.Cells["speedSymbol"], marking.SpeedSymbol?.Letter.ToString() ?? "");
        Assert.Equal(row.Cells["overallMm"] != "unknown", marking.HasDimensions);
        if (marking.HasDimensions)
        {
            Assert.Equal(row.Number("overallMm")!.Value, marking.Dimensions.OverallDiameterMm);
        }
    }

    [Fact]
    public void The_tables_are_as_long_as_the_pages_say_and_each_row_has_a_source()
    {
        var wheels = TypedMarkings.Rows("wheel-markings.csv");

        // The counts that docs/methods/tyre-marking.md and wheel-marking.md give.
        Assert.Equal((371, 27), (Table.Count, Table.Count(row => row.Standard is null)));
        Assert.Equal((199, 25), (wheels.Count, wheels.Count(row => row.Standard is null)));
        Assert.All(Table, row => Assert.NotEmpty(row.Cells["source"]));
    }

    [Fact]
    public void The_usual_spelling_is_read_as_the_same_marking_again() => Assert.All(
        Table.Where(row => row.Standard is not null),
        row =>
        {
            var once = Markings.Read(row.Text);
            var again = Markings.Read(once.StandardText);
            Assert.Equal(once.StandardText, again.StandardText);
            Assert.Equal(
                (once.LoadIndex, once.LoadIndexDual, once.SecondServiceDescription, once.LoadRange, once.PlyRating, once.IsTubeless, once.IsRunFlat),
                (again.LoadIndex, again.LoadIndexDual, again.SecondServiceDescription, again.LoadRange, again.PlyRating, again.IsTubeless, again.IsRunFlat));
            Assert.Equal(
                (once.LoadVersion, once.IsTemporarySpare, once.SpeedInSize, once.SpeedAboveKmh, once.HasMudAndSnowMark, once.HasMountainMark, once.IsZr),
                (again.LoadVersion, again.IsTemporarySpare, again.SpeedInSize, again.SpeedAboveKmh, again.HasMudAndSnowMark, again.HasMountainMark, again.IsZr));
            Assert.Equal(once.UnreadMarks, again.UnreadMarks);
        });

    // One change to a row of the table: a character taken out, doubled, swapped or put in anywhere.
    [Fact]
    public void Mutated_rows_are_read_or_refused_by_name_and_what_is_read_stays()
    {
        const string alphabet = "0123456789/.,-+*()xXRCTPLTHSEVYWMZ rlq\"'×–\u00a0;|½★Ω\u0000\ud800";
        Gen.Select(Gen.Int[0, Table.Count - 1], Gen.Int[0, 60], Gen.Int[0, 3], Gen.Int[0, alphabet.Length - 1]).Sample(
            (index, at, kind, letter) =>
            {
                var text = Table[index].Text;
                at = Math.Min(at, text.Length);
                var mutated = kind switch
                {
                    0 when at < text.Length => text.Remove(at, 1),
                    1 when at < text.Length => text.Insert(at, text[at].ToString()),
                    2 when at + 1 < text.Length => text[..at] + text[at + 1] + text[at] + text[(at + 2)..],
                    _ => text.Insert(at, alphabet[letter].ToString()),
                };
                if (TyreMarkingReader.Read(mutated).TryGet(out var marking, out var fault))
                {
                    Assert.Equal(marking.StandardText, Markings.Read(marking.StandardText).StandardText);
                    return;
                }

                Assert.Equal(fault.Part, mutated.Substring(fault.Position, fault.Part.Length));
            },
            iter: 40_000);
    }

    [Theory]
    [InlineData("LT265/70R17 121/118S E", 'E', 10)]
    [InlineData("LT265/70R17 121/118S 8PR", 'D', 8)]
    [InlineData("6.00-16 6 ply", 'C', 6)]
    [InlineData("205/55R16 91V", null, null)]
    public void Load_range_and_plies_stand_for_each_other(string text, char? range, int? plies)
    {
        var marking = Markings.Read(text);

        // Several lists, concordant: C 6, D 8, E 10 plies.
        Assert.Equal((range, plies), (marking.LoadRange, marking.PlyRating));
    }

    [Theory]
    [InlineData("205/55R16 91V RFT", true)]
    [InlineData("205/55RF16 91V", true)]
    [InlineData("205/55R16 91V QZX", null)]
    [InlineData("205/55R16 91V *", false)]
    [InlineData("205/55R16 91V Q7", false)]
    [InlineData("205/55R16 91V", false)]
    public void Letters_that_may_be_a_makers_code_leave_open_whether_it_runs_flat(string text, bool? expected) =>
        Assert.Equal(expected, Markings.Read(text).IsRunFlat);

    // SR and HR stand for 180 and 210 km/h (the symbols of the French order of 24 October 1994); VR for more than 210 (handbook, p. 289), ZR for more than 240.
    [Theory]
    [InlineData("155SR13", 180.0, null)]
    [InlineData("165HR14", 210.0, null)]
    [InlineData("185VR15", null, 210.0)]
    [InlineData("225/45ZR17", null, 240.0)]
    [InlineData("205/60VR15 91V", 240.0, null)]
    public void Speed_letters_in_the_size_promise_a_speed(string text, double? maximumKmh, double? aboveKmh)
    {
        var marking = Markings.Read(text);

        Assert.Equal((maximumKmh, aboveKmh), (marking.MaximumSpeedKmh, marking.SpeedAboveKmh));
    }

    [Fact]
    public void A_second_service_description_stands_beside_the_first()
    {
        var marking = Markings.Read("225/70R15C 112/110S (115N)");

        // Index 112 is 1120 kg and 115 is 1215 kg; N is 140 km/h (French order of 24 October 1994, Annex I).
        Assert.Equal((112, 110, 1120.0), (marking.LoadIndex, marking.LoadIndexDual, marking.LoadCapacityKg));
        Assert.Equal((115, null, 'N'), (marking.SecondServiceDescription!.LoadIndex, marking.SecondServiceDescription.LoadIndexDual, marking.SecondServiceDescription.SpeedSymbol.Letter));
        Assert.Equal(1215, marking.SecondServiceDescription.LoadCapacityKg);
    }

    // T125/80R16: owners' manuals quote 23.9 in, which is 607 mm; 406 + 2·100 = 606 mm.
    [Fact]
    public void A_temporary_spare_has_the_geometry_of_its_size()
    {
        var marking = Markings.Read("T125/80R16");

        Assert.True(marking.IsTemporarySpare);
        Assert.Equal(23.9 * 25.4, marking.Dimensions.OverallDiameterMm, 1.5);
        Assert.Null(LoadCapacity.ReferencePressureKpa(marking));
    }

    [Theory]
    [InlineData("6.00-16")]
    [InlineData("165-380")]
    public void A_size_without_a_rule_has_no_dimensions(string text)
    {
        var marking = Markings.Read(text);

        Assert.False(marking.HasDimensions);
        Assert.Throws<InvalidOperationException>(() => marking.Dimensions);
        Assert.Throws<InvalidOperationException>(() => marking.PermittedRimWidth);
        Assert.Throws<InvalidOperationException>(() => marking.RollingCircumferenceMm);
    }

    [Theory]
    [InlineData("190/65R390", 390 / 25.4, true)]
    [InlineData("190/65R390", 15.35, true)]
    [InlineData("190/65R390", 15.5, false)]
    [InlineData("190/65R390", 15, false)]
    [InlineData("205/55R16", 16, true)]
    [InlineData("205/55R16", 16.5, false)]
    public void A_rim_in_mm_fits_no_rim_of_an_inch_code(string text, double rimIn, bool expected) =>
        Assert.Equal(expected, Markings.Read(text).FitsRimDiameter(rimIn));
}
