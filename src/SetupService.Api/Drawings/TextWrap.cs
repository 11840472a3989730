namespace SetupService.Api.Drawings;

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
