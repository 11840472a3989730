namespace SetupService.Api.Drawings.Charts;

/// <summary>The legend of a chart whose lines have to be told apart.</summary>
internal static class ChartLegend
{
    private const double BandUnits = 16;

    /// <summary>The legend; empty where there is one plain line.</summary>
    public static FlowLegend Of(ChartView view, double widthUnits) =>
        new(view.Legend.Select(series => (ChartWords.LegendEntry(series), Sample(series, view.Styles[series.Name]))), widthUnits);

    private static LegendSample Sample(ChartSeries series, SeriesStyle style) => (svg, _, x, y) =>
    {
        if (series.BandName is not null)
            svg.Rectangle(x, y - (BandUnits / 2), FlowLegend.SampleUnits, BandUnits, Pen.Filled(style.Ink, PlotSeries.BandOpacity));
        PlotSample.Paint(svg, series, style, x, y, FlowLegend.SampleUnits);
    };
}
