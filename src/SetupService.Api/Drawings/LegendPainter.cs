namespace SetupService.Api.Drawings;

/// <summary>Writes the legend downwards from its place in the frame.</summary>
internal sealed class LegendPainter
{
    private const double NominalUnits = 250;
    private const double WorstUnits = 356;
    private const double StatusUnits = 371;

    private static readonly Lettering Plain = new(Lettering.Small, InkRole.Ink);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    private readonly SvgWriter _svg;
    private readonly DrawingFrame _frame;
    private double _y;

    private LegendPainter(SvgWriter svg, DrawingFrame frame)
    {
        _svg = svg;
        _frame = frame;
        _y = _frame.LegendTopMm;
    }

    public static void Paint(SvgWriter svg, Legend legend, DrawingFrame frame)
    {
        svg.OpenGroup("legend");
        var painter = new LegendPainter(svg, frame);
        painter.Rule();
        painter.Fitting(legend.Candidate, Pen.Full(InkRole.Candidate, 1.8).WithFill(InkRole.Candidate, 0.3));
        painter.Space();
        painter.Fitting(legend.Now, Pen.Dashed(InkRole.Current, 1.9, 7, 4));
        if (legend.Gaps.Count > 0) painter.Schedule(legend.Gaps);
        painter.Rule();
        painter.Lines(legend.Verdict, new Lettering(Lettering.Small, legend.VerdictInk, IsBold: true));
        painter.Space();
        painter.Lines(legend.Notes, Quiet);
        svg.Close();
    }

    private double X(double units) => _frame.LeftMm + (units * _frame.UnitMm);

    private void Space() => _y += Legend.SpaceUnits * _frame.UnitMm;

    private void Rule()
    {
        var middle = _y + (0.4 * Legend.RuleUnits * _frame.UnitMm);
        _svg.Line(X(DrawingFrame.EdgeUnits), middle, X(DrawingFrame.WidthUnits - DrawingFrame.EdgeUnits), middle, Pen.Full(InkRole.Soft, 0.8));
        _y += Legend.RuleUnits * _frame.UnitMm;
    }

    private void Fitting(IReadOnlyList<string> lines, Pen swatch)
    {
        var unit = _frame.UnitMm;
        _svg.Rectangle(X(DrawingFrame.EdgeUnits), _y + (4 * unit), 42 * unit, 16 * unit, swatch);
        for (var i = 0; i < lines.Count; i++) Letters(Legend.SwatchedUnits, lines[i], Plain with { IsBold = i == 0 });
    }

    private void Schedule(IReadOnlyList<GapRow> rows)
    {
        Rule();
        Row("room left", "nominal", "worst case", "", Quiet, Quiet);
        foreach (var row in rows) Row(row.Place, row.Nominal, row.WorstCase, row.Status, Plain, new(Lettering.Small, row.Ink, IsBold: true));
    }

    private void Row(string place, string nominal, string worst, string status, Lettering plain, Lettering word)
    {
        Put(DrawingFrame.EdgeUnits, place, plain);
        Put(NominalUnits, nominal, plain with { Anchor = "end" });
        Put(WorstUnits, worst, plain with { Anchor = "end" });
        if (status.Length > 0) Put(StatusUnits, status, word);
        _y += Legend.LineUnits * _frame.UnitMm;
    }

    private void Lines(IReadOnlyList<string> lines, Lettering lettering)
    {
        foreach (var line in lines) Letters(DrawingFrame.EdgeUnits, line, lettering);
    }

    private void Letters(double units, string text, Lettering lettering)
    {
        Put(units, text, lettering);
        _y += Legend.LineUnits * _frame.UnitMm;
    }

    private void Put(double units, string text, Lettering lettering) =>
        _svg.Letters(X(units), _y + (0.76 * Legend.LineUnits * _frame.UnitMm), text, lettering);
}
