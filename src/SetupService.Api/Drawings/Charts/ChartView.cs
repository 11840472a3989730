namespace SetupService.Api.Drawings.Charts;

/// <summary>A chart made ready to be drawn: panels with something in them, styles, and where there is nothing.</summary>
internal sealed class ChartView
{
    public ChartView(Chart chart)
    {
        Chart = chart;
        Styles = SeriesStyle.Assign(chart);
        Panels = [.. chart.Panels.Select(panel => PanelView.From(panel, Styles)).OfType<PanelView>()];
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
    public static PanelView? From(ChartPanel panel, Dictionary<string, SeriesStyle> styles)
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

/// <summary>Neighbouring places of the shared axis at which no panel has a value.</summary>
/// <param name="First">The first place.</param>
/// <param name="Last">The last place.</param>
/// <param name="From">Where the shading begins: halfway to the neighbour that has one.</param>
/// <param name="To">Where it ends.</param>
internal readonly record struct MissingStretch(double First, double Last, double From, double To)
{
    /// <summary>The stretches among all places, given in order.</summary>
    public static List<MissingStretch> All(double[] places, HashSet<double> known)
    {
        var stretches = new List<MissingStretch>();
        for (var i = 0; i < places.Length; i++)
        {
            if (known.Contains(places[i])) continue;
            var first = i;
            while (i + 1 < places.Length && !known.Contains(places[i + 1])) i++;
            stretches.Add(new(
                places[first],
                places[i],
                first == 0 ? places[first] : (places[first - 1] + places[first]) / 2,
                i + 1 == places.Length ? places[i] : (places[i] + places[i + 1]) / 2));
        }

        return stretches;
    }
}

/// <summary>From where to where an axis runs.</summary>
/// <param name="Low">Its lower end.</param>
/// <param name="High">Its upper end.</param>
internal readonly record struct ChartRange(double Low, double High)
{
    // Room beside the extremes, so that lines and dots stand clear of the next panel.
    private const double Padding = 0.08;

    // Zero is shown where it lies this near to the values, as a share of their span.
    private const double NearZero = 0.3;

    public double Span => High - Low;

    /// <summary>The shared axis: exactly what was asked for.</summary>
    public static ChartRange Across(IEnumerable<double> places)
    {
        var range = Around(places);
        return range.Span > 0 ? range : Around(range.Low);
    }

    /// <summary>A panel's own axis.</summary>
    public static ChartRange Up(IEnumerable<double> values, double leastSpan)
    {
        var range = Around(values);
        if (!(range.Span >= leastSpan)) return Around((range.Low + range.High) / 2);
        var (low, high) = range;
        if (low > 0 && low < NearZero * range.Span) low = 0;
        if (high < 0 && -high < NearZero * range.Span) high = 0;
        var room = Padding * (high - low);
        return new(low - room, high + room);
    }

    private static ChartRange Around(IEnumerable<double> values)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (low, high) = (Math.Min(low, value), Math.Max(high, value));
        return new(low, high);
    }

    private static ChartRange Around(double value)
    {
        var half = Math.Abs(value) < 1 ? 1 : 0.2 * Math.Abs(value);
        return new(value - half, value + half);
    }
}
