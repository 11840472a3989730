using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;

namespace SetupService.Api.Drawings.Badge;

/// <summary>
/// A small card for a product page: a wheel, whether it fits in words, what decided that, and the wheel and tyre meant. The wheel's
/// ring says the verdict once more by its form: whole, with a gap, crossed out, or dashed where it is not known.
/// </summary>
public static class BadgeDrawing
{
    private const double WheelRadius = 17;
    private const double TextX = 58;
    private const double Edge = 12;
    private const double WidestText = 340;
    private const int MostNames = 3;

    private static readonly Lettering Headline = new(16, InkRole.Ink, IsBold: true);
    private static readonly Lettering Reason = new(13, InkRole.Ink);
    private static readonly Lettering Fitting = new(12, InkRole.Soft);

    /// <summary>The card of a check.</summary>
    /// <param name="car">The axle the check was made for.</param>
    /// <param name="candidate">The wheel and tyre it was made with.</param>
    /// <param name="sheet">Its results.</param>
    /// <param name="units">Units of the texts.</param>
    /// <returns>An SVG document without script and without reference to anything outside it, with a size of its own in pixels.</returns>
    public static string Draw(FitmentContext car, in Fitting candidate, CheckSheet sheet, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(sheet);
        var (headline, fitting) = (DrawingWords.Headline(sheet.Verdict, car.Position), DrawingWords.Fitting(candidate, units));
        List<(string Text, Lettering Lettering)> lines =
        [
            .. Broken(headline, Headline with { Ink = DrawingWords.StatusInk(sheet.Verdict) }),
            .. Broken(Why(car, sheet, units), Reason),
            .. Broken(fitting, Fitting),
        ];
        var textPx = lines.Max(static line => line.Lettering.Size * TextWidth.Em(line.Text, line.Lettering.IsBold));
        var (widthPx, heightPx) = (Math.Ceiling(TextX + textPx + Edge), Math.Ceiling((2 * Edge) + lines.Sum(Height)));
        using var svg = new SvgWriter(1);
        SvgDocument.Open(svg, "badge", (0, 0, widthPx, heightPx), $"{headline}: {fitting}", SummaryWords.Write(car, candidate, sheet, units), hasSize: true);
        svg.Rectangle(0.5, 0.5, widthPx - 1, heightPx - 1, Pen.Full(InkRole.Soft, 1));
        Wheel(svg, sheet.Verdict, Edge + WheelRadius, heightPx / 2);
        var y = Edge;
        foreach (var (text, lettering) in lines)
        {
            svg.Letters(TextX, y + lettering.Size, text, lettering);
            y += Height((text, lettering));
        }

        svg.Close();
        return svg.Finish();
    }

    private static double Height((string Text, Lettering Lettering) line) => 1.3 * line.Lettering.Size;

    private static IEnumerable<(string Text, Lettering Lettering)> Broken(string text, Lettering lettering) =>
        TextWrap.Lines(text, WidestText / lettering.Size, lettering.IsBold).Select(line => (line, lettering));

    private static string Why(FitmentContext car, CheckSheet sheet, UnitSystem units) => sheet.Verdict switch
    {
        CheckStatus.Fail => $"Fails on {Names(sheet.DecidedBy)}",
        CheckStatus.Unknown => $"Still to be measured or given for {Names(sheet.DecidedBy)}",
        CheckStatus.Caution => $"Look first at {Names(sheet.DecidedBy)}",
        _ => SummaryWords.Room(car, sheet, units) is { } room ? $"Leaves {room}" : "Takes no more room than what is fitted now",
    };

    private static string Names(CheckIdSet checks)
    {
        var names = new List<string>(checks.Count);
        foreach (var id in checks) names.Add(CheckNames.From(id));
        return names.Count <= MostNames
            ? string.Join(", ", names)
            : $"{string.Join(", ", names.Take(MostNames))} and {names.Count - MostNames} more";
    }

    private static void Wheel(SvgWriter svg, CheckStatus verdict, double x, double y)
    {
        var ink = DrawingWords.StatusInk(verdict);
        const double Turn = 2 * Math.PI * (WheelRadius - 3);
        svg.Circle(x, y, WheelRadius - 3, verdict switch
        {
            CheckStatus.Unknown => Pen.Dashed(ink, 6, Turn / 24, Turn / 24),
            CheckStatus.Caution => Pen.Dashed(ink, 6, Turn * 7 / 8, Turn / 8),
            _ => Pen.Full(ink, 6),
        });
        svg.Circle(x, y, 8, Pen.Full(InkRole.Soft, 1.5));
        svg.Circle(x, y, 2.5, Pen.Filled(InkRole.Soft));
        if (verdict == CheckStatus.Fail)
            svg.Line(x - WheelRadius, y + WheelRadius, x + WheelRadius, y - WheelRadius, Pen.Full(InkRole.Fail, 3));
    }
}
