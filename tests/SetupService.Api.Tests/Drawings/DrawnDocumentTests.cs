using System.Text.RegularExpressions;
using System.Xml.Linq;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Tests.Drawings;

/// <summary>The document: what is in it, and that nothing is in it that should not be.</summary>
public sealed partial class DrawnDocumentTests
{
    [Theory]
    [InlineData("current")]
    [InlineData("candidate")]
    [InlineData("hub")]
    [InlineData("surroundings")]
    [InlineData("gaps")]
    public void The_groups_are_there_also_where_nothing_is_known(string id)
    {
        var bare = new Axle();

        Assert.Equal("g", DrawnCar.Picture(DrawnCar.Fitting()).Find(id)!.Name.LocalName);
        Assert.Equal("g", DrawnCar.Picture(DrawnCar.Fitting(), bare).Find(id)!.Name.LocalName);
    }

    [Fact]
    public void A_screen_reader_is_led_to_title_and_description()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(8, 40));
        var labels = picture.Root.Attribute("aria-labelledby")!.Value.Split(' ').Select(id => picture.Find(id)!).ToList();

        Assert.Equal("img", picture.Root.Attribute("role")!.Value);
        Assert.Equal(["title", "desc"], labels.Select(label => label.Name.LocalName));
        Assert.Contains("8Jx17 ET40, 225/45R17 91W against 7.5Jx17 ET45", labels[0].Value, StringComparison.Ordinal);
        Assert.Contains("Inboard: 16.5 mm, at worst", labels[1].Value, StringComparison.Ordinal);
        Assert.Contains("At full lock:", labels[1].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_runs_and_nothing_is_fetched() => Harmlessness.Holds(DrawnCar.Picture(DrawnCar.Fitting(9.5, 52, "265/40R18 101Y", 10)));

    // The one character of a readable marking that XML would take for its own.
    [Fact]
    public void What_the_person_typed_is_text_and_nothing_else()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(marking: "225/45R17 91W M&S"));

        Assert.Contains("225/45R17 91W M&amp;S", picture.Source, StringComparison.Ordinal);
        Assert.Contains(picture.Texts, text => text.Value == "225/45R17 91W M&S");
    }

    [Fact]
    public void Every_number_is_plain()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(8.123456789, -33.333333333, spacerMm: 1e-7));
        string[] words = ["id", "class", "role", "aria-labelledby", "font-family", "font-weight", "text-anchor", "stroke-linejoin", "fill", "stroke", "paint-order", "xmlns"];

        Assert.All(
            picture.Root.DescendantsAndSelf().Attributes().Where(attribute => !words.Contains(attribute.Name.LocalName)),
            attribute => Assert.Matches(PlainNumbers(), attribute.Value));
    }

    [Fact]
    public void Inches_are_for_those_who_ask_for_them()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(offsetMm: 45 - 5.08, spacerMm: 2.54), units: UnitSystem.Us);

        // 14 + 5.08 + 2.54 = 21.62 mm = 0.85 in; the picture itself stays in mm.
        Assert.Contains(picture.Texts, text => text.Value == "0.85 in");
        Assert.DoesNotContain(" mm", picture.AllText, StringComparison.Ordinal);
        Assert.Equal(21.62, picture.X("strut") - picture.Reach("candidate").Right, 0.01);
    }

    [Fact]
    public void Without_the_present_fitting_its_group_is_empty_and_a_note_says_why()
    {
        var picture = DrawnCar.Picture(DrawnCar.Fitting(), DrawnCar.Axle() with { Tyre = null });

        Assert.Empty(picture.Find("current")!.Elements());
        Assert.Null(picture.Find("strut"));
        Assert.Contains("only the candidate is drawn", picture.Find("drawing-description")!.Value, StringComparison.Ordinal);
        Assert.Contains("Not known without the wheel and tyre fitted now: inboard, outboard", picture.Find("drawing-description")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rim_of_another_diameter_than_the_tyre_is_a_note_of_its_own()
    {
        var fitting = DrawnCar.Fitting();
        var picture = DrawnCar.Picture(fitting with { Wheel = fitting.Wheel with { RimDiameterIn = 18 } });

        Assert.Contains("The tyre is made for 17 in and the rim is 18 in: it must not be mounted.", picture.Find("drawing-description")!.Value, StringComparison.Ordinal);
        Assert.Contains("fails on rim diameter", picture.AllText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CarAxle.Front, "Front left wheel, seen from behind")]
    [InlineData(CarAxle.Rear, "Rear left wheel, seen from behind")]
    public void The_heading_names_the_wheel(CarAxle position, string heading) =>
        Assert.Contains(DrawnCar.Picture(DrawnCar.Fitting(), position: position).Texts, text => text.Value == heading);

    [GeneratedRegex(@"^[MLCZl ]*(-?\d+(\.\d{1,3})?[MLCZl ]*)+$")]
    private static partial Regex PlainNumbers();
}
