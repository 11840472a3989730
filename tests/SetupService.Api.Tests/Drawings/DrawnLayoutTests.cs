using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Tests.Drawings;

/// <summary>The picture can be read: large enough, nothing over the edge, no text on another, enough contrast.</summary>
public sealed partial class DrawnLayoutTests
{
    private static readonly string[] Markings = ["225/45R17 91W", "165/70R10 72T", "335/20R22 100Y", "455/100R26 120Y", "lt225/75r17 116/113s M&S 3PMSF RFT QX ZK ABC FR JKL DOT NEWS"];

    private static readonly Gen<Fitting> AnyFitting = Gen
        .Select(Gen.Int[0, Markings.Length - 1], Gen.Double[3, 16], Gen.Double[-150, 150], Gen.Double[0, 80])
        .Select((marking, widthIn, offsetMm, spacerMm) => DrawnCar.Fitting(widthIn, offsetMm, Markings[marking], spacerMm));

    private static readonly Gen<Picture> AnyPicture = Gen
        .Select(AnyFitting, AnyFitting, Gen.Double[0, 200], Gen.Double[0, 200], Gen.Double[0, 200], Gen.Double[-3, 3])
        .Select((candidate, present, inboardMm, outboardMm, radialMm, camberDeg) => DrawnCar.Picture(
            candidate,
            DrawnCar.Axle(DrawnCar.Gaps with { InboardMm = inboardMm, OutboardMm = outboardMm, RadialMm = radialMm }, present),
            camber: new CamberChange(camberDeg, CamberChangePlace.StrutTop, null, null)));

    [Fact]
    public void Texts_keep_clear_of_the_edge_and_of_each_other() => AnyPicture.Sample(Legibility.TextsKeepClear);

    [Fact]
    public void Everything_drawn_is_inside_the_picture() => AnyPicture.Sample(picture =>
    {
        var view = picture.ViewBox;
        foreach (var group in (string[])["candidate", "current", "candidate-centre", "current-centre"])
        {
            var reach = picture.Reach(group);
            Assert.InRange(reach.Left, view[0], view[0] + view[2]);
            Assert.InRange(reach.Right, view[0], view[0] + view[2]);
            Assert.InRange(reach.Top, view[1], view[1] + view[3]);
        }
    });

    [Fact]
    public void A_profile_that_reaches_far_is_inside_the_picture_too()
    {
        var candidate = DrawnCar.Fitting();
        candidate = candidate with { Wheel = candidate.Wheel with { InnerProfile = [new(-380, 200), new(20, 180)] } };
        var axle = DrawnCar.Axle() with { Hub = new Hub { CaliperProfile = [new(-60, 150), new(370, 165)] } };
        var picture = DrawnCar.Picture(candidate, axle);
        var view = picture.ViewBox;

        Assert.Equal(380, picture.Reach("candidate-centre").Right, 3);
        Assert.Equal(-370, picture.Reach("hub").Left, 3);
        Assert.InRange(380, view[0], view[0] + view[2]);
        Assert.InRange(-370, view[0], view[0] + view[2]);
    }

    [Fact]
    public void Every_letter_has_twelve_pixels_where_the_picture_is_400_wide() => AnyPicture.Sample(picture => Legibility.LettersHaveAtLeast(12, picture));

    [Fact]
    public void An_ordinary_corner_is_drawn_about_560_mm_wide() =>
        Assert.InRange(DrawnCar.Picture(DrawnCar.Fitting(8, 40)).ViewBox[2], 560, 640);

    [Fact]
    public void A_marking_of_sixty_characters_is_all_there()
    {
        var marking = Markings[^1];
        Assert.Equal(60, marking.Length);

        var legend = DrawnCar.Picture(DrawnCar.Fitting(marking: marking)).Find("legend")!.Elements(Picture.Svg + "text").Select(text => text.Value);

        Assert.Contains(marking, string.Join(' ', legend), StringComparison.Ordinal);
    }

    // Contrast ratio and relative luminance: W3C, Web Content Accessibility Guidelines 2.2; 4.5 is its success criterion 1.4.3.
    [Fact]
    public void Every_ink_stands_out_from_its_paper_in_light_and_in_dark()
    {
        var sheets = Palettes().Matches(DrawnCar.Picture(DrawnCar.Fitting()).Source);

        Assert.Equal(2, sheets.Count);
        foreach (Match sheet in sheets)
        {
            var inks = Ink().Matches(sheet.Value).ToDictionary(match => match.Groups[1].Value, match => Luminance(match.Groups[2].Value));
            Assert.All(inks.Where(ink => ink.Key != "paper"), ink => Assert.True(Contrast(ink.Value, inks["paper"]) >= 4.5, ink.Key));
        }
    }

    // Black on white is 21 by the same guidelines.
    [Fact]
    public void The_contrast_measured_here_is_that_of_the_guidelines() => Assert.Equal(21, Contrast(Luminance("000000"), Luminance("ffffff")), 6);

    private static double Contrast(double one, double other) => (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);

    private static double Luminance(string hex)
    {
        return (0.2126 * Channel(0)) + (0.7152 * Channel(2)) + (0.0722 * Channel(4));

        double Channel(int start)
        {
            var share = int.Parse(hex.AsSpan(start, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
        }
    }

    [GeneratedRegex(@"\.drawing\{(--[a-z]+:#[0-9a-f]{6};)+\}")]
    private static partial Regex Palettes();

    [GeneratedRegex("--([a-z]+):#([0-9a-f]{6});")]
    private static partial Regex Ink();
}
