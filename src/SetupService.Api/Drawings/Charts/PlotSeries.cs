using OxyPlot;
using OxyPlot.Series;

namespace SetupService.Api.Drawings.Charts;

/// <summary>One line of a chart as the plotting library draws it: its band, the line, its dots.</summary>
internal static class PlotSeries
{
    /// <summary>How dense a band is.</summary>
    public const double BandOpacity = 0.18;

    /// <summary>Half the size of a dot, text units.</summary>
    public const double DotUnits = 4;

    // A segment shorter than a third of a pixel at 400 pixels cannot be seen.
    private const double LeastSegmentUnits = 0.4;

    // Few enough values stand for themselves; among many only one that no line reaches needs a dot.
    private const int MostDotted = 13;

    public static IEnumerable<Series> Build(ChartSeries series, SeriesStyle style)
    {
        foreach (var run in Runs(series.Points, static point => point.HasBand))
        {
            if (series.IsJoined) yield return Band(run, style);
            else foreach (var point in run) yield return Band([point], style);
        }

        if (series.IsJoined) yield return Line(series, style);
        var dots = Dots(series);
        if (dots.Points.Count > 0) yield return Styled(dots, style);
    }

    private static LineSeries Line(ChartSeries series, SeriesStyle style)
    {
        var line = new LineSeries
        {
            Color = RoleColour.From(style.Ink),
            StrokeThickness = style.Width,
            Dashes = style.Dashes.Length == 0 ? null : style.Dashes,
            LineStyle = LineStyle.Solid,
            LineJoin = LineJoin.Round,
            MinimumSegmentLength = LeastSegmentUnits,
        };
        foreach (var point in series.Points) line.Points.Add(point.HasValue ? new(point.X, point.Y!.Value) : DataPoint.Undefined);
        return line;
    }

    private static LineSeries Dots(ChartSeries series)
    {
        var dots = new LineSeries { LineStyle = LineStyle.None };
        var runs = Runs(series.Points, static point => point.HasValue).ToList();
        var all = !series.IsJoined || runs.Sum(run => run.Count) <= MostDotted;
        foreach (var run in runs.Where(run => all || run.Count == 1))
        {
            foreach (var point in run) dots.Points.Add(new(point.X, point.Y!.Value));
        }

        return dots;
    }

    private static LineSeries Styled(LineSeries dots, SeriesStyle style)
    {
        dots.Color = RoleColour.From(style.Ink);
        dots.MarkerType = style.Dot;
        dots.MarkerSize = DotUnits;
        dots.MarkerFill = RoleColour.From(style.Ink);
        dots.MarkerStrokeThickness = 0;
        return dots;
    }

    /// <summary>The band over neighbouring points; over a single one, or a reading, it is an upright line.</summary>
    private static LineSeries Band(List<ChartPoint> run, SeriesStyle style)
    {
        if (run is [var only])
        {
            var bar = new LineSeries { Color = RoleColour.From(style.Ink, 0.5), StrokeThickness = 1.6, LineStyle = LineStyle.Solid };
            bar.Points.Add(new(only.X, only.Lower!.Value));
            bar.Points.Add(new(only.X, only.Upper!.Value));
            return bar;
        }

        var band = new AreaSeries
        {
            Fill = RoleColour.From(style.Ink, BandOpacity),
            Color = OxyColors.Transparent,
            Color2 = OxyColors.Transparent,
            StrokeThickness = 0,
            MinimumSegmentLength = LeastSegmentUnits,
        };
        foreach (var point in run)
        {
            band.Points.Add(new(point.X, point.Upper!.Value));
            band.Points2.Add(new(point.X, point.Lower!.Value));
        }

        return band;
    }

    private static IEnumerable<List<ChartPoint>> Runs(IReadOnlyList<ChartPoint> points, Func<ChartPoint, bool> belongs)
    {
        var run = new List<ChartPoint>();
        foreach (var point in points)
        {
            if (belongs(point))
            {
                run.Add(point);
                continue;
            }

            if (run.Count > 0) yield return run;
            run = [];
        }

        if (run.Count > 0) yield return run;
    }
}

/// <summary>A piece of a line for the legend, drawn the way the panels draw it.</summary>
internal static class PlotSample
{
    public static void Paint(SvgWriter svg, ChartSeries series, SeriesStyle style, double x, double y, double length)
    {
        var context = new SvgRenderContext(svg);
        var ink = RoleColour.From(style.Ink);
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
