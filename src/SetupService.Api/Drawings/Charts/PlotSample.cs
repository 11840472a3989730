using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>A piece of a line for the legend, drawn the way the panels draw it.</summary>
internal static class PlotSample
{
    public static void Paint(SvgWriter svg, ChartSeries series, SeriesStyle style, double x, double y, double length)
    {
        var context = new SvgRenderContext(svg);
        var ink = RoleColour.Of(style.Ink);
        if (series.IsJoined)
        {
            context.DrawLine([new(x, y), new(x + length, y)], ink, style.Width, EdgeRenderingMode.Automatic, style.Dashes, LineJoin.Round);
            return;
        }

        foreach (var share in (ReadOnlySpan<double>)[0.2, 0.5, 0.8])
        {
            var middle = new ScreenPoint(x + (share * length), y);
            context.DrawMarker(middle, style.Dot, null, PlotSeries.DotUnits, ink, OxyColors.Undefined, 0, EdgeRenderingMode.Automatic);
        }
    }
}
