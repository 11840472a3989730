namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws a chart as SVG. Letters and places are in text units, of which the picture is 560 wide.</summary>
public static class ChartDrawing
{
    /// <summary>The picture of a chart, readable at 400 pixels, in light and in dark surroundings.</summary>
    /// <param name="chart">What is to be drawn.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(Chart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var view = new ChartView(chart);
        var layout = new ChartLayout(view);
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "chart", (0, 0, DrawingFrame.WidthUnits, layout.HeightUnits), ChartWords.Title(view), ChartWords.Description(view));
        layout.Paint(svg);
        svg.Close();
        return svg.Finish();
    }
}
