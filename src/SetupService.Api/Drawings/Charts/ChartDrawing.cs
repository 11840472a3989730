using OxyPlot;

namespace SetupService.Api.Drawings.Charts;

/// <summary>Draws a chart as SVG. Letters and places are in text units, of which the picture is 560 wide.</summary>
public static class ChartDrawing
{
    /// <summary>The picture of a chart, readable at 400 pixels, in light and in dark surroundings.</summary>
    /// <param name="chart">What is to be drawn.</param>
    /// <returns>An SVG document without script and without reference to anything outside it.</returns>
    public static string Draw(Chart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var view = new ChartView(chart);
        var layout = new ChartLayout(view);
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "chart", (0, 0, DrawingFrame.WidthUnits, layout.HeightUnits), ChartWords.Title(view), ChartWords.Description(view));
        layout.Paint(svg);
        svg.Close();
        return svg.Finish();
    }
}

/// <summary>Puts the parts of a chart one under another: heading, legend, panels, the axis they share, notes.</summary>
internal sealed class ChartLayout
{
    private const double Width = DrawingFrame.WidthUnits;
    private const double Edge = DrawingFrame.EdgeUnits;
    private const double TextUnits = Width - (2 * Edge);
    private const double BlockGap = 12;
    private const double PanelGap = 22;
    private const double HeaderGap = 9;

    private readonly ChartView _view;
    private readonly List<(double GapUnits, double HeightUnits, Action<SvgWriter, double> Paint)> _parts = [];
    private readonly double _plotUnits;
    private readonly PlotFrame _frame;

    public ChartLayout(ChartView view)
    {
        _view = view;
        _plotUnits = view.Panels.Count switch { 1 => 260, 2 => 190, 3 => 155, _ => 128 };
        _frame = PlotFrame.From(view, _plotUnits);
        AddHead();
        for (var i = 0; i < view.Panels.Count; i++) AddPanel(i);
        if (view.Panels.Count > 0) AddFoot();
        AddNotes();
    }

    public double HeightUnits => _parts.Sum(part => part.GapUnits + part.HeightUnits) + Edge;

    public void Paint(SvgWriter svg)
    {
        var y = 0.0;
        foreach (var (gap, height, paint) in _parts)
        {
            paint(svg, y + gap);
            y += gap + height;
        }
    }

    private void AddHead()
    {
        var head = new TextBlock(TextUnits);
        head.Add(_view.Chart.Heading, new Lettering(Lettering.Figure, InkRole.Ink, IsBold: true));
        foreach (var line in _view.Chart.Lines) head.Add(line, new Lettering(Lettering.Small, InkRole.Soft));
        _parts.Add((Edge, head.HeightUnits, (svg, y) => head.Write(svg, 1, Edge, y)));
        var legend = ChartLegend.From(_view, TextUnits);
        if (legend.HeightUnits > 0) _parts.Add((BlockGap, legend.HeightUnits, (svg, y) => legend.Paint(svg, 1, Edge, y)));
    }

    private void AddPanel(int index)
    {
        var header = new PanelHeader(_view.Panels[index], _view, TextUnits);
        _parts.Add((PanelGap, header.HeightUnits + HeaderGap + _plotUnits, (svg, y) => Panel(svg, index, header, y)));
    }

    private void AddFoot()
    {
        var foot = new AxisFoot(_view.Chart.Across, Width - _frame.LeftUnits - _frame.RightUnits);
        _parts.Add((PanelPlot.NumbersBelowUnits, foot.HeightUnits, (svg, y) => foot.Paint(svg, _frame.LeftUnits, Width - _frame.RightUnits, y)));
    }

    private void AddNotes()
    {
        var notes = new TextBlock(TextUnits);
        foreach (var note in ChartWords.Notes(_view)) notes.Add(note, new Lettering(Lettering.Small, InkRole.Soft));
        if (notes.IsEmpty) return;
        _parts.Add((BlockGap, 0, (svg, y) => svg.Line(Edge, y, Width - Edge, y, Pen.Full(InkRole.Soft, 0.8))));
        _parts.Add((BlockGap, notes.HeightUnits, (svg, y) => notes.Write(svg, 1, Edge, y)));
    }

    private void Panel(SvgWriter svg, int index, PanelHeader header, double top)
    {
        svg.OpenGroup($"panel-{index + 1}");
        header.Paint(svg, Edge, top);
        Plot(svg, index, top + header.HeightUnits + HeaderGap);
        svg.Close();
    }

    private void Plot(SvgWriter svg, int index, double top)
    {
        var isLast = index == _view.Panels.Count - 1;
        var place = new OxyRect(0, top, Width, _plotUnits + (isLast ? PanelPlot.NumbersBelowUnits : 0));
        PanelPlot.Render(PanelPlot.Build(_view.Panels[index], _view, _frame, isLast), new SvgRenderContext(svg), place);
    }
}
