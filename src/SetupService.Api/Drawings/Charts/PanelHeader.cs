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
