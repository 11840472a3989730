namespace SetupService.Api.Drawings.Charts;

/// <summary>What stands over a panel: its quantity, what the sign says, and the value at zero; in as many rows as they need.</summary>
internal sealed class PanelHeader
{
    private const double RowUnits = 23;
    private const double GapUnits = 14;

    private static readonly Lettering Name = new(Lettering.Small, InkRole.Ink, IsBold: true);
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);
    private static readonly Lettering Figure = new(Lettering.Small, InkRole.Ink, Anchor: "end");

    private readonly List<(double X, int Row, string Text, Lettering Lettering)> _texts = [];

    public PanelHeader(PanelView panel, ChartView view, double widthUnits)
    {
        var rows = 0;
        var x = 0.0;
        foreach (var line in TextWrap.Lines(ChartWords.Quantity(panel.Panel.Name, panel.Panel.Unit), widthUnits / Name.Size, isBold: true))
        {
            _texts.Add((0, rows++, line, Name));
            x = Width(line, Name);
        }

        var zero = ChartWords.AtZero(panel, view);
        var free = widthUnits - (zero is null ? 0 : Width(zero, Figure) + GapUnits);
        if (zero is not null)
        {
            if (x > free) (x, rows) = (0, rows + 1);
            _texts.Add((widthUnits, rows - 1, zero, Figure));
        }

        if (panel.Panel.Signs is { } signs)
        {
            if (x > 0 && x + GapUnits + Width(signs, Quiet) <= free)
            {
                _texts.Add((x + GapUnits, rows - 1, signs, Quiet));
            }
            else
            {
                foreach (var line in TextWrap.Lines(signs, widthUnits / Quiet.Size)) _texts.Add((0, rows++, line, Quiet));
            }
        }

        HeightUnits = rows * RowUnits;
    }

    public double HeightUnits { get; }

    public void Paint(SvgWriter svg, double left, double top)
    {
        foreach (var (x, row, text, lettering) in _texts) svg.Letters(left + x, top + (row * RowUnits) + 15, text, lettering);
    }

    private static double Width(string text, Lettering lettering) => TextWidth.Em(text, lettering.IsBold) * lettering.Size;
}

/// <summary>What stands under the numbers of the shared axis: its quantity, what zero is, and which way is which.</summary>
internal sealed class AxisFoot
{
    private const double RowUnits = 23;
    private const double GapUnits = 16;
    private const double ArrowGapUnits = 7;

    private static readonly Lettering Name = new(Lettering.Small, InkRole.Ink, IsBold: true, Anchor: "middle");
    private static readonly Lettering Quiet = new(Lettering.Small, InkRole.Soft);

    private readonly ChartAxis _axis;
    private readonly List<string> _middle;
    private readonly int _nameRows;
    private readonly int _sideRow;

    public AxisFoot(ChartAxis axis, double widthUnits)
    {
        _axis = axis;
        _middle = TextWrap.Lines(ChartWords.Quantity(axis.Name, axis.Unit), widthUnits / Name.Size, isBold: true);
        _nameRows = _middle.Count;
        if (axis.Zero is { } zero) _middle.AddRange(TextWrap.Lines($"0 = {zero}", widthUnits / Quiet.Size));

        // Beside the last row where it fits there, else under it.
        var last = TextWidth.Em(_middle[^1], _middle.Count == _nameRows) * Name.Size;
        var fits = last + (2 * Math.Max(SideUnits(axis.Low), SideUnits(axis.High))) + GapUnits <= widthUnits;
        _sideRow = axis.Low is null && axis.High is null ? -1 : fits ? _middle.Count - 1 : _middle.Count;
        HeightUnits = Math.Max(_middle.Count, _sideRow + 1) * RowUnits;
    }

    public double HeightUnits { get; }

    public void Paint(SvgWriter svg, double left, double right, double top)
    {
        for (var i = 0; i < _middle.Count; i++)
        {
            svg.Letters((left + right) / 2, Baseline(top, i), _middle[i], i < _nameRows ? Name : Quiet with { Anchor = "middle" });
        }

        if (_sideRow < 0) return;
        var indent = DirectionArrow.LengthUnits + ArrowGapUnits;
        if (_axis.Low is { } low)
        {
            DirectionArrow.Paint(svg, left, Baseline(top, _sideRow), 1);
            svg.Letters(left + indent, Baseline(top, _sideRow), low, Quiet);
        }

        if (_axis.High is { } high)
        {
            DirectionArrow.Paint(svg, right, Baseline(top, _sideRow), -1);
            svg.Letters(right - indent, Baseline(top, _sideRow), high, Quiet with { Anchor = "end" });
        }
    }

    private static double Baseline(double top, int row) => top + (row * RowUnits) + 16;

    private static double SideUnits(string? word) =>
        word is null ? 0 : (TextWidth.Em(word, isBold: false) * Quiet.Size) + DirectionArrow.LengthUnits + ArrowGapUnits;
}
