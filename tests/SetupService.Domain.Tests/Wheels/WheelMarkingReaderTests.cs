using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class WheelMarkingReaderTests
{
    private static readonly Gen<string> LikeMarkings =
        Gen.OneOf(
            "8", "8.5", "½", "1/2", "J", "JJ", "B", "x", "×", "18", "17,5", " ", "ET", "IS", "OS", "+", "-", "44", "H2", "EH2+", "5x112",
            "5/112", "mm", "\u0000", "\ud800", "🛞")
        .Array[0, 12]
        .Select(string.Concat);

    private static readonly Gen<string> AnyText =
        Gen.OneOf<string>(LikeMarkings, Gen.String[Gen.Char, 0, 80], Gen.String[Gen.Char, 0, 10_000]);

    // Width, contour, x, diameter, hump: read in Automotive Engineering: Powertrain, Chassis System and Vehicle Body, p. 301
    // (DIN 7817); "15 x 6 J" read in BS ISO 4000-2:2021; inset and outset read in JIS D 4102:2007 (ISO 3911:2004). ET, bare
    // signs and fractions: common practice, no source.
    [Theory]
    [InlineData("5 J x 13 H2", 5, 13, "J", "H2", null, null)]
    [InlineData("15 x 6 J", 6, 15, "J", null, null, null)]
    [InlineData("8.5Jx18 ET44", 8.5, 18, "J", null, 44.0, null)]
    [InlineData("18x8.5 +44", 8.5, 18, null, null, 44.0, null)]
    [InlineData("8.5x18 ET44", 8.5, 18, null, null, 44.0, null)]
    [InlineData("8 1/2 J x 18 H2", 8.5, 18, "J", "H2", null, null)]
    [InlineData("8,5 J x 18 H2 ET 44 5x112", 8.5, 18, "J", "H2", 44.0, "5x112")]
    [InlineData("7½Jx17 ET45", 7.5, 17, "J", null, 45.0, null)]
    [InlineData("7 ½ J × 17 ET45", 7.5, 17, "J", null, 45.0, null)]
    [InlineData("6 3/4 J x 16 1/2", 6.75, 16.5, "J", null, null, null)]
    [InlineData("8.5Jx18 ET-12", 8.5, 18, "J", null, -12.0, null)]
    [InlineData("8.5Jx18 ET −12", 8.5, 18, "J", null, -12.0, null)]
    [InlineData("18X8.5J ET44", 8.5, 18, "J", null, 44.0, null)]
    [InlineData("18x8.5jj et44.5 mm", 8.5, 18, "JJ", null, 44.5, null)]
    [InlineData("9Jx18 EH2+ ET 35", 9, 18, "J", "EH2+", 35.0, null)]
    [InlineData("9Jx18 eh2 ET+35", 9, 18, "J", "EH2", 35.0, null)]
    [InlineData("7Jx16 CH IS44", 7, 16, "J", "CH", 44.0, null)]
    [InlineData("7Jx16 IS 0", 7, 16, "J", null, 0.0, null)]
    [InlineData("7Jx16 OS12", 7, 16, "J", null, -12.0, null)]
    [InlineData("7Jx16 5x114,3 FH2 ET0", 7, 16, "J", "FH2", 0.0, "5x114.3")]
    [InlineData("6Kx16", 6, 16, "K", null, null, null)]
    [InlineData("4.00B x 12", 4, 12, "B", null, null, null)]
    [InlineData("3Jx8 ET-150", 3, 8, "J", null, -150.0, null)]
    [InlineData("16Jx26 ET150", 16, 26, "J", null, 150.0, null)]
    [InlineData("10Jx10", 10, 10, "J", null, null, null)]
    [InlineData("12Jx10", 12, 10, "J", null, null, null)]
    public void Markings_are_read_as_people_type_them(
        string text, double widthIn, double diameterIn, string? contour, string? hump, double? offsetMm, string? boltCircle)
    {
        Assert.True(WheelMarkingReader.Read(text).TryGet(out var marking, out var fault), fault?.Message);
        Assert.Equal(text, marking.Text);
        Assert.Equal((widthIn, diameterIn), (marking.RimWidthIn, marking.RimDiameterIn));
        Assert.Equal((contour, hump, offsetMm), (marking.Contour, marking.Hump, marking.OffsetMm));
        Assert.Equal(boltCircle is null ? null : BoltCircleReader.Read(boltCircle).Value, marking.BoltCircle);
    }

    // A zero has no side: the answer writes 0, never -0.
    [Theory]
    [InlineData("7Jx16 ET-0")]
    [InlineData("7Jx16 OS0")]
    public void An_offset_of_zero_has_no_sign(string text)
    {
        Assert.True(WheelMarkingReader.Read(text).TryGet(out var marking, out _));

        Assert.Equal(0, marking.OffsetMm);
        Assert.False(double.IsNegative(marking.OffsetMm!.Value));
    }

    // Flange widths read in JIS D 4218:2021, Table 3: J 11.0, B 10.0, K 11.5 mm; J assumed is common practice, no source.
    [Theory]
    [InlineData("6.5Jx16 ET45", false, 187.1, 138.55, 48.55)]
    [InlineData("6.5x16 ET45", true, 187.1, 138.55, 48.55)]
    [InlineData("6.5JJx16 ET45", true, 187.1, 138.55, 48.55)]
    [InlineData("6Kx16 ET20", false, 175.4, 107.7, 67.7)]
    [InlineData("4Bx12 ET-10", false, 121.6, 50.8, 70.8)]
    public void Spacings_are_counted_over_the_flanges(
        string text, bool isAssumed, double overFlangesMm, double backspacingMm, double frontspacingMm)
    {
        var marking = WheelMarkingReader.Read(text).Value!;

        Assert.Equal(isAssumed, marking.IsFlangeAssumed);
        Assert.Equal(overFlangesMm, marking.OverFlangesMm, 1e-9);
        Assert.Equal(backspacingMm, marking.BackspacingMm!.Value, 1e-9);
        Assert.Equal(frontspacingMm, marking.FrontspacingMm!.Value, 1e-9);
    }

    [Fact]
    public void Without_an_offset_there_are_no_spacings()
    {
        var marking = WheelMarkingReader.Read("8.5Jx18").Value!;

        Assert.Null(marking.BackspacingMm);
        Assert.Null(marking.FrontspacingMm);
    }

    [Fact]
    public void No_text_makes_a_reader_throw_and_every_fault_points_into_the_text() =>
        AnyText.Sample(
            text =>
            {
                foreach (var fault in (ParseFault?[])
                    [WheelMarkingReader.Read(text).Fault, BoltCircleReader.Read(text).Fault, FastenerThreadReader.Read(text).Fault])
                {
                    if (fault is not null)
                    {
                        Assert.InRange(fault.Position, 0, text.Length);
                        Assert.Equal(fault.Part, text.Substring(fault.Position, fault.Part.Length));
                    }
                }
            },
            iter: 20_000);

    [Fact]
    public void A_marking_is_the_same_in_either_order_and_however_it_is_spaced() =>
        Gen.Select(Gen.Int[12, 64], Gen.Int[16, 52], Gen.Int[-150, 150], Gen.OneOf(string.Empty, " "), Gen.Bool, Gen.Bool).Sample(
            (quarterWidth, halfDiameter, offsetMm, gap, isDiameterFirst, isComma) =>
            {
                var (widthIn, diameterIn) = (quarterWidth / 4.0, halfDiameter / 2.0);
                var typed = isDiameterFirst
                    ? FormattableString.Invariant($"{diameterIn}{gap}x{gap}{widthIn}{gap}J")
                    : FormattableString.Invariant($"{widthIn}{gap}J{gap}x{gap}{diameterIn}");
                var text = FormattableString.Invariant($"{(isComma ? typed.Replace('.', ',') : typed)} ET{gap}{offsetMm}");

                Assert.True(WheelMarkingReader.Read(text).TryGet(out var marking, out var fault), fault?.Message);
                Assert.Equal(
                    new WheelMarking { Text = text, RimDiameterIn = diameterIn, RimWidthIn = widthIn, Contour = "J", OffsetMm = offsetMm },
                    marking);
            },
            iter: 5_000);
}
