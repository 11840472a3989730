using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>
/// What stands under the drawing: both fittings, the schedule of gaps, the verdict of the whole check and the notes, broken into
/// lines that fit.
/// </summary>
internal sealed class Legend
{
    /// <summary>Distance between lines, text units.</summary>
    public const double LineUnits = 23;

    /// <summary>Space before and after a ruled line, text units.</summary>
    public const double RuleUnits = 15;

    /// <summary>Space between blocks that no line divides, text units.</summary>
    public const double SpaceUnits = 5;

    /// <summary>Where the text beside a swatch begins, text units from the edge of the picture.</summary>
    public const double SwatchedUnits = 74;

    private const double EndUnits = 12;
    private const double TextEm = (DrawingFrame.WidthUnits - (2 * DrawingFrame.EdgeUnits)) / Lettering.Small;
    private const double SwatchedEm = (DrawingFrame.WidthUnits - SwatchedUnits - DrawingFrame.EdgeUnits) / Lettering.Small;

    private Legend(CornerView view)
    {
        Now = view.Car.Present is { } present ? Fitting("now", present, view.Units) : ["now: not described"];
        Candidate = Fitting("candidate", view.Candidate, view.Units);
        Gaps = GapRow.All(view);
        VerdictInk = DrawingWords.StatusInk(view.Sheet.Verdict);
        Verdict = TextWrap.Lines(DrawingWords.Verdict(view), TextEm, isBold: true);
        Notes = [.. DrawingNotes.List(view).SelectMany(note => TextWrap.Lines(note, TextEm))];
    }

    public IReadOnlyList<string> Now { get; }

    public IReadOnlyList<string> Candidate { get; }

    /// <summary>The schedule's rows; empty where no gap is known.</summary>
    public IReadOnlyList<GapRow> Gaps { get; }

    public IReadOnlyList<string> Verdict { get; }

    public InkRole VerdictInk { get; }

    public IReadOnlyList<string> Notes { get; }

    public double HeightUnits
    {
        get
        {
            var lines = Candidate.Count + Now.Count + Verdict.Count + Notes.Count + (Gaps.Count == 0 ? 0 : Gaps.Count + 1);
            var rules = Gaps.Count == 0 ? 2 : 3;
            return (lines * LineUnits) + (rules * RuleUnits) + (2 * SpaceUnits) + EndUnits;
        }
    }

    public static Legend From(CornerView view) => new(view);

    private static List<string> Fitting(string name, in Fitting fitting, UnitSystem units) =>
    [
        .. TextWrap.Lines($"{name}: {DrawingWords.Wheel(fitting.Wheel, units)}", SwatchedEm, isBold: true),
        .. TextWrap.Lines(fitting.Tyre.Marking.Text, SwatchedEm),
    ];
}

/// <summary>Draws the sample beside a name of a legend.</summary>
/// <param name="svg">Where it is drawn.</param>
/// <param name="unit">Size of a text unit.</param>
/// <param name="x">Its left end.</param>
/// <param name="y">Its middle.</param>
internal delegate void LegendSample(SvgWriter svg, double unit, double x, double y);

/// <summary>Names kinds of lines, each beside a sample of itself, as many to a row as fit.</summary>
internal sealed class FlowLegend
{
    /// <summary>Length of a sample, text units.</summary>
    public const double SampleUnits = 44;

    private const double SampleGapUnits = 9;
    private const double EntryGapUnits = 26;
    private const double RowUnits = 24;
    private const double IndentUnits = SampleUnits + SampleGapUnits;

    private readonly List<(double X, double Y, string Text, LegendSample? Sample)> _texts = [];

    /// <param name="entries">The names, each with what draws its sample.</param>
    /// <param name="widthUnits">The width there is, text units.</param>
    public FlowLegend(IEnumerable<(string Name, LegendSample Sample)> entries, double widthUnits)
    {
        var (x, row) = (0.0, 0);
        foreach (var (name, sample) in entries)
        {
            var lines = TextWrap.Lines(name, (widthUnits - IndentUnits) / Lettering.Small);
            var width = IndentUnits + (lines.Max(line => TextWidth.Em(line, isBold: false)) * Lettering.Small);
            if (x > 0 && x + width > widthUnits) (x, row) = (0, row + 1);
            for (var i = 0; i < lines.Count; i++) _texts.Add((x + IndentUnits, (row + i) * RowUnits, lines[i], i == 0 ? sample : null));
            if (lines.Count > 1) (x, row) = (0, row + lines.Count);
            else x += width + EntryGapUnits;
        }

        HeightUnits = _texts.Count == 0 ? 0 : _texts.Max(text => text.Y) + RowUnits;
    }

    public double HeightUnits { get; }

    public void Paint(SvgWriter svg, double unit, double left, double top)
    {
        if (_texts.Count == 0) return;
        svg.OpenGroup("legend");
        foreach (var (x, y, text, sample) in _texts)
        {
            sample?.Invoke(svg, unit, left + ((x - IndentUnits) * unit), top + ((y + (RowUnits / 2)) * unit));
            svg.Letters(left + (x * unit), top + ((y + (0.74 * RowUnits)) * unit), text, new Lettering(Lettering.Small, InkRole.Ink));
        }

        svg.Close();
    }
}

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
