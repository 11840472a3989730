using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Outlines;

namespace SetupService.Api.Drawings;

/// <summary>The lines of text beside a dimension.</summary>
internal sealed class GapLabel
{
    private const double LineSpacing = 1.2;

    private readonly (string Text, Lettering Lettering)[] _lines;

    private GapLabel(params (string Text, Lettering Lettering)[] lines) => _lines = lines;

    public double HeightUnits => _lines.Sum(line => line.Lettering.Size * LineSpacing);

    public double WidthUnits => _lines.Max(line => line.Lettering.Size * TextWidth.Em(line.Text, line.Lettering.IsBold));

    public static GapLabel Of(RoomLine line, in CheckResult result, UnitSystem units)
    {
        var ink = DrawingWords.StatusInk(result.Status);
        var name = (DrawingWords.Place(line.Place), new Lettering(Lettering.Small, InkRole.Ink, HasHalo: true));
        var word = new Lettering(Lettering.Small, ink, IsBold: true, HasHalo: true);
        var size = DrawingWords.Length(Math.Abs(line.NominalMm), units);
        var figureSize = Math.Min(Lettering.Figure, DrawingFrame.ColumnTextUnits / TextWidth.Em(size, isBold: true));
        if (line.NominalMm < 0)
        {
            return new(name, ("touches,", word), (size, word with { Size = figureSize }), ("too much", word));
        }

        var figure = (size, new Lettering(figureSize, InkRole.Ink, IsBold: true, HasHalo: true));
        return result.Status == CheckStatus.Fail
            ? new(name, figure, ("probably", word), ("touches", word))
            : new(name, figure, (DrawingWords.Status(result), word));
    }

    /// <summary>The same in two lines, for the place over the tread, where there is more width than height.</summary>
    public static GapLabel Wide(RoomLine line, in CheckResult result, UnitSystem units)
    {
        var size = DrawingWords.Length(Math.Abs(line.NominalMm), units);
        var status = DrawingWords.Status(result);
        var ink = DrawingWords.StatusInk(result.Status);
        return new(
            (DrawingWords.Place(line.Place), new Lettering(Lettering.Small, InkRole.Ink, HasHalo: true)),
            line.NominalMm < 0
                ? ($"touches, {size} too much", new Lettering(Lettering.Small, ink, IsBold: true, HasHalo: true))
                : ($"{size}, {status}", new Lettering(Lettering.Figure - 1, ink, IsBold: true, HasHalo: true)));
    }

    /// <summary>Writes the lines downwards from <paramref name="topMm"/>.</summary>
    public void Write(SvgWriter svg, double unitMm, double x, double topMm, string? anchor)
    {
        var y = topMm;
        foreach (var (text, lettering) in _lines)
        {
            y += lettering.Size * LineSpacing * unitMm;
            svg.Letters(x, y - (0.28 * lettering.Size * unitMm), text, lettering with { Anchor = anchor });
        }
    }
}
