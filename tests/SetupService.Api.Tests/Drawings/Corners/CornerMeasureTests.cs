using System.Xml.Linq;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Tests.Drawings.Corners;

/// <summary>What is drawn stands where the geometry says: the view from behind has x = −y and y = −z.</summary>
public sealed class CornerMeasureTests
{
    [Fact]
    public void Points_stand_where_they_are_given()
    {
        var links = SampleCorner.Draw().Group("links");
        var squares = links.Elements(SvgPicture.Svg + "rect").Select(Middle).ToList();
        var discs = links.Elements(SvgPicture.Svg + "circle").Select(At).ToList();

        foreach (var point in SampleCorner.Views.Points)
        {
            var drawn = point.IsOnBody ? squares : discs;
            Assert.Contains(drawn, at => Near(at, (-point.Position.Y, -point.Position.Z)));
        }
    }

    [Fact]
    public void The_view_from_the_side_has_forward_on_the_left_and_the_same_scale()
    {
        var links = SampleCorner.Draw().Group("side-links");
        var squares = links.Elements(SvgPicture.Svg + "rect").Select(Middle).ToList();

        // Front and rear pivot of the lower arm: 330 mm apart along the car, 10 mm in height.
        Assert.Equal(330, squares[1].X - squares[0].X, 0.01);
        Assert.Equal(-10, squares[1].Y - squares[0].Y, 0.01);
    }

    [Fact]
    public void Links_join_their_points()
    {
        var lines = SampleCorner.Draw().Group("links").Elements(SvgPicture.Svg + "line").ToList();

        foreach (var link in SampleCorner.Views.Links)
        {
            var (from, to) = (link.From.Position, link.To.Position);
            Assert.Contains(lines, line => Near(Start(line), (-from.Y, -from.Z)) && Near(End(line), (-to.Y, -to.Z)));
        }
    }

    [Fact]
    public void The_wheel_is_as_high_as_its_loaded_diameter_and_as_wide_as_its_tyre()
    {
        var outline = SvgPicture.Points(SampleCorner.Draw().Group("wheel").Elements(SvgPicture.Svg + "path").First());

        Assert.Equal(2 * SampleCorner.RadiusMm, outline.Max(point => point.Y) - outline.Min(point => point.Y), 0.01);
        Assert.Equal(220, outline.Max(point => point.X) - outline.Min(point => point.X), 0.01);
        Assert.Equal(0, outline.Max(point => point.Y), 0.01);
    }

