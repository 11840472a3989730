using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads one mark beside the service description: load version and range, run-flat, snow, tube, or a mark of approval or group of capitals that is kept
/// unread.
/// </summary>
internal static class TyreMarkReader
{
    private const int LongestUnreadMark = 5;

    private static readonly (string Mark, LoadVersion Version)[] LoadVersionMarks =
    [
        ("REINFORCED", LoadVersion.ExtraLoad),
        ("REINF", LoadVersion.ExtraLoad),
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
        var isThere = cursor.TryTakeWords("3", "PMSF");
        parts.HasMountainMark |= isThere;
        return isThere;
    }

    public static ParseFault? Read(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (TryReadApproval(ref cursor, parts) || TryReadMudAndSnow(ref cursor, parts) || TryReadRunFlat(ref cursor, parts)
            || LoadRangeReader.TryReadBareLetter(ref cursor, parts))
        {
            return null;
        }

        if (LoadRangeReader.TryReadRange(ref cursor, parts, out var rangeFault))
        {
            return rangeFault;
        }

        var start = cursor.Position;
        if (TryReadTube(ref cursor) is { } isTubeless)
        {
            return SetTubeless(cursor, parts, isTubeless, start);
        }

        if (cursor.TryTakeWords("EXTRA", "LOAD"))
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

    /// <summary>Takes a load version; the fault where it contradicts an earlier one, or the size.</summary>
    public static ParseFault? SetLoadVersion(MarkingCursor cursor, TyreMarkingParts parts, LoadVersion version, int start)
    {
        if (parts.LoadVersion is { } earlier && earlier != version)
        {
            return cursor.Refused(
                start, cursor.Position, $"contradicts the earlier mark for {Words(earlier)}; a tyre has one load version");
        }

        if ((parts.IsPMetric || parts.IsTemporarySpare) && version is (LoadVersion.Commercial or LoadVersion.CommercialCamper or LoadVersion.LightTruck))
        {
            return cursor.Refused(start, cursor.Position, $"contradicts the {(parts.IsPMetric ? 'P' : 'T')} before the size, which marks a {(parts.IsPMetric ? "car tyre" : "temporary spare")}");
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
            if (cursor.TryTakeAnyOf("+&/.-"))
            {
                cursor.TryTakeAnyOf("+&/.-");
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
        var isThere = cursor.TryTakeWord("RFT") || cursor.TryTakeWords("RUN", "FLAT");
        parts.IsRunFlat |= isThere;
        return isThere;
    }

    /// <summary>True for a tyre without tube, false for one with it; null where no such mark stands here.</summary>
    private static bool? TryReadTube(ref MarkingCursor cursor)
    {
        if (cursor.TryTakeWord("TUBELESS") || cursor.TryTakeWords("TUBE", "LESS") || cursor.TryTakeWord("TL"))
        {
            return true;
        }

        return cursor.TryTakeWords("TUBE", "TYPE") || cursor.TryTakeWord("TUBED") || cursor.TryTakeWord("TT") ? false : null;
    }

    private static ParseFault? SetTubeless(MarkingCursor cursor, TyreMarkingParts parts, bool isTubeless, int start)
    {
        if (parts.IsTubeless is { } earlier && earlier != isTubeless)
        {
            return cursor.Refused(start, cursor.Position, "contradicts the earlier mark; a tyre is made for use with a tube or without");
        }

        parts.IsTubeless = isTubeless;
        return null;
    }

    // A vehicle maker's mark of approval: stars, or capitals and one digit. Who means what by it is not known here.
    private static bool TryReadApproval(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        var mark = new string(cursor.PeekLetters());
        var digit = cursor.Ahead(mark.Length);
        if (mark.Length is > 0 and <= LongestUnreadMark && !mark.AsSpan().ContainsAnyExceptInRange('A', 'Z') && char.IsAsciiDigit(digit) && cursor.AtPartStart)
        {
            cursor.MoveTo(start + mark.Length + 1);
            mark += digit;
        }
        else
        {
            while (cursor.TryTakeAnyOf("*"))
            {
            }

            mark = new string('*', cursor.Position - start);
        }

        if (cursor.Position > start && cursor.AtPartEnd)
        {
            parts.UnreadMarks.Add(mark);
            return true;
        }

        cursor.MoveTo(start);
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

        // Halves of known marks: kept unread they could meet their other half in the standard spelling.
        var isHalf = letters is "RUN" or "EXTRA" or "LOAD" or "RANGE" or "LR" or "TUBE" or "PLY" or "PR";
        if (letters.IsEmpty || letters.Length > LongestUnreadMark || letters.ContainsAnyExceptInRange('A', 'Z') || !cursor.AtPartEnd || isHalf)
        {
            return cursor.NotRead(
                start,
                $"a mark that is read here (such as 94W, XL, C, M+S, 3PMSF, RFT, LRE, 10PR, TL); other marks must be stars, or one to {LongestUnreadMark} capital letters with a digit or none");
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
