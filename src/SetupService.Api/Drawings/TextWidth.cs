namespace SetupService.Api.Drawings;

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
