using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws a chart as SVG. Letters and places are in text units, of which a column of panels is 560 wide.</summary>
public static class ChartDrawing
{
    // A column narrower than this has letters too small to read.
    private const double LeastColumnPx = 400;

    /// <summary>The picture of a chart, readable at the width it is drawn for, in light and in dark surroundings.</summary>
    /// <param name="chart">What is to be drawn.</param>
    /// <param name="widthPx">The width it will be shown at, pixels: the wider, the more panels stand beside each other.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(Chart chart, double widthPx = LeastColumnPx)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var view = new ChartView(chart);
        var layout = new ChartLayout(view, (int)(widthPx / LeastColumnPx));
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "chart", (0, 0, layout.WidthUnits, layout.HeightUnits), ChartWords.Title(view), ChartWords.Description(view));
        layout.Paint(svg);
        svg.Close();
        return svg.Finish();
    }
}

/// <summary>
/// Puts the parts of a chart in their places: heading and legend, the panels in columns of equal rows, under each column the axis its panels share, notes.
/// </summary>
internal sealed class ChartLayout
{
    private const double ColumnUnits = DrawingFrame.WidthUnits;
    private const double Edge = DrawingFrame.EdgeUnits;
    private const double ColumnTextUnits = ColumnUnits - (2 * Edge);
    private const double BlockGap = 12;
    private const double PanelGap = 22;
    private const double HeaderGap = 9;
    private const int MostColumns = 3;

    // Longer lines are hard to follow with the eye.
    private const double LongestLineUnits = 820;

    private readonly ChartView _view;
    private readonly List<(double GapUnits, double HeightUnits, Action<SvgWriter, double> Paint)> _parts = [];
    private readonly int _columns;
    private readonly int _rows;
    private readonly double _plotUnits;
    private readonly PlotFrame _frame;
    private readonly AxisFoot _foot;

    /// <param name="view">The chart.</param>
    /// <param name="columns">How many columns there is room for.</param>
    public ChartLayout(ChartView view, int columns)
    {
        _view = view;
        var panels = view.Panels.Count;
        _rows = RowsFor(panels, Math.Clamp(columns, 1, MostColumns));
        _columns = Math.Max(1, (panels + _rows - 1) / _rows);
        _plotUnits = _rows switch { 1 => 260, 2 => 190, 3 => 155, _ => 128 };
        _frame = PlotFrame.From(view, _plotUnits);
        _foot = new AxisFoot(view.Chart.Across, ColumnUnits - _frame.LeftUnits - _frame.RightUnits);
        AddHead();
        for (var row = 0; row < _rows && panels > 0; row++) AddRow(row);
        if (panels > 0) AddFeet();
        if (panels > 0 && view.Chart.Spans.Count > 0) AddSpans();
        AddNotes();
    }

    public double WidthUnits => _columns * ColumnUnits;

    public double HeightUnits => _parts.Sum(part => part.GapUnits + part.HeightUnits) + Edge;

    private double TextUnits => Math.Min(WidthUnits - (2 * Edge), LongestLineUnits);

    public void Paint(SvgWriter svg)
    {
        var y = 0.0;
        foreach (var (gap, height, paint) in _parts)
        {
            paint(svg, y + gap);
            y += gap + height;
        }
    }

    private static int RowsFor(int panels, int columns) => Math.Max(1, (panels + columns - 1) / columns);

    private void AddHead()
    {
        var head = new TextBlock(TextUnits);
        head.Add(_view.Chart.Heading, new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        foreach (var line in _view.Chart.Lines) head.Add(line, new Lettering(Lettering.Small, InkRole.Soft));
        _parts.Add((Edge, head.HeightUnits, (svg, y) => head.Write(svg, 1, Edge, y)));
        var legend = ChartLegend.From(_view, WidthUnits - (2 * Edge));
        if (legend.HeightUnits > 0) _parts.Add((BlockGap, legend.HeightUnits, (svg, y) => legend.Paint(svg, 1, Edge, y)));
    }

    // Columns are read downwards, each over one axis; the panels of a row stand level.
    private void AddRow(int row)
    {
        var panels = Enumerable.Range(0, _columns).Select(column => (Column: column, Index: (column * _rows) + row)).Where(one => one.Index < _view.Panels.Count)
            .Select(one => (one.Column, one.Index, Header: new PanelHeader(_view.Panels[one.Index], _view, ColumnTextUnits))).ToList();
        var headerUnits = panels.Max(one => one.Header.HeightUnits);
        _parts.Add((PanelGap, headerUnits + HeaderGap + _plotUnits, (svg, y) =>
        {
            foreach (var (column, index, header) in panels) Panel(svg, index, column * ColumnUnits, header, y + headerUnits - header.HeightUnits, y + headerUnits + HeaderGap);
        }
        ));
    }

    // The room for them is under the last row; a column that ends a row early has its foot under its own last panel.
    private void AddFeet()
    {
        var full = _view.Panels.Count / _rows;
        _parts.Add((PanelPlot.NumbersBelowUnits, _foot.HeightUnits, (svg, y) =>
        {
            for (var column = 0; column < full; column++) PaintFoot(svg, column * ColumnUnits, y);
        }
        ));
    }

    private void PaintFoot(SvgWriter svg, double left, double top) => _foot.Paint(svg, left + _frame.LeftUnits, left + ColumnUnits - _frame.RightUnits, top);

    // Dealt out to the columns, each under that column's axis.
    private void AddSpans()
    {
        var each = (_view.Chart.Spans.Count + _columns - 1) / _columns;
        var columns = _view.Chart.Spans.Chunk(each).Select(spans => new SpanRows(spans, _view.Across, ColumnTextUnits)).ToList();
        _parts.Add((BlockGap, columns.Max(one => one.HeightUnits), (svg, y) =>
        {
            for (var column = 0; column < columns.Count; column++)
                columns[column].Paint(svg, (column * ColumnUnits) + Edge, (column * ColumnUnits) + _frame.LeftUnits, ((column + 1) * ColumnUnits) - _frame.RightUnits, y);
        }
        ));
    }

    private void AddNotes()
    {
        var notes = new TextBlock(TextUnits);
        foreach (var note in ChartWords.Notes(_view)) notes.Add(note, new Lettering(Lettering.Small, InkRole.Soft));
        if (notes.IsEmpty) return;
        _parts.Add((BlockGap, 0, (svg, y) => svg.Line(Edge, y, WidthUnits - Edge, y, Pen.Full(InkRole.Soft, 0.8))));
        _parts.Add((BlockGap, notes.HeightUnits, (svg, y) => notes.Write(svg, 1, Edge, y)));
    }

    private void Panel(SvgWriter svg, int index, double left, PanelHeader header, double top, double plotTop)
    {
        svg.OpenGroup($"panel-{index + 1}");
        header.Paint(svg, left + Edge, top);
        var endsEarly = index == _view.Panels.Count - 1 && (index + 1) % _rows != 0;
        var hasNumbersBelow = endsEarly || (index + 1) % _rows == 0;
        var place = new OxyRect(left, plotTop, ColumnUnits, _plotUnits + (hasNumbersBelow ? PanelPlot.NumbersBelowUnits : 0));
        PanelPlot.Render(PanelPlot.Build(_view.Panels[index], _view, _frame, hasNumbersBelow), new SvgRenderContext(svg), place);
        if (endsEarly) PaintFoot(svg, left, plotTop + _plotUnits + PanelPlot.NumbersBelowUnits);
        svg.Close();
    }
}
