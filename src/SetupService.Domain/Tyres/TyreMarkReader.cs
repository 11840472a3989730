using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads one mark beside the service description: load version, run-flat, snow, or a group of capitals that is kept unread.
/// </summary>
internal static class TyreMarkReader
{
    private const int LongestUnreadMark = 5;

    private static readonly (string Mark, LoadVersion Version)[] LoadVersionMarks =
    [
        ("REINFORCED", LoadVersion.ExtraLoad),
        ("XL", LoadVersion.ExtraLoad),
        ("RF", LoadVersion.ExtraLoad),
        ("SL", LoadVersion.StandardLoad),
        ("LL", LoadVersion.LightLoad),
        ("HL", LoadVersion.HighLoad),
        ("LT", LoadVersion.LightTruck),
        ("CP", LoadVersion.CommercialCamper),
        ("C", LoadVersion.Commercial),
    ];

    /// <summary>True when the mark for severe snow stands here; it begins with a digit and is no load index.</summary>
    public static bool TryReadMountain(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var isThere = cursor.TryTakeWord("3PMSF");
        parts.HasMountainMark |= isThere;
        return isThere;
    }

    public static ParseFault? Read(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (TryReadMudAndSnow(ref cursor, parts) || TryReadRunFlat(ref cursor, parts) || TryReadLoadRange(ref cursor, parts))
        {
            return null;
        }

        var start = cursor.Position;
        if (TryTakePair(ref cursor, "EXTRA", "LOAD"))
        {
            return SetLoadVersion(cursor, parts, LoadVersion.ExtraLoad, start);
        }

        foreach (var (mark, version) in LoadVersionMarks)
        {
            if (TryTakeMark(ref cursor, mark))
            {
                return SetLoadVersion(cursor, parts, version, start);
            }
        }

        return ReadUnread(ref cursor, parts);
    }

    private static ParseFault? SetLoadVersion(MarkingCursor cursor, TyreMarkingParts parts, LoadVersion version, int start)
    {
        if (parts.LoadVersion is { } earlier && earlier != version)
        {
            return cursor.Refused(
                start, cursor.Position, $"contradicts the earlier mark for {Words(earlier)}; a tyre has one load version");
        }

        if (parts.IsPMetric && version is (LoadVersion.Commercial or LoadVersion.CommercialCamper or LoadVersion.LightTruck))
        {
            return cursor.Refused(start, cursor.Position, "contradicts the P before the size, which marks a car tyre");
        }

        parts.LoadVersion = version;
        return null;
    }

    private static bool TryReadMudAndSnow(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        if (cursor.TryTakeWord("MS"))
        {
            parts.HasMudAndSnowMark = true;
            return true;
        }

        if (cursor.TryTakeWord("M"))
        {
            cursor.SkipSpaces();
            if (cursor.TryTakeAnyOf("+&/"))
            {
                cursor.SkipSpaces();
                if (cursor.TryTakeWord("S"))
                {
                    parts.HasMudAndSnowMark = true;
                    return true;
                }
            }
        }

        cursor.MoveTo(start);
        return false;
    }

    private static bool TryReadRunFlat(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var isThere = cursor.TryTakeWord("RFT") || cursor.TryTakeWord("RUNFLAT") || TryTakePair(ref cursor, "RUN", "FLAT");
        parts.IsRunFlat |= isThere;
        return isThere;
    }

    // Two words that mean something only together, with spaces or a hyphen between them.
    private static bool TryTakePair(ref MarkingCursor cursor, string first, string second)
    {
        var start = cursor.Position;
        if (cursor.TryTakeWord(first))
        {
            cursor.SkipSpaces();
            cursor.TryTakeAnyOf("-");
            cursor.SkipSpaces();
            if (cursor.TryTakeWord(second))
            {
                return true;
            }
        }

        cursor.MoveTo(start);
        return false;
    }

    // On a light-truck tyre a single C, D or E is the load range of its family, not the European C.
    private static bool TryReadLoadRange(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (parts.LoadVersion != LoadVersion.LightTruck)
        {
            return false;
        }

        foreach (var letter in (ReadOnlySpan<string>)["C", "D", "E"])
        {
            if (cursor.TryTakeWord(letter))
            {
                parts.UnreadMarks.Add(letter);
                return true;
            }
        }

        return false;
    }

    // The whole run of letters must be the mark; digits may follow at once, as in 215/65R16C109/107T.
    private static bool TryTakeMark(ref MarkingCursor cursor, string mark)
    {
        var isThere = cursor.PeekLetters().Equals(mark, StringComparison.OrdinalIgnoreCase);
        if (isThere)
        {
            cursor.MoveTo(cursor.Position + mark.Length);
        }

        return isThere;
    }

    private static ParseFault? ReadUnread(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        var letters = cursor.PeekLetters();
        cursor.MoveTo(start + letters.Length);
        var endsCleanly = cursor.AtEnd || char.IsWhiteSpace(cursor.Current);

        // RUN and EXTRA are halves of known marks; kept unread they could meet their other half in the standard spelling.
        var isHalfOfPair = letters is "RUN" or "EXTRA";
        if (letters.IsEmpty || letters.Length > LongestUnreadMark || letters.ContainsAnyExceptInRange('A', 'Z') || !endsCleanly || isHalfOfPair)
        {
            return cursor.NotRead(
                start,
                $"a mark that is read here (such as 94W, XL, C, M+S, 3PMSF, RFT); other marks must be one to {LongestUnreadMark} capital letters");
        }

        parts.UnreadMarks.Add(letters.ToString());
        return null;
    }

    private static string Words(LoadVersion version) => version switch
    {
        LoadVersion.ExtraLoad => "extra load",
        LoadVersion.LightLoad => "light load",
        LoadVersion.HighLoad => "high load",
        LoadVersion.Commercial => "commercial (C)",
        LoadVersion.CommercialCamper => "commercial camper (CP)",
        LoadVersion.LightTruck => "light truck (LT)",
        _ => "standard load",
    };
}
