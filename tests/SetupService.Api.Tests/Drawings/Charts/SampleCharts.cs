using SetupService.Api.Drawings.Charts;

namespace SetupService.Api.Tests.Drawings.Charts;

/// <summary>Charts to be drawn, with round numbers of no car's.</summary>
internal static class SampleCharts
{
    public static readonly ChartAxis Travel = new("wheel travel", "mm") { Zero = "stated position", Low = "rebound", High = "bump" };

    public static SvgPicture Draw(Chart chart, double widthPx = 400) => new(ChartDrawing.Draw(chart, widthPx));

    public static Chart Of(params ChartPanel[] panels) => new() { Heading = "Front left wheel over its travel", Across = Travel, Panels = panels };

    public static ChartPanel Panel(string name, string unit, params ChartSeries[] series) => new(name, unit, series);

    public static ChartPanel Panel(string name, string unit, Func<double, double?> value) => new(name, unit, [Series("exact", value)]);

    /// <summary>A value every 5 mm from −60 to 60 mm.</summary>
    public static ChartSeries Series(string name, Func<double, double?> value) =>
        new(name, [.. Enumerable.Range(-12, 25).Select(i => new ChartPoint(5 * i, value(5 * i)))]);
}
