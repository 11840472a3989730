using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Tests.Drawings.Charts;

/// <summary>Curves stand where their numbers say, and gaps stay gaps.</summary>
public sealed class ChartCurveTests
{
    [Fact]
    public void A_curve_read_off_by_its_axes_has_the_values_it_was_drawn_from()
    {
        static double Camber(double travelMm) => -0.75 - (0.018 * travelMm) + (0.00009 * travelMm * travelMm);
        var picture = SampleCharts.Draw(SampleCharts.Of(
            SampleCharts.Panel("camber", "°", travel => Camber(travel)), SampleCharts.Panel("roll centre height", "mm", travel => 69 - (2.7 * travel))));

        var camber = new ChartReading(picture, "panel-1").Points(picture, "panel-2").ToList();
        var rollCentre = new ChartReading(picture, "panel-2").Points(picture, "panel-2").ToList();

        Assert.Equal(25, camber.Count);
        Assert.All(camber, point => Assert.Equal(Camber(point.Across), point.Value, 0.01));
        Assert.All(rollCentre, point => Assert.Equal(69 - (2.7 * point.Across), point.Value, 1));
        Assert.Equal((-60, 60), (Math.Round(camber[0].Across, 2), Math.Round(camber[^1].Across, 2)));
    }

    [Fact]
    public void A_gap_is_left_open_shaded_and_named()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => travel is > 12 and < 33 ? null : -0.01 * travel)));
        var reading = new ChartReading(picture, "panel-1");

        Assert.Equal(2, reading.Lines.Count);
        Assert.DoesNotContain(reading.Points(picture, "panel-1"), point => point.Across is > 12 and < 33);
        Assert.Contains("Shaded: no value from 15 to 30 mm.", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.Texts, text => text.Value.StartsWith("Shaded: no value", StringComparison.Ordinal));

        // The shading reaches halfway to the neighbours that have a value.
        var shade = Assert.Single(picture.Group("panel-1").Elements(SvgPicture.Svg + "path"), path => path.Attribute("fill")!.Value != "none");
        var width = SvgPicture.Points(shade).Max(point => point.X) - SvgPicture.Points(shade).Min(point => point.X);
        var whole = reading.Lines.SelectMany(SvgPicture.Points).ToList();
        Assert.Equal(20.0 / 120, width / (whole.Max(point => point.X) - whole.Min(point => point.X)), 0.001);
    }

    [Fact]
    public void A_position_not_reached_at_the_end_still_belongs_to_the_axis()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => travel > 40 ? null : -0.01 * travel)));

        Assert.Contains("from −60 to 60 mm", picture.Description, StringComparison.Ordinal);
        Assert.Contains("no value from 45 to 60 mm", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_that_one_panel_lacks_is_an_open_line_and_no_missing_position()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(
            SampleCharts.Panel("steer", "°", travel => travel / 2), SampleCharts.Panel("Ackermann", "%", travel => Math.Abs(travel) < 12 ? null : 40)));

        Assert.DoesNotContain("Shaded", picture.AllText, StringComparison.Ordinal);
        Assert.Contains("A gap in a line: the figure does not exist there.", picture.Description, StringComparison.Ordinal);
        Assert.Equal(2, new ChartReading(picture, "panel-2").Lines.Count);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1e300)]
    public void A_value_that_is_no_number_is_a_gap(double value)
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("roll centre height", "mm", travel => travel == 0 ? value : travel)));

        Assert.Equal(2, new ChartReading(picture, "panel-1").Lines.Count);
        Assert.DoesNotContain("NaN", picture.Source, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", picture.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_between_two_gaps_is_a_dot()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => travel is 20 or < 10 ? -0.01 * travel : null)));

        Assert.Single(picture.Group("panel-1").Elements(SvgPicture.Svg + "circle"));
    }

    [Fact]
    public void A_single_position_is_a_dot_in_every_panel()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(
            SampleCharts.Panel("camber", "°", new ChartSeries("exact", [new(12.5, -1.2)])), SampleCharts.Panel("toe", "°", new ChartSeries("exact", [new(12.5, 0)]))));

        Assert.Single(picture.Group("panel-1").Elements(SvgPicture.Svg + "circle"));
        Assert.Single(picture.Group("panel-2").Elements(SvgPicture.Svg + "circle"));
    }

    [Fact]
    public void A_band_surrounds_its_curve()
    {
        ChartSeries curve = new("fitted curve", [.. Enumerable.Range(-10, 21).Select(i => new ChartPoint(i, 0.1 * i) { Lower = (0.1 * i) - 0.2, Upper = (0.1 * i) + 0.3 })]) { BandName = "90 % band" };
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", curve)));
        var paths = picture.Group("panel-1").Elements(SvgPicture.Svg + "path").ToList();
        var band = SvgPicture.Points(Assert.Single(paths, path => path.Attribute("fill-opacity")?.Value == "0.18"));
        var line = SvgPicture.Points(Assert.Single(new ChartReading(picture, "panel-1").Lines));

        Assert.Equal(line.Min(point => point.X), band.Min(point => point.X), 0.01);
        Assert.Equal(line.Max(point => point.X), band.Max(point => point.X), 0.01);
        var perUnit = (line.Max(point => point.Y) - line.Min(point => point.Y)) / 2;
        Assert.Equal(0.3 * perUnit, line.Min(point => point.Y) - band.Min(point => point.Y), 0.05);
        Assert.Equal(0.2 * perUnit, band.Max(point => point.Y) - line.Max(point => point.Y), 0.05);
        Assert.Contains(picture.TextsOf("legend"), text => text == "fitted curve, with 90 % band");
    }

    [Fact]
    public void Readings_are_dots_that_no_line_joins()
    {
        ChartSeries readings = new("readings", [new(-20, 0.2), new(0, -0.1), new(20, -0.5)]) { IsJoined = false };
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", readings)));

        Assert.Empty(new ChartReading(picture, "panel-1").Lines);
        Assert.Equal(3, picture.Group("panel-1").Elements(SvgPicture.Svg + "circle").Count());
    }

    // Wheel travel is drawn from −60 to 60 mm; an arrowhead is two slanting lines.
    [Theory]
    [InlineData(-20, 30, 0)]
    [InlineData(-60, 60, 0)]
    [InlineData(-90, 30, 2)]
    [InlineData(-90, 90, 4)]
    [InlineData(70, 90, 2)]
    public void A_stretch_that_goes_on_beyond_the_axis_ends_in_an_arrowhead(double from, double to, int slanting)
    {
        var chart = SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => -0.01 * travel));

        Assert.Equal(slanting, Slanting(chart with { Spans = [new("can be set", from, to)] }) - Slanting(chart));

        static int Slanting(Chart chart) => SampleCharts.Draw(chart).Root.Descendants(SvgPicture.Svg + "line").Count(line =>
            SvgPicture.Length(line, "x1") != SvgPicture.Length(line, "x2") && SvgPicture.Length(line, "y1") != SvgPicture.Length(line, "y2"));
    }
}
