namespace SetupService.Api.Drawings;

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
