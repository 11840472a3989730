namespace SetupService.Api.Drawings;

/// <summary>How a text is lettered.</summary>
/// <param name="Size">Font size in text units.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="IsBold">Whether it is bold.</param>
/// <param name="Anchor">middle or end; null where the text begins at its point.</param>
/// <param name="HasHalo">Whether a rim of paper keeps it clear of lines behind it.</param>
internal readonly record struct Lettering(double Size, InkRole Ink, bool IsBold = false, string? Anchor = null, bool HasHalo = false)
{
    /// <summary>The smallest size: 12 pixels where the picture is shown 400 pixels wide.</summary>
    public const double Small = 17;

    /// <summary>The size of a dimension's figure.</summary>
    public const double Figure = 21;
}

/// <summary>
/// How wide a text may come out in the widest of the usual sans-serif faces, as a share of the font size. The reader's own face
/// is not known here, so the estimate errs to the wide side.
/// </summary>
internal static class TextWidth
{
    private const double BoldShare = 1.12;

    public static double Em(ReadOnlySpan<char> text, bool isBold)
    {
        var width = 0.0;
        foreach (var letter in text) width += Em(letter);
        return isBold ? width * BoldShare : width;
    }

    private static double Em(char letter) => letter switch
    {
        ' ' or 'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' => 0.34,
        'f' or 't' or 'r' or '(' or ')' or '/' or '-' or '[' or ']' => 0.42,
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '−' or '+' or '=' or '<' or '>' => 0.95,
        >= 'A' and <= 'Z' => 0.72,
        >= '0' and <= '9' => 0.64,
        >= 'a' and <= 'z' => 0.62,

        // Other scripts may be as wide as they are high.
        > '\u02ff' => 1.0,
        _ => 0.75,
    };
}

/// <summary>Breaks a text into lines that fit a width, at spaces where there are some and within a word where there are none.</summary>
internal static class TextWrap
{
    public static List<string> Lines(string text, double widthEm, bool isBold = false)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            var joined = line.Length == 0 ? word : $"{line} {word}";
            if (TextWidth.Em(joined, isBold) <= widthEm)
            {
                line = joined;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            line = word;
            while (TextWidth.Em(line, isBold) > widthEm && line.Length > 1)
            {
                var fitting = FittingLength(line, widthEm, isBold);
                lines.Add(line[..fitting]);
                line = line[fitting..];
            }
        }

        if (line.Length > 0) lines.Add(line);
        return lines;
    }

    private static int FittingLength(string word, double widthEm, bool isBold)
    {
        var length = 1;
        while (length < word.Length && TextWidth.Em(word.AsSpan(0, length + 1), isBold) <= widthEm) length++;

        // A pair of surrogates stays together.
        return length > 1 && char.IsHighSurrogate(word[length - 1]) ? length - 1 : length;
    }
}

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
