using SetupService.Api.Drawings.Corners;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Tests.Drawings.Corners;

/// <summary>What is in the document of the corner views, and in its words.</summary>
public sealed class CornerDocumentTests
{
    private static readonly CornerViews Bare = new()
    {
        Heading = "Measured corner",
        Points = [],
        Links = [],
        Wheel = WheelPlane.At(new(0, 700, 290), -1.5, 0.2),
        LoadedRadiusMm = 290,
    };

    [Theory]
    [InlineData("front")]
    [InlineData("side")]
    [InlineData("wheel")]
    [InlineData("links")]
    [InlineData("axis")]
    [InlineData("instantCentre")]
    [InlineData("rollCentre")]
    [InlineData("side-wheel")]
    [InlineData("side-links")]
    [InlineData("side-axis")]
    [InlineData("side-instantCentre")]
    public void The_groups_are_there_also_where_nothing_is_known(string id)
    {
        Assert.Equal("g", SampleCorner.Draw().Group(id).Name.LocalName);
        Assert.Equal("g", SampleCorner.Draw(Bare).Group(id).Name.LocalName);
    }

    [Fact]
    public void It_is_a_picture_and_nothing_else()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { Heading = "Tarn <front> & \"left\"" });

        Harmlessness.Holds(picture);
        Harmlessness.IsDescribed(picture);
        Harmlessness.IdsAreSingle(picture);
        Assert.Contains(picture.Texts, text => text.Value == "Tarn <front> & \"left\"");
    }

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var description = SampleCorner.Draw().Description;

        Assert.Contains("seen from behind, outboard on the left", description, StringComparison.Ordinal);
        Assert.Contains("seen from the left, forward on the left", description, StringComparison.Ordinal);
        Assert.Contains("Camber 0.00°, toe 0.00°.", description, StringComparison.Ordinal);
        Assert.Contains("Scrub radius 26.0 mm, mechanical trail 38.0 mm.", description, StringComparison.Ordinal);
        Assert.Contains("Roll centre 75.0 mm above the ground.", description, StringComparison.Ordinal);
        Assert.Contains("Seen from behind, the instant centre is 1 m inboard of the contact, 100.0 mm above the ground.", description, StringComparison.Ordinal);
        Assert.Contains("Seen from the side, the instant centre is 2.4 m rearward of the contact, 240.0 mm above the ground.", description, StringComparison.Ordinal);
        Assert.Contains("3 lower ball joint (20.0 mm, 712.0 mm, 150.0 mm)", description, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_point_is_numbered_in_both_views_and_named_once()
    {
        var picture = SampleCorner.Draw();
        var key = picture.TextsOf("key").ToList();

        for (var i = 0; i < SampleCorner.Views.Points.Count; i++)
        {
            Assert.Contains($"{i + 1}", Numbers(picture, "numbers"));
            Assert.Contains($"{i + 1}", Numbers(picture, "side-numbers"));
            Assert.Single(key, text => text == SampleCorner.Views.Points[i].Name);
        }

        static IEnumerable<string> Numbers(SvgPicture picture, string id) => picture.TextsOf(id).SelectMany(text => text.Split(", "));
    }

    [Fact]
    public void Kinds_of_lines_are_named_and_differ_by_more_than_colour()
    {
        var picture = SampleCorner.Draw();
        var samples = picture.Group("legend").Elements(SvgPicture.Svg + "line").Take(5)
            .Select(line => (line.Attribute("stroke-dasharray")?.Value, line.Attribute("stroke-width")!.Value)).ToList();

        Assert.Equal(samples.Distinct(), samples);
        Assert.Contains("tie rod", picture.TextsOf("legend"));
        Assert.Contains("steering axis", picture.TextsOf("legend"));
        Assert.DoesNotContain("strut", picture.TextsOf("legend"));
    }

    [Fact]
    public void What_is_indicative_and_what_is_missing_is_said()
    {
        var picture = SampleCorner.Draw(Bare);

        Assert.Contains("The tyre's width is indicative.", picture.Description, StringComparison.Ordinal);
        Assert.Contains("No steering axis", picture.Description, StringComparison.Ordinal);
        Assert.DoesNotContain("The tyre's width", SampleCorner.Draw().Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_steered_wheel_says_that_its_offsets_look_shorter()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { Wheel = WheelPlane.At(SampleCorner.WheelCentre, 0, -20) });

        Assert.Contains("with the wheel steered the views show them shortened", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void An_axis_that_lies_level_is_left_out()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { Axis = new SteeringAxis(new(0, 700, 300), Vector3.Forward) });

        Assert.Empty(picture.Group("axis").Elements());
        Assert.DoesNotContain("NaN", picture.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Inches_are_for_those_who_ask_for_them()
    {
        var picture = SampleCorner.Draw(units: UnitSystem.Us);

        // 26 mm = 1.02 in; 2400 mm = 7.87 ft. The picture itself stays in mm.
        Assert.Contains("scrub radius 1.02 in", picture.TextsOf("axis"));
        Assert.Contains("7.87 ft rearward", picture.TextsOf("side-instantCentre"));
        Assert.DoesNotContain(" mm", picture.AllText, StringComparison.Ordinal);
        Assert.Equal(SampleCorner.Draw().ViewBox, picture.ViewBox);
    }
}
