namespace SetupService.Domain.Answers;

/// <summary>
/// Text as people type it and paste it from pages and papers, made plain for a reader. Every character becomes exactly one, so that a position in
/// the plain text is the same position in the text as typed.
/// </summary>
public static class TypedText
{
    /// <summary>
    /// The text with plain characters: one kind of dash, cross, slash and star; full-width letters and digits as ordinary ones; quotes, brackets of the
    /// square kind, separators between parts and marks of printing as spaces. A comma or point between digits stays; so does what has no plain form.
    /// </summary>
    public static string Plain(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return string.Create(typed.Length, typed, static (plain, text) =>
        {
            for (var i = 0; i < plain.Length; i++)
            {
                plain[i] = Plain(text[i]);
            }

            for (var i = 0; i < plain.Length; i++)
            {
                if (plain[i] is ',' or '.' && IsPunctuation(plain, i)) plain[i] = ' ';
            }
        });
    }

    private static char Plain(char typed) => typed switch
    {
        >= '0' and <= '9' or >= 'A' and <= 'Z' or >= 'a' and <= 'z' => typed,
        >= '\uFF10' and <= '\uFF19' => (char)(typed - '\uFF10' + '0'),
        >= '\uFF21' and <= '\uFF3A' => (char)(typed - '\uFF21' + 'A'),
        >= '\uFF41' and <= '\uFF5A' => (char)(typed - '\uFF41' + 'a'),
        '×' or '✕' or '✖' or '⨯' or 'х' or 'Х' => 'x',
        '‐' or '‑' or '‒' or '–' or '—' or '―' or '−' or '﹣' or '－' => '-',
        '／' or '⁄' or '∕' => '/',
        '★' or '☆' or '✩' or '✭' or '✶' or '＊' => '*',
        '＋' => '+',
        '＆' => '&',
        '（' => '(',
        '）' => ')',
        '，' => ',',
        '．' => '.',
        '"' or '\'' or '`' or '´' or '“' or '”' or '„' or '‟' or '‘' or '’' or '‚' or '«' or '»' or '″' or '′' => ' ',
        ';' or ':' or '|' or '=' or '_' or '[' or ']' or '·' or '•' or '®' or '™' or '\u00AD' or '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' => ' ',
        _ => char.IsWhiteSpace(typed) ? ' ' : typed,
    };

    /// <summary>A comma not between two digits, or a point at the end of a part, separates; any other may belong to a number or to letters (M.S).</summary>
    private static bool IsPunctuation(ReadOnlySpan<char> text, int at)
    {
        var isLast = at + 1 >= text.Length;
        if (text[at] == '.') return isLast || text[at + 1] is ' ' or '.' or ',';
        return isLast || at == 0 || !char.IsAsciiDigit(text[at - 1]) || !char.IsAsciiDigit(text[at + 1]);
    }
}
