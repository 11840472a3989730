using System.Globalization;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Sets a panel up for the plotting library, which chooses the ticks and lays lines and numbers out.</summary>
internal static class PanelPlot
{
    /// <summary>Room for the numbers under the lowest panel, text units.</summary>
    public const double NumbersBelowUnits = 31;

    private const double UpTickUnits = 40;
    private const double GridOpacity = 0.22;
    private const double ZeroOpacity = 0.75;
    private const double MissingOpacity = 0.16;

    public static PlotModel Build(PanelView panel, ChartView view, PlotFrame frame, bool hasNumbersBelow)
    {
        var model = new PlotModel
        {
            Culture = CultureInfo.InvariantCulture,
            DefaultFontSize = Lettering.Small,
            TextColor = RoleColour.From(InkRole.Ink),
            TitlePadding = 0,
            Padding = new OxyThickness(0),
            PlotMargins = new OxyThickness(frame.LeftUnits, 0, frame.RightUnits, hasNumbersBelow ? NumbersBelowUnits : 0),
            PlotAreaBorderThickness = new OxyThickness(0),
            Background = OxyColors.Undefined,
        };
        var across = Axis(AxisPosition.Bottom, view.Across, frame.AcrossTickUnits, labelDistance: 9);
        if (!hasNumbersBelow) across.LabelFormatter = _ => "";
        model.Axes.Add(across);
        model.Axes.Add(Axis(AxisPosition.Left, panel.Up, UpTickUnits, labelDistance: 8));
        foreach (var stretch in view.Missing) model.Annotations.Add(Shade(stretch, panel.Up));
        if (panel.Up is { Low: < 0, High: > 0 }) model.Annotations.Add(Zero(LineAnnotationType.Horizontal, LineStyle.Solid));
        if (view.Across is { Low: <= 0, High: >= 0 }) model.Annotations.Add(Zero(LineAnnotationType.Vertical, LineStyle.Dash));
        foreach (var (series, style) in panel.Lines)
        {
            foreach (var part in PlotSeries.Build(series, style)) model.Series.Add(part);
        }

        return model;
    }

    /// <summary>Draws the plot into a rectangle; the library's own way to report a fault, which is to paint it, is not taken.</summary>
    public static void Render(PlotModel model, IRenderContext context, OxyRect place)
    {
        IPlotModel plot = model;
        plot.Update(updateData: true);
        plot.Render(context, place);
        if (model.GetLastPlotException() is { } fault) throw new InvalidOperationException("The chart could not be laid out.", fault);
    }

    private static LinearAxis Axis(AxisPosition position, ChartRange range, double tickUnits, double labelDistance)
    {
        var axis = new LinearAxis
        {
            Position = position,
            Minimum = range.Low,
            Maximum = range.High,
            IntervalLength = tickUnits,
            TickStyle = TickStyle.None,
            AxisTickToLabelDistance = labelDistance,
            MajorGridlineStyle = LineStyle.Solid,
            MajorGridlineThickness = 0.9,
            MajorGridlineColor = RoleColour.From(InkRole.Soft, GridOpacity),
        };
        axis.LabelFormatter = value => ChartNumber.AtTick(value, axis.ActualMajorStep);
        return axis;
    }

    private static LineAnnotation Zero(LineAnnotationType type, LineStyle style) => new()
    {
        Type = type,
        Color = RoleColour.From(InkRole.Soft, ZeroOpacity),
        StrokeThickness = 1.3,
        LineStyle = style,
        Layer = AnnotationLayer.BelowSeries,
    };

    private static RectangleAnnotation Shade(MissingStretch stretch, ChartRange up) => new()
    {
        MinimumX = stretch.From,
        MaximumX = stretch.To,
        MinimumY = up.Low,
        MaximumY = up.High,
        Fill = RoleColour.From(InkRole.Soft, MissingOpacity),
        Layer = AnnotationLayer.BelowAxes,
    };
}

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
    public static PlotFrame From(ChartView view, double plotUnits)
    {
        var meter = new LabelMeter();
        foreach (var panel in view.Panels)
        {
            var plot = PanelPlot.Build(panel, view, First, hasNumbersBelow: true);
            PanelPlot.Render(plot, meter, new OxyRect(0, 0, DrawingFrame.WidthUnits, plotUnits + PanelPlot.NumbersBelowUnits));
        }

        return new(
            DrawingFrame.EdgeUnits + meter.WidestBesideUnits + NumberGap,
            Math.Max(DrawingFrame.EdgeUnits, meter.WidestBelowUnits / 2),
            Math.Max(UsualTickUnits, meter.WidestBelowUnits + BetweenNumbers));
    }
}
