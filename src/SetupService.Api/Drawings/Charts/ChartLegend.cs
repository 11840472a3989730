namespace SetupService.Api.Drawings.Charts;

/// <summary>Names the lines, each beside a piece of itself, as many to a row as fit.</summary>
internal sealed class ChartLegend
{
    private const double SampleUnits = 44;
    private const double SampleGapUnits = 9;
    private const double EntryGapUnits = 26;
    private const double RowUnits = 24;

    private readonly List<(double X, double Y, string Text, ChartSeries? Series)> _texts = [];
    private readonly ChartView _view;

    public ChartLegend(ChartView view, double widthUnits)
    {
        _view = view;
        var (x, row) = (0.0, 0);
        foreach (var series in view.Legend)
        {
            var indent = SampleUnits + SampleGapUnits;
            var lines = TextWrap.Lines(ChartWords.LegendEntry(series), (widthUnits - indent) / Lettering.Small);
            var width = indent + (lines.Max(line => TextWidth.Em(line, isBold: false)) * Lettering.Small);
            if (x > 0 && x + width > widthUnits) (x, row) = (0, row + 1);
            for (var i = 0; i < lines.Count; i++) _texts.Add((x + indent, (row + i) * RowUnits, lines[i], i == 0 ? series : null));
            if (lines.Count > 1) (x, row) = (0, row + lines.Count);
            else x += width + EntryGapUnits;
        }

        HeightUnits = _texts.Count == 0 ? 0 : _texts.Max(text => text.Y) + RowUnits;
    }

    public double HeightUnits { get; }

    public void Paint(SvgWriter svg, double left, double top)
    {
        if (_texts.Count == 0) return;
        svg.OpenGroup("legend");
        foreach (var (x, y, text, series) in _texts)
        {
            if (series is not null) Sample(svg, left + x - SampleUnits - SampleGapUnits, top + y + (RowUnits / 2), series);
            svg.Letters(left + x, top + y + (0.74 * RowUnits), text, new Lettering(Lettering.Small, InkRole.Ink));
        }

        svg.Close();
    }

    private void Sample(SvgWriter svg, double x, double y, ChartSeries series)
    {
        var style = _view.Styles[series.Name];
        if (series.BandName is not null) svg.Rectangle(x, y - 8, SampleUnits, 16, Pen.Filled(style.Ink, 0.18));
        PlotSample.Paint(svg, series, style, x, y, SampleUnits);
    }
}
