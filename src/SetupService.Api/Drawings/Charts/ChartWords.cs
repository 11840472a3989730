namespace SetupService.Api.Drawings.Charts;

/// <summary>The words of a chart.</summary>
internal static class ChartWords
{
    private const int MostStretches = 3;

    // A value counts as the one at zero within this share of the shared axis.
    private const double ZeroShare = 1e-9;

    public static string Quantity(string name, string unit) => unit.Length == 0 ? name : $"{name}, {unit}";

    public static string Title(ChartView view) => $"{view.Chart.Heading}: {List(view.Chart.Panels.Select(panel => panel.Name))}";

    /// <summary>The picture in words, for somebody who cannot see it.</summary>
    public static string Description(ChartView view)
    {
        var chart = view.Chart;
        var sentences = chart.Lines.Select(Sentence).ToList();
        if (view.Panels.Count > 0) sentences.Add(Sentence($"Horizontal axis: {Axis(view)}"));
        sentences.AddRange(view.Panels.Select(panel => Panel(panel, view)));
        sentences.AddRange(chart.Spans.Select(span => Sentence(span.Words)));
        sentences.AddRange(Notes(view));
        return string.Join(' ', sentences);
    }

    /// <summary>The value at zero, where the panel is about one line; null where there is none.</summary>
    public static string? AtZero(PanelView panel, ChartView view)
    {
        if (panel.Subject is not { } subject || !panel.Panel.TellsZero) return null;
        foreach (var point in subject.Points)
        {
            if (!point.HasValue || Math.Abs(point.X) > ZeroShare * view.Across.Span) continue;
            return $"{Value(point.Y!.Value, panel)} at {ChartNumber.WithUnit("0", view.Chart.Across.Unit)}";
        }

        return null;
    }

    /// <summary>The sentences under the panels: what is missing, then what the caller says.</summary>
    public static IEnumerable<string> Notes(ChartView view)
    {
        if (view.Missing.Count > 0) yield return $"Shaded: no value {Stretches(view)}.";
        if (view.HasOpenLine) yield return "A gap in a line: the figure does not exist there.";
        if (view.MissingPanels.Any()) yield return $"Unknown, so not drawn: {List(view.MissingPanels)}.";
        if (view.SeriesWithoutStyle.Any()) yield return $"Not drawn, because so many lines cannot be told apart: {List(view.SeriesWithoutStyle)}.";
        foreach (var note in view.Chart.Notes) yield return note;
    }

    public static string LegendEntry(ChartSeries series) => series.BandName is { } band ? $"{series.Name}, with {band}" : series.Name;

    private static string Axis(ChartView view)
    {
        var axis = view.Chart.Across;
        var ends = $"from {AcrossValue(view.Across.Low)} to {ChartNumber.WithUnit(AcrossValue(view.Across.High), axis.Unit)}";
        return axis.Zero is { } zero ? $"{axis.Name} {ends}, 0 = {zero}" : $"{axis.Name} {ends}";
    }

    private static string Panel(PanelView panel, ChartView view)
    {
        var name = panel.Panel.Name + (panel.Panel.Signs is { } signs ? $" ({signs})" : "");
        var reach = panel.Values.Span < panel.Panel.LeastSpan
            ? $"level at {Value(panel.Values.Low, panel)}"
            : $"from {Value(panel.Values.Low, panel)} to {Value(panel.Values.High, panel)}";
        var lines = panel.Lines.Count > 1 ? $" Lines: {List(panel.Lines.Select(line => LegendEntry(line.Series)))}." : "";
        return AtZero(panel, view) is { } zero ? $"{Sentence($"{name}: {reach}, {zero}")}{lines}" : $"{Sentence($"{name}: {reach}")}{lines}";
    }

    private static string Value(double value, PanelView panel) => ChartNumber.Read(value, panel.Panel.Unit, panel.Values.Span);

    private static string AcrossValue(double value)
    {
        var rounded = Math.Round(value, 2, MidpointRounding.AwayFromZero);
        return ChartNumber.AtTick(rounded, rounded == 0 ? 1 : rounded);
    }

    private static string Stretches(ChartView view)
    {
        var unit = view.Chart.Across.Unit;
        var words = view.Missing.Take(MostStretches).Select(stretch => stretch.First == stretch.Last
            ? $"at {ChartNumber.WithUnit(AcrossValue(stretch.First), unit)}"
            : $"from {AcrossValue(stretch.First)} to {ChartNumber.WithUnit(AcrossValue(stretch.Last), unit)}").ToList();
        if (view.Missing.Count > MostStretches) words.Add($"in {view.Missing.Count - MostStretches} more ranges");
        return List(words);
    }

    private static string List(IEnumerable<string> words) => string.Join(", ", words);

    private static string Sentence(string text) => text.Length == 0 ? "" : $"{char.ToUpperInvariant(text[0])}{text[1..].TrimEnd('.')}.";
}
