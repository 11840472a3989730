using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>How a line of a chart is drawn. No two differ by colour alone.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="Width">Its width, text units.</param>
/// <param name="Dashes">Its dashes, text units; empty for a full line.</param>
/// <param name="Dot">The shape of its dots.</param>
internal sealed record SeriesStyle(InkRole Ink, double Width, double[] Dashes, MarkerType Dot)
{
    private static readonly SeriesStyle[] Main =
    [
        new(InkRole.Candidate, 2.6, [], MarkerType.Circle),
        new(InkRole.Current, 2.4, [15, 5], MarkerType.Square),
        new(InkRole.Third, 2.4, [9, 4, 2, 4], MarkerType.Diamond),
        new(InkRole.Ink, 2.6, [2, 4], MarkerType.Triangle),
        new(InkRole.Candidate, 2.4, [5, 3], MarkerType.Square),
        new(InkRole.Current, 2.4, [12, 3, 2, 3, 2, 3], MarkerType.Circle),
        new(InkRole.Third, 2.4, [3, 3], MarkerType.Triangle),
    ];

    private static readonly SeriesStyle[] Second =
    [
        new(InkRole.Current, 1.7, [6, 4], MarkerType.Square),
        new(InkRole.Third, 1.7, [3, 3], MarkerType.Diamond),
        new(InkRole.Ink, 1.5, [8, 3, 2, 3], MarkerType.Triangle),
    ];

    /// <summary>
    /// A style for every name of the chart, in order of appearance, as far as they reach: names beyond that would not be told apart.
    /// </summary>
    public static Dictionary<string, SeriesStyle> Assign(Chart chart)
    {
        var styles = new Dictionary<string, SeriesStyle>();
        var (main, second) = (0, 0);
        foreach (var series in chart.Panels.SelectMany(panel => panel.Series))
        {
            if (styles.ContainsKey(series.Name)) continue;
            if (series.IsMain && main < Main.Length) styles.Add(series.Name, Main[main++]);
            else if (!series.IsMain && second < Second.Length) styles.Add(series.Name, Second[second++]);
        }

        return styles;
    }
}

/// <summary>The legend of a chart whose lines have to be told apart.</summary>
internal static class ChartLegend
{
    private const double BandUnits = 16;

    /// <summary>The legend; empty where there is one plain line.</summary>
    public static FlowLegend From(ChartView view, double widthUnits) =>
        new(view.Legend.Select(series => (ChartWords.LegendEntry(series), Sample(series, view.Styles[series.Name]))), widthUnits);

    private static LegendSample Sample(ChartSeries series, SeriesStyle style) => (svg, _, x, y) =>
    {
        if (series.BandName is not null)
            svg.Rectangle(x, y - (BandUnits / 2), FlowLegend.SampleUnits, BandUnits, Pen.Filled(style.Ink, PlotSeries.BandOpacity));
        PlotSample.Paint(svg, series, style, x, y, FlowLegend.SampleUnits);
    };
}

/// <summary>The plotting library knows colours only: an ink's role rides in the red part of one, how dense it is in its alpha.</summary>
internal static class RoleColour
{
    private const byte Opaque = 255;

    public static OxyColor From(InkRole role, double opacity = 1) => OxyColor.FromArgb((byte)Math.Round(opacity * Opaque), (byte)role, 0, 0);

    public static InkRole Role(OxyColor colour) => (InkRole)colour.R;

    public static double Opacity(OxyColor colour) => Math.Round(colour.A / (double)Opaque, 2);
}
