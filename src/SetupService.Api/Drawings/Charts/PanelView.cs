namespace SetupService.Api.Drawings.Charts;

/// <summary>A panel that has something to draw.</summary>
/// <param name="Panel">What is in it.</param>
/// <param name="Lines">Its series with their styles.</param>
/// <param name="Up">Its upright axis.</param>
internal sealed record PanelView(ChartPanel Panel, IReadOnlyList<(ChartSeries Series, SeriesStyle Style)> Lines, ChartRange Up)
{
    /// <summary>The one line the panel is about; null where there are several.</summary>
    public ChartSeries? Subject { get; } = Lines.Count(line => line.Series.IsMain) == 1 ? Lines.First(line => line.Series.IsMain).Series : null;

    /// <summary>How far the values themselves reach.</summary>
    public ChartRange Values { get; } = Reach(Lines.SelectMany(line => line.Series.Points));

    /// <summary>The panel, or null where not a single value of it is known.</summary>
    public static PanelView? Of(ChartPanel panel, Dictionary<string, SeriesStyle> styles)
    {
        var lines = panel.Series.Where(series => styles.ContainsKey(series.Name)).Select(series => (series, styles[series.Name])).ToList();
        var points = lines.SelectMany(line => line.series.Points).ToList();
        if (!points.Exists(point => point.HasValue)) return null;
        var values = points.Where(point => point.HasValue).Select(point => point.Y!.Value);
        var ends = points.Where(point => point.HasBand).SelectMany(point => (double[])[point.Lower!.Value, point.Upper!.Value]);
        return new(panel, lines, ChartRange.Up(values.Concat(ends), panel.LeastSpan));
    }

    private static ChartRange Reach(IEnumerable<ChartPoint> points)
    {
        var values = points.Where(point => point.HasValue).Select(point => point.Y!.Value).ToList();
        return new(values.Min(), values.Max());
    }
}
