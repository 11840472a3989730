namespace SetupService.Api.Drawings.Charts;

/// <summary>A chart made ready to be drawn: panels with something in them, styles, and where there is nothing.</summary>
internal sealed class ChartView
{
    public ChartView(Chart chart)
    {
        Chart = chart;
        Styles = SeriesStyle.Assign(chart);
        Panels = [.. chart.Panels.Select(panel => PanelView.Of(panel, Styles)).OfType<PanelView>()];
        var points = chart.Panels.SelectMany(panel => panel.Series).SelectMany(series => series.Points).Where(point => point.HasPlace).ToList();
        var known = points.Where(point => point.HasValue).Select(point => point.X).ToHashSet();
        Across = points.Count > 0 ? ChartRange.Across(points.Select(point => point.X)) : default;
        Missing = MissingStretch.All([.. points.Select(point => point.X).Distinct().Order()], known);
        HasOpenLine = Panels.SelectMany(panel => panel.Lines).SelectMany(line => line.Series.Points)
            .Any(point => point.HasPlace && !point.HasValue && known.Contains(point.X));
    }

    public Chart Chart { get; }

    public IReadOnlyList<PanelView> Panels { get; }

    public Dictionary<string, SeriesStyle> Styles { get; }

    /// <summary>The shared axis.</summary>
    public ChartRange Across { get; }

    /// <summary>Where no panel has a value.</summary>
    public IReadOnlyList<MissingStretch> Missing { get; }

    /// <summary>Whether a line has no value where another one has.</summary>
    public bool HasOpenLine { get; }

    public IEnumerable<string> MissingPanels => Chart.Panels.Select(panel => panel.Name).Except(Panels.Select(panel => panel.Panel.Name));

    public IEnumerable<string> SeriesWithoutStyle =>
        Chart.Panels.SelectMany(panel => panel.Series).Select(series => series.Name).Distinct().Where(name => !Styles.ContainsKey(name));

    /// <summary>The lines the legend has to tell apart; empty where there is one plain line.</summary>
    public IReadOnlyList<ChartSeries> Legend
    {
        get
        {
            var shown = Panels.SelectMany(panel => panel.Lines).Select(line => line.Series).DistinctBy(series => series.Name).ToList();
            return shown.Count > 1 || shown.Exists(series => series.BandName is not null) ? shown : [];
        }
    }
}
