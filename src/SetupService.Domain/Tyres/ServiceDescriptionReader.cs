using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>Reads the service description: one or two load indices and a speed symbol, as in 94W, 109/107T or (104Y).</summary>
internal static class ServiceDescriptionReader
{
    private const string Expected = "a load index and speed symbol such as 94W, 109/107T or (104Y)";

    public static ParseFault? Read(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        if (parts.LoadIndex is not null)
        {
            return cursor.NotRead(start, "read after a first load index; a marking has one service description");
        }

        var isBracketed = cursor.TryTakeAnyOf("(");
        if (ReadIndices(ref cursor, parts, start) is { } fault)
        {
            return fault;
        }

        cursor.SkipSpaces();
        isBracketed |= cursor.TryTakeAnyOf("(");
        cursor.SkipSpaces();
        if (!TryReadSymbol(ref cursor, parts))
        {
            return cursor.NotRead(start, Expected);
        }

        if (!isBracketed)
        {
            return null;
        }

        cursor.SkipSpaces();
        if (!cursor.TryTakeAnyOf(")"))
        {
            return cursor.NotRead(start, "closed: a bracket opens and does not end after the speed symbol, as in (104Y)");
        }

        parts.IsSpeedOpenEnded = true;
        return parts.SpeedSymbol is { Letter: 'W' or 'Y' }
            ? null
            : cursor.Refused(start, cursor.Position, "has brackets, which stand for speeds above the symbol's and only go round W or Y");
    }

    private static ParseFault? ReadIndices(ref MarkingCursor cursor, TyreMarkingParts parts, int start)
    {
        cursor.SkipSpaces();
        if (ReadIndex(ref cursor, start, out var single) is { } fault)
        {
            return fault;
        }

        parts.LoadIndex = single;
        var afterSingle = cursor.Position;
        cursor.SkipSpaces();
        if (!cursor.TryTakeAnyOf("/"))
        {
            cursor.MoveTo(afterSingle);
            return null;
        }

        cursor.SkipSpaces();
        if (ReadIndex(ref cursor, start, out var dual) is { } dualFault)
        {
            return dualFault;
        }

        parts.LoadIndexDual = dual;
        return null;
    }

    private static ParseFault? ReadIndex(ref MarkingCursor cursor, int start, out int index)
    {
        index = 0;
        if (!cursor.TryTakeNumber(out var number))
        {
            return cursor.NotRead(start, Expected);
        }

        if (!number.IsWhole || !number.IsWithin(0, LoadIndexTable.MaximumIndex))
        {
            return cursor.Refused(number, $"is not a load index from 0 to {LoadIndexTable.MaximumIndex}");
        }

        index = (int)number.Value;
        return null;
    }

    // The symbol is one letter; a further letter right behind it is read only where a load version follows, as in 94WXL.
    private static bool TryReadSymbol(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var letters = cursor.PeekLetters();
        if (letters.IsEmpty
            || !SpeedSymbolTable.TryGet(letters[0], out var symbol)
            || (letters.Length > 1 && !letters[1..].Equals("XL", StringComparison.OrdinalIgnoreCase)))
        {
            return false;
        }

        parts.SpeedSymbol = symbol;
        cursor.MoveTo(cursor.Position + 1);
        return true;
    }
}
