using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>The room around and between the numbers of a chart, text units.</summary>
/// <param name="LeftUnits">From the picture's edge to the plots: room for the numbers of the upright axes.</param>
/// <param name="RightUnits">From the plots to the picture's other edge.</param>
/// <param name="AcrossTickUnits">About how far the numbers of the shared axis stand from each other.</param>
internal readonly record struct PlotFrame(double LeftUnits, double RightUnits, double AcrossTickUnits)
{
    private const double NumberGap = 8;
    private const double BetweenNumbers = 16;
    private const double UsualTickUnits = 76;

    private static readonly PlotFrame First = new(DrawingFrame.EdgeUnits, DrawingFrame.EdgeUnits, UsualTickUnits);

    /// <summary>The frame that holds the numbers of all panels, so that these begin and end below each other.</summary>
    public static PlotFrame Of(ChartView view, double plotUnits)
    {
        var meter = new LabelMeter();
        foreach (var panel in view.Panels)
        {
            var plot = PanelPlot.Of(panel, view, First, hasNumbersBelow: true);
            PanelPlot.Render(plot, meter, new OxyRect(0, 0, DrawingFrame.WidthUnits, plotUnits + PanelPlot.NumbersBelowUnits));
        }

        return new(
            DrawingFrame.EdgeUnits + meter.WidestBesideUnits + NumberGap,
            Math.Max(DrawingFrame.EdgeUnits, meter.WidestBelowUnits / 2),
            Math.Max(UsualTickUnits, meter.WidestBelowUnits + BetweenNumbers));
    }
}