    [Fact]
    public void A_cambered_wheel_leans()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { Wheel = WheelPlane.At(SampleCorner.WheelCentre, -3, 0) });
        var plane = SvgPicture.Points(picture.Group("wheel").Elements(SvgPicture.Svg + "path").Last());
        var (top, bottom) = (plane.MinBy(point => point.Y), plane.MaxBy(point => point.Y));

        // Negative camber: the top towards the car, which is to the right.
        Assert.Equal(Math.Tan(double.DegreesToRadians(3)), (top.X - bottom.X) / (bottom.Y - top.Y), 0.0001);
    }

    [Fact]
    public void Scrub_radius_and_trail_are_dimensioned_on_the_ground()
    {
        var picture = SampleCorner.Draw();
        var offsets = SampleCorner.Views.Axis!.Value.Offsets(SampleCorner.Views.Wheel, SampleCorner.Views.Wheel.Contact(SampleCorner.RadiusMm));

        // The axis through (20, 712, 150) and (−16, 688, 450) meets the ground at (38, 724): 26 mm inboard, 38 mm ahead.
        Assert.Equal(26, offsets.ScrubRadiusMm, 0.001);
        Assert.Equal(38, offsets.MechanicalTrailMm, 0.001);
        Assert.Equal(26, ExtensionLines(picture.Group("axis")), 0.01);
        Assert.Equal(38, ExtensionLines(picture.Group("side-axis")), 0.01);
        Assert.Contains("scrub radius 26.0 mm", picture.TextsOf("axis"));
        Assert.Contains("mechanical trail 38.0 mm", picture.TextsOf("side-axis"));
    }

    // The line from the contact to the instant centre crosses the centre plane at the roll centre: the construction's definition.
    [Fact]
    public void The_line_to_the_instant_centre_goes_through_the_roll_centre()
    {
        var picture = SampleCorner.Draw();
        var line = picture.Group("instantCentre").Elements(SvgPicture.Svg + "line").First();
        var (from, to) = (Start(line), End(line));
        var crossing = from.Y + ((0 - from.X) / (to.X - from.X) * (to.Y - from.Y));
        var rollCentre = At(Assert.Single(picture.Group("rollCentre").Elements(SvgPicture.Svg + "circle")));

        Assert.True(Near((0, -75), rollCentre));
        Assert.Equal(-75, crossing, 0.02);
        Assert.Contains("75.0 mm", picture.TextsOf("rollCentre"));
    }

    [Fact]
    public void An_instant_centre_within_the_view_stands_in_its_place()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { FrontInstantCentre = new(250, 140) });

        Assert.True(Near((-250, -140), At(Assert.Single(picture.Group("instantCentre").Elements(SvgPicture.Svg + "circle")))));
        Assert.Equal(["instant centre"], picture.TextsOf("instantCentre"));
    }

    [Theory]
    [InlineData(-250_000, 300, "250.75 m inboard")]
    [InlineData(-3000, 300, "3.75 m inboard")]
    [InlineData(4000, -200, "3.25 m outboard")]
    [InlineData(700, 1e7, "10000 m up")]
    [InlineData(450, -4550, "4.55 m down")]
    public void One_far_away_is_an_arrow_with_its_distance(double along, double height, string distance)
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { FrontInstantCentre = new(along, height) });
        var group = picture.Group("instantCentre");
        var line = Assert.Single(group.Elements(SvgPicture.Svg + "line"));
        var tip = End(line);

        Assert.Equal(["instant centre", distance], picture.TextsOf("instantCentre"));
        Assert.Empty(group.Elements(SvgPicture.Svg + "circle"));
        Assert.Contains(SvgPicture.Points(Assert.Single(group.Elements(SvgPicture.Svg + "path"))), point => Near(point, tip));

        // It points from the contact to where the instant centre is.
        Assert.Equal(0, ((tip.X + 750) * -height) - (tip.Y * (-along + 750)), 0.02 * Math.Max(Math.Abs(height), Math.Abs(along)));
    }

    [Fact]
    public void A_roll_centre_far_up_is_an_arrow_with_its_height()
    {
        var picture = SampleCorner.Draw(SampleCorner.Views with { RollCentreHeightMm = 4200 });

        Assert.Empty(picture.Group("rollCentre").Elements(SvgPicture.Svg + "circle"));
        Assert.Equal(["roll centre", "4200.0 mm"], picture.TextsOf("rollCentre"));
    }

    private static double ExtensionLines(XElement group)
    {
        var uprights = group.Elements(SvgPicture.Svg + "line").Where(line => SvgPicture.HasClass(line, "soft-line")).Select(line => SvgPicture.Length(line, "x1")).ToList();
        return Math.Abs(uprights[1] - uprights[0]);
    }

    private static (double X, double Y) Start(XElement line) => (SvgPicture.Length(line, "x1"), SvgPicture.Length(line, "y1"));

    private static (double X, double Y) End(XElement line) => (SvgPicture.Length(line, "x2"), SvgPicture.Length(line, "y2"));

    private static (double X, double Y) At(XElement circle) => (SvgPicture.Length(circle, "cx"), SvgPicture.Length(circle, "cy"));

    private static (double X, double Y) Middle(XElement square) =>
        (SvgPicture.Length(square, "x") + (SvgPicture.Length(square, "width") / 2), SvgPicture.Length(square, "y") + (SvgPicture.Length(square, "height") / 2));

    private static bool Near((double X, double Y) a, (double X, double Y) b) => Math.Abs(a.X - b.X) < 0.01 && Math.Abs(a.Y - b.Y) < 0.01;
}
