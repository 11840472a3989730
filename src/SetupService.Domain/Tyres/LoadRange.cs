using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Load ranges of the American family and the ply ratings they stand for: A 2, B 4, C 6, D 8, E 10, F 12, G 14, H 16, J 18, L 20, M 22, N 24 (several
/// lists read, concordant). The letter alone does not fix the pressure: that stands on the sidewall.
/// </summary>
public static class LoadRange
{
    /// <summary>The letters, lightest first; each stands for two plies more than the one before.</summary>
    internal const string Letters = "ABCDEFGHJLMN";

    /// <summary>The ply rating a letter stands for; null where it is none of them.</summary>
    public static int? PlyRating(char letter)
    {
        var index = Letters.IndexOf(char.ToUpperInvariant(letter), StringComparison.Ordinal);
        return index < 0 ? null : 2 * (index + 1);
    }

    /// <summary>The letter of a ply rating; null where none stands for it.</summary>
    public static char? Letter(int plyRating) => plyRating is >= 2 and <= 24 && plyRating % 2 == 0 ? Letters[(plyRating / 2) - 1] : null;
}

/// <summary>Reads load-range and ply marks: LRE, Load Range E, 10PR, 10 ply.</summary>
internal static class LoadRangeReader
{
    /// <summary>True when a ply mark stands here, also where it is refused.</summary>
    public static bool TryReadPly(ref MarkingCursor cursor, TyreMarkingParts parts, out ParseFault? fault)
    {
        fault = null;
        var start = cursor.Position;
        if (cursor.TryTakeNumber(out var plies))
        {
            cursor.SkipSpaces();
            cursor.TryTakeAnyOf("-");
            cursor.SkipSpaces();
            if (cursor.TryTakeWords("PLY", "RATING") || cursor.TryTakeWords("PLY", "RATED") || cursor.TryTakeWord("PLY") || cursor.TryTakeWord("PR"))
            {
                fault = plies.IsWhole && LoadRange.Letter((int)Math.Min(plies.Value, 100)) is not null
                    ? SetPlies(cursor, parts, (int)plies.Value, start)
                    : cursor.Refused(plies, "is not a ply rating, an even number from 2 to 24");
                return true;
            }
        }

        cursor.MoveTo(start);
        return false;
    }

    /// <summary>True when a load range with its words stands here, also where it is refused.</summary>
    public static bool TryReadRange(ref MarkingCursor cursor, TyreMarkingParts parts, out ParseFault? fault)
    {
        fault = null;
        var start = cursor.Position;
        foreach (var letter in LoadRange.Letters)
        {
            var word = letter.ToString();
            if (cursor.TryTakeWord("LR" + word) || cursor.TryTakeWords("LR", word) || TryTakeLoadRange(ref cursor, word))
            {
                fault = SetRange(cursor, parts, letter, start);
                return true;
            }
        }

        foreach (var (word, version) in (ReadOnlySpan<(string, LoadVersion)>)[("SL", LoadVersion.StandardLoad), ("XL", LoadVersion.ExtraLoad), ("LL", LoadVersion.LightLoad), ("HL", LoadVersion.HighLoad)])
        {
            if (cursor.TryTakeWords("LR", word) || TryTakeLoadRange(ref cursor, word))
            {
                fault = TyreMarkReader.SetLoadVersion(cursor, parts, version, start);
                return true;
            }
        }

        return false;
    }

    /// <summary>True when a bare letter stands here on a light-truck tyre without a load range so far: there C is its load range, not the European C.</summary>
    public static bool TryReadBareLetter(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (parts.LoadVersion != LoadVersion.LightTruck)
        {
            return false;
        }

        foreach (var letter in "CDE")
        {
            if (!cursor.TryTakeWord(letter.ToString()))
            {
                continue;
            }

            if (parts.LoadRange is null && parts.PlyRating is null)
            {
                parts.LoadRange = letter;
            }
            else if (parts.LoadRange != letter)
            {
                parts.UnreadMarks.Add(letter.ToString());
            }

            return true;
        }

        return false;
    }

    private static bool TryTakeLoadRange(ref MarkingCursor cursor, string word)
    {
        var start = cursor.Position;
        if (cursor.TryTakeWords("LOAD", "RANGE"))
        {
            cursor.SkipSpaces();
            cursor.TryTakeAnyOf("-");
            cursor.SkipSpaces();
            if (cursor.TryTakeWord(word))
            {
                return true;
            }
        }

        cursor.MoveTo(start);
        return false;
    }

    private static ParseFault? SetRange(MarkingCursor cursor, TyreMarkingParts parts, char letter, int start)
    {
        if ((parts.LoadRange is { } earlier && earlier != letter) || (parts.PlyRating is { } plies && plies != LoadRange.PlyRating(letter)))
        {
            return cursor.Refused(start, cursor.Position, "contradicts the earlier load range or ply rating; a tyre has one");
        }

        parts.LoadRange = letter;
        return null;
    }

    private static ParseFault? SetPlies(MarkingCursor cursor, TyreMarkingParts parts, int plies, int start)
    {
        if ((parts.PlyRating is { } earlier && earlier != plies) || (parts.LoadRange is { } letter && LoadRange.PlyRating(letter) != plies))
        {
            return cursor.Refused(start, cursor.Position, "contradicts the earlier load range or ply rating; a tyre has one");
        }

        parts.PlyRating = plies;
        return null;
    }
}
