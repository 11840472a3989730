using System.Globalization;
using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Tests.Drawings.Charts;

/// <summary>What is in a chart's document, in words and in numbers.</summary>
public sealed class ChartDocumentTests
{
    private static readonly Chart Two = SampleCharts.Of(
        SampleCharts.Panel("camber", "°", travel => -0.75 - (0.02 * travel)) with { Signs = "negative: top inboard" },
        SampleCharts.Panel("toe", "°", travel => 0.001 * travel)) with
    {
        Lines = ["strut <front> & rack"],
        Notes = ["The ends were measured."],
    };

    [Fact]
    public void It_is_a_picture_and_nothing_else()
    {
        var picture = SampleCharts.Draw(Two);

        Harmlessness.Holds(picture);
        Harmlessness.IsDescribed(picture);
        Harmlessness.IdsAreSingle(picture);
        Assert.Contains(picture.Texts, text => text.Value == "strut <front> & rack");
    }

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var picture = SampleCharts.Draw(Two);

        Assert.Equal("Front left wheel over its travel: camber, toe", picture.Title);
        Assert.Contains("Camber (negative: top inboard): from −1.95° to 0.45°, −0.75° at 0 mm.", picture.Description, StringComparison.Ordinal);
        Assert.Contains("Horizontal axis: wheel travel from −60 to 60 mm, 0 = stated position.", picture.Description, StringComparison.Ordinal);
        Assert.Contains("The ends were measured.", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.TextsOf("panel-1"), text => text == "−0.75° at 0 mm");
    }

    [Theory]
    [InlineData(399, 1)]
    [InlineData(799, 1)]
    [InlineData(800, 2)]
    [InlineData(1199, 2)]
    [InlineData(1200, 3)]
    [InlineData(4000, 3)]
    public void A_wider_picture_has_its_panels_side_by_side(double widthPx, int columns)
    {
        var chart = SampleCharts.Of([.. Enumerable.Range(0, 6).Select(i => SampleCharts.Panel($"quantity {i}", "°", travel => travel))]);
        var (wide, narrow) = (SampleCharts.Draw(chart, widthPx), SampleCharts.Draw(chart));

        Assert.Equal(columns * narrow.ViewBox[2], wide.ViewBox[2]);
        Assert.Equal(columns, wide.Texts.Count(text => text.Value == "wheel travel, mm"));
        Assert.True(columns == 1 || wide.ViewBox[3] < 0.75 * narrow.ViewBox[3]);
    }

    [Fact]
    public void Readings_have_each_their_own_error_bar_and_no_band_between_them()
    {
        var read = new ChartSeries("as read", [new(-20, 1) { Lower = 0.5, Upper = 1.5 }, new(20, 2) { Lower = 1.5, Upper = 2.5 }]) { IsJoined = false, BandName = "the gauge's error, 90 %" };
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", read)));

        Assert.Equal(2, picture.Group("panel-1").Elements(SvgPicture.Svg + "path").Count(path => path.Attribute("stroke-opacity")?.Value == "0.5"));
        Assert.Contains(picture.Texts, text => text.Value == "as read, with the gauge's error, 90 %");
    }

    [Fact]
    public void A_level_line_is_called_level()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("toe", "°", travel => 1e-16 * travel)));

        Assert.Contains("Toe: level at 0.00°", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Panels_without_a_value_are_named_and_not_drawn()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => travel), SampleCharts.Panel("caster", "°", _ => null)));

        Assert.Null(picture.Find("panel-2"));
        Assert.Contains("Unknown, so not drawn: caster.", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_of_nothing_says_so()
    {
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", new ChartSeries("exact", []))));

        Assert.Null(picture.Find("panel-1"));
        Assert.Contains(picture.Texts, text => text.Value == "Unknown, so not drawn: camber.");
    }

    [Fact]
    public void Lines_differ_by_more_than_colour_and_are_named()
    {
        var names = Enumerable.Range(1, 8).Select(i => $"rack {10 * i} mm").ToList();
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", [.. names.Select((name, i) => SampleCharts.Series(name, travel => i + travel))])));
        var dashes = picture.Group("panel-1").Elements(SvgPicture.Svg + "path").Where(path => path.Attribute("stroke-opacity") is null && path.Attribute("stroke") is not null)
            .Select(path => path.Attribute("stroke-dasharray")?.Value ?? "full").ToList();

        Assert.Equal(7, dashes.Count);
        Assert.Equal(dashes.Distinct(), dashes);
        Assert.Equal(names[..7], picture.TextsOf("legend"));
        Assert.Contains("Not drawn, because so many lines cannot be told apart: rack 80 mm.", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void An_approximation_is_dashed_and_thinner_than_what_it_approximates()
    {
        var approximation = SampleCharts.Series("small-angle formula", travel => (0.02 * travel) + 0.1) with { IsMain = false };
        var picture = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", SampleCharts.Series("exact rotation", travel => 0.02 * travel), approximation)));
        var lines = new ChartReading(picture, "panel-1").Lines;

        Assert.Null(lines[0].Attribute("stroke-dasharray"));
        Assert.NotNull(lines[1].Attribute("stroke-dasharray"));
        Assert.True(SvgPicture.Length(lines[1], "stroke-width") < SvgPicture.Length(lines[0], "stroke-width"));
        Assert.Equal(["exact rotation", "small-angle formula"], picture.TextsOf("legend"));
    }

    [Fact]
    public void Zero_is_marked_where_it_is_on_the_axes()
    {
        var marked = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", travel => travel)));
        var unmarked = SampleCharts.Draw(SampleCharts.Of(SampleCharts.Panel("camber", "°", new ChartSeries("exact", [new(10, 5), new(20, 6)]))));

        Assert.Equal(2, Zeros(marked));
        Assert.Equal(0, Zeros(unmarked));

        static int Zeros(SvgPicture picture) => picture.Group("panel-1").Elements(SvgPicture.Svg + "path").Count(path => path.Attribute("stroke-opacity")?.Value == "0.75");
    }

    [Fact]
    public void Numbers_know_no_culture()
    {
        var invariant = ChartDrawing.Draw(Two);
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(invariant, ChartDrawing.Draw(Two));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Numbers_have_a_real_minus_sign() =>
        Assert.DoesNotContain(SampleCharts.Draw(Two).Texts, text => text.Value.Contains('-', StringComparison.Ordinal));
}
