namespace SetupService.Api.Drawings;

/// <summary>Writes the legend downwards from its place in the frame.</summary>
internal sealed class LegendPainter
{
    private const double NominalUnits = 250;
    private const double WorstUnits = 356;
    private const double StatusUnits = 371;

    private static readonly Lettering Plain = new(Lettering.Small, InkRole.Ink);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    private readonly SvgWriter svg;
    private readonly DrawingFrame frame;
    private double y;

    private LegendPainter(SvgWriter svg, DrawingFrame frame)
    {
        this.svg = svg;
        this.frame = frame;
        y = frame.LegendTopMm;
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

    private double X(double units) => frame.LeftMm + (units * frame.UnitMm);

    private void Space() => y += Legend.SpaceUnits * frame.UnitMm;

    private void Rule()
    {
        var middle = y + (0.4 * Legend.RuleUnits * frame.UnitMm);
        svg.Line(X(DrawingFrame.EdgeUnits), middle, X(DrawingFrame.WidthUnits - DrawingFrame.EdgeUnits), middle, Pen.Full(InkRole.Soft, 0.8));
        y += Legend.RuleUnits * frame.UnitMm;
    }

    private void Fitting(IReadOnlyList<string> lines, Pen swatch)
    {
        var unit = frame.UnitMm;
        svg.Rectangle(X(DrawingFrame.EdgeUnits), y + (4 * unit), 42 * unit, 16 * unit, swatch);
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
        y += Legend.LineUnits * frame.UnitMm;
    }

    private void Lines(IReadOnlyList<string> lines, Lettering lettering)
    {
        foreach (var line in lines) Letters(DrawingFrame.EdgeUnits, line, lettering);
    }

    private void Letters(double units, string text, Lettering lettering)
    {
        Put(units, text, lettering);
        y += Legend.LineUnits * frame.UnitMm;
    }

    private void Put(double units, string text, Lettering lettering) =>
        svg.Letters(X(units), y + (0.76 * Legend.LineUnits * frame.UnitMm), text, lettering);
}
