namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws a chart as SVG.</summary>
public static class ChartDrawing
{
    /// <summary>The picture of a chart, readable at 400 pixels, in light and in dark surroundings.</summary>
    /// <param name="chart">What is to be drawn.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(Chart chart) => throw new NotImplementedException();
}
