using CsCheck;
using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Tests.Drawings.Charts;

/// <summary>A chart can be read, whatever the values and however long the words.</summary>
public sealed class ChartLegibilityTests
{
    private static readonly string[] Words = ["camber", "steering-axis inclination at the stated position", "wheelcentreheightagainstthebodywithoutanyspace", "x", "toe of the left wheel against the body"];

    private static readonly Gen<string> AnyWords = Gen.Select(Gen.Int[0, Words.Length - 1], i => Words[i]);

    private static readonly Gen<double> AnyScale = Gen.Select(Gen.Double[1, 10], Gen.Int[-6, 7], (digit, power) => digit * Math.Pow(10, power));

    private static readonly Gen<ChartPanel> AnyPanel = Gen
        .Select(AnyWords, AnyWords, Gen.Int[0, 2], AnyScale, Gen.Double[-3, 3], Gen.Int[1, 4])
        .Select((name, signs, unit, scale, offset, lines) => new ChartPanel(
            name,
            ((string[])["°", "mm", ""])[unit],
            [.. Enumerable.Range(0, lines).Select(line => SampleCharts.Series($"line {line}, {signs}", x => scale * (offset + line + Math.Sin(x / 20))))])
        {
            Signs = signs,
        });

    private static readonly Gen<Chart> AnyChart = Gen
        .Select(AnyPanel.Array[0, 6], AnyWords, AnyWords, AnyScale)
        .Select((panels, first, second, scale) => new Chart
        {
            Heading = first,
            Lines = [first, second],
            Across = new ChartAxis(first, "mm") { Zero = second, Low = "towards the right", High = "towards the left" },
            Panels = [.. panels.Select(panel => Stretched(panel, scale / 60))],
            Notes = [second],
        });

    private static readonly Gen<double> AnyWidth = Gen.Double[400, 2000];

    [Fact]
    public void Texts_keep_clear_of_the_edge_and_of_each_other() => AnyChart.Sample(chart => Legibility.TextsKeepClear(SampleCharts.Draw(chart)));

    [Fact]
    public void Texts_keep_clear_of_each_other_where_panels_stand_side_by_side() =>
        Gen.Select(AnyChart, AnyWidth).Sample((chart, widthPx) => Legibility.TextsKeepClear(SampleCharts.Draw(chart, widthPx)));

    [Fact]
    public void Every_letter_has_twelve_pixels_where_the_picture_is_400_wide() => AnyChart.Sample(chart => Legibility.LettersHaveAtLeast(12, SampleCharts.Draw(chart)));

    [Fact]
    public void Every_letter_has_twelve_pixels_at_the_width_the_picture_is_drawn_for() =>
        Gen.Select(AnyChart, AnyWidth).Sample((chart, widthPx) => Legibility.LettersHaveAtLeast(12, SampleCharts.Draw(chart, widthPx), widthPx));

    [Fact]
    public void Everything_drawn_is_inside_the_picture() => Gen.Select(AnyChart, AnyWidth).Sample((chart, widthPx) =>
    {
        var picture = SampleCharts.Draw(chart, widthPx);
        var (width, height) = (picture.ViewBox[2], picture.ViewBox[3]);
        foreach (var (x, y) in picture.Root.Descendants(SvgPicture.Svg + "path").SelectMany(SvgPicture.Points))
        {
            Assert.InRange(x, 0, width);
            Assert.InRange(y, 0, height);
        }
    });

    private static ChartPanel Stretched(ChartPanel panel, double factor) => panel with
    {
        Series = [.. panel.Series.Select(series => series with { Points = [.. series.Points.Select(point => point with { X = point.X * factor })] })],
    };
}
