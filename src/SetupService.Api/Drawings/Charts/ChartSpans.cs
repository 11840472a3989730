namespace SetupService.Api.Drawings.Charts;

/// <summary>A stretch of the shared axis with its own words, drawn as a bar under the panels: a range, a reading with its error, how far something can be set.</summary>
/// <param name="Words">What it is, with its figures.</param>
/// <param name="From">Where it begins, in the axis' unit.</param>
/// <param name="To">Where it ends; at or above <paramref name="From"/>.</param>
public sealed record ChartSpan(string Words, double From, double To)
{
    /// <summary>The value in it, drawn as a dot; null for none.</summary>
    public double? Value { get; init; }
}

/// <summary>A column of stretches under a chart's panels, each below its words; what goes on beyond the axis is cut off there at an arrowhead.</summary>
internal sealed class SpanRows
{
    private const double BarUnits = 9;
    private const double BarGapUnits = 5;
    private const double RowGapUnits = 9;
    private const double DotUnits = 5;
    private const double EdgeWidth = 1.6;
    private const double ArrowUnits = 7;

    private readonly ChartRange _across;
    private readonly List<(ChartSpan Span, TextBlock Words)> _rows = [];

    public SpanRows(IEnumerable<ChartSpan> spans, ChartRange across, double widthUnits)
    {
        _across = across;
        foreach (var span in spans)
        {
            var words = new TextBlock(widthUnits);
            words.Add(span.Words, new Lettering(Lettering.Small, InkRole.Ink));
            _rows.Add((span, words));
        }
    }

    public double HeightUnits => _rows.Sum(row => row.Words.HeightUnits + BarGapUnits + BarUnits) + (Math.Max(0, _rows.Count - 1) * RowGapUnits);

    /// <summary>Draws the words from the picture's edge, the bars over the plots' own width.</summary>
    public void Paint(SvgWriter svg, double textLeft, double left, double right, double top)
    {
        foreach (var (span, words) in _rows)
        {
            words.Write(svg, 1, textLeft, top);
            top += words.HeightUnits + BarGapUnits;
            Bar(svg, span, left, right, top);
            top += BarUnits + RowGapUnits;
        }
    }

    private void Bar(SvgWriter svg, ChartSpan span, double left, double right, double top)
    {
        var middle = top + (BarUnits / 2);
        svg.Line(left, middle, right, middle, Pen.Full(InkRole.Soft, 0.8));
        if (span.To >= _across.Low && span.From <= _across.High && span.To > span.From)
        {
            var (from, to) = (Place(Math.Max(span.From, _across.Low)), Place(Math.Min(span.To, _across.High)));
            svg.Rectangle(from, top, to - from, BarUnits, Pen.Filled(InkRole.Candidate, 0.3));
            if (span.From >= _across.Low) svg.Line(from, top - 1, from, top + BarUnits + 1, Pen.Full(InkRole.Candidate, EdgeWidth));
            if (span.To <= _across.High) svg.Line(to, top - 1, to, top + BarUnits + 1, Pen.Full(InkRole.Candidate, EdgeWidth));
        }

        if (span.From < _across.Low) GoesOn(left, 1);
        if (span.To > _across.High) GoesOn(right, -1);
        if (span.Value is { } value && value >= _across.Low && value <= _across.High) svg.Circle(Place(value), middle, DotUnits, Pen.Filled(InkRole.Candidate));

        // An arrowhead at the edge of the axis beyond which it goes on.
        void GoesOn(double edge, int inward)
        {
            svg.Line(edge, middle, edge + (inward * ArrowUnits), top - 1, Pen.Full(InkRole.Candidate, EdgeWidth));
            svg.Line(edge, middle, edge + (inward * ArrowUnits), top + BarUnits + 1, Pen.Full(InkRole.Candidate, EdgeWidth));
        }

        double Place(double x) => left + ((x - _across.Low) / _across.Span * (right - left));
    }
}
