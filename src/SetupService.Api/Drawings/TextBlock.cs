namespace SetupService.Api.Drawings;

/// <summary>Lines of text one under another, broken where they do not fit.</summary>
internal sealed class TextBlock(double widthUnits)
{
    private const double LineSpacing = 1.35;
    private const double BaselineShare = 1.02;

    private readonly List<(string Text, Lettering Lettering)> _lines = [];

    public double HeightUnits => _lines.Sum(line => line.Lettering.Size * LineSpacing);

    public bool IsEmpty => _lines.Count == 0;

    public void Add(string text, Lettering lettering)
    {
        foreach (var line in TextWrap.Lines(text, widthUnits / lettering.Size, lettering.IsBold)) _lines.Add((line, lettering));
    }

    /// <summary>Writes the lines downwards from <paramref name="top"/>.</summary>
    public void Write(SvgWriter svg, double unit, double x, double top)
    {
        foreach (var (text, lettering) in _lines)
        {
            svg.Letters(x, top + (BaselineShare * lettering.Size * unit), text, lettering);
            top += lettering.Size * LineSpacing * unit;
        }
    }
}
