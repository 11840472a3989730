using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>A service description: what a tyre may carry, and up to which speed.</summary>
/// <param name="LoadIndex">Load index in single fitment, 0 to 200.</param>
/// <param name="LoadIndexDual">Load index in twin fitment; null where only one is marked.</param>
/// <param name="SpeedSymbol">The speed symbol.</param>
public sealed record ServiceDescription(int LoadIndex, int? LoadIndexDual, SpeedSymbol SpeedSymbol)
{
    /// <summary>The load the index stands for in single fitment, kg.</summary>
    public double LoadCapacityKg => LoadIndexTable.CapacityKg(LoadIndex) ?? 0;
}

/// <summary>
/// Reads the service description: one or two load indices and a speed symbol, as in 94W, 109/107T or (104Y); and a second one beside the first, which
/// stands in brackets (112/110S (115N)) or follows on a tyre of the commercial kind.
/// </summary>
internal static class ServiceDescriptionReader
{
    private const string Expected = "a load index and speed symbol such as 94W, 109/107T or (104Y)";

    public static ParseFault? Read(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        var isBracketed = cursor.TryTakeAnyOf("(");
        if (ReadIndices(ref cursor, start, out var single, out var dual) is { } fault)
        {
            return fault;
        }

        cursor.SkipSpaces();
        isBracketed |= cursor.TryTakeAnyOf("(");
        cursor.SkipSpaces();
        if (ReadSymbol(ref cursor) is not { } symbol)
        {
            return cursor.NotRead(start, Expected);
        }

        if (isBracketed)
        {
            cursor.SkipSpaces();
            if (!cursor.TryTakeAnyOf(")"))
            {
                return cursor.NotRead(start, "closed: a bracket opens and does not end after the speed symbol, as in (104Y)");
            }
        }

        var description = new ServiceDescription(single, dual, symbol);
        return parts.LoadIndex is null
            ? SetFirst(cursor, parts, description, isBracketed, start)
            : SetSecond(cursor, parts, description, isBracketed, start);
    }

    private static ParseFault? SetFirst(MarkingCursor cursor, TyreMarkingParts parts, ServiceDescription description, bool isBracketed, int start)
    {
        parts.LoadIndex = description.LoadIndex;
        parts.LoadIndexDual = description.LoadIndexDual;
        parts.SpeedSymbol = description.SpeedSymbol;
        parts.IsSpeedOpenEnded = isBracketed;
        return !isBracketed || description.SpeedSymbol.Letter is 'W' or 'Y'
            ? null
            : cursor.Refused(start, cursor.Position, "has brackets, which stand for speeds above the symbol's and only go round W or Y");
    }

    private static ParseFault? SetSecond(MarkingCursor cursor, TyreMarkingParts parts, ServiceDescription description, bool isBracketed, int start)
    {
        var isFirstAgain = parts.LoadIndex == description.LoadIndex && parts.LoadIndexDual == description.LoadIndexDual
            && parts.SpeedSymbol == description.SpeedSymbol && parts.IsSpeedOpenEnded == isBracketed;
        if (isFirstAgain || parts.SecondServiceDescription == description)
        {
            return null;
        }

        if (parts.SecondServiceDescription is not null)
        {
            return cursor.Refused(start, cursor.Position, "is a third service description; a tyre has at most two");
        }

        var isCommercial = parts.LoadIndexDual is not null
            || parts.LoadVersion is LoadVersion.Commercial or LoadVersion.CommercialCamper or LoadVersion.LightTruck;
        if (!isBracketed && !isCommercial)
        {
            return cursor.Refused(start, cursor.Position, "is a second service description, which a car tyre has not; on commercial tyres it stands in brackets, as in 112/110S (115N)");
        }

        parts.SecondServiceDescription = description;
        return null;
    }

    private static ParseFault? ReadIndices(ref MarkingCursor cursor, int start, out int single, out int? dual)
    {
        dual = null;
        cursor.SkipSpaces();
        if (ReadIndex(ref cursor, start, out single) is { } fault)
        {
            return fault;
        }

        var afterSingle = cursor.Position;
        cursor.SkipSpaces();
        if (!cursor.TryTakeAnyOf("/"))
        {
            cursor.MoveTo(afterSingle);
            return null;
        }

        cursor.SkipSpaces();
        if (ReadIndex(ref cursor, start, out var twin) is { } dualFault)
        {
            return dualFault;
        }

        dual = twin;
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
    private static SpeedSymbol? ReadSymbol(ref MarkingCursor cursor)
    {
        var letters = cursor.PeekLetters();
        if (letters.IsEmpty
            || !SpeedSymbolTable.TryGet(letters[0], out var symbol)
            || (letters.Length > 1 && !letters[1..].Equals("XL", StringComparison.OrdinalIgnoreCase)))
        {
            return null;
        }

        cursor.MoveTo(cursor.Position + 1);
        return symbol;
    }
}
