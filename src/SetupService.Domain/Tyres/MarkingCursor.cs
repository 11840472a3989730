using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>A place in a marking's text, moving on as parts are read. Letters match in either case, digits are ASCII only.</summary>
/// <param name="plain">The text to be read, in plain characters (<see cref="TypedText"/>), without spaces at its end.</param>
/// <param name="shown">The text as typed, which faults quote; its characters stand where those of the plain text do.</param>
internal ref struct MarkingCursor(ReadOnlySpan<char> plain, ReadOnlySpan<char> shown)
{
    private readonly ReadOnlySpan<char> _typed = plain;
    private readonly ReadOnlySpan<char> _shown = shown;

    public int Position { get; private set; }

    public readonly bool AtEnd => Position >= _typed.Length;

    public readonly char Current => AtEnd ? '\0' : _typed[Position];

    public readonly bool AtDigit => char.IsAsciiDigit(Current);

    /// <summary>True where no letter or digit stands right before this place.</summary>
    public readonly bool AtPartStart => Position == 0 || !char.IsAsciiLetterOrDigit(_typed[Position - 1]);

    /// <summary>True where a part ends here: at the end, a space, or a sign that separates parts.</summary>
    public readonly bool AtPartEnd => AtEnd || char.IsWhiteSpace(Current) || Current is ',' or '/' or '(' or ')' or '*';

    /// <summary>The first character from here on that is no space; NUL at the end.</summary>
    public readonly char AfterSpaces
    {
        get
        {
            var rest = _typed[Math.Min(Position, _typed.Length)..].TrimStart();
            return rest.IsEmpty ? '\0' : rest[0];
        }
    }

    /// <summary>The character a number of places further on; NUL beyond the end.</summary>
    public readonly char Ahead(int places) => Position + places < _typed.Length ? _typed[Position + places] : '\0';

    public void SkipSpaces()
    {
        while (!AtEnd && char.IsWhiteSpace(_typed[Position]))
        {
            Position++;
        }
    }

    public void MoveTo(int position) => Position = position;

    /// <summary>Takes the current character where it is one of those given.</summary>
    public bool TryTakeAnyOf(ReadOnlySpan<char> characters)
    {
        if (AtEnd || !characters.Contains(Current))
        {
            return false;
        }

        Position++;
        return true;
    }

    /// <summary>Takes a word in either case where it stands here and no further letter or digit follows it.</summary>
    public bool TryTakeWord(ReadOnlySpan<char> word)
    {
        var end = Position + word.Length;
        if (!_typed[Position..].StartsWith(word, StringComparison.OrdinalIgnoreCase)
            || (end < _typed.Length && char.IsAsciiLetterOrDigit(_typed[end])))
        {
            return false;
        }

        Position = end;
        return true;
    }

    /// <summary>
    /// Takes words in either case that mean something only together, with spaces or a hyphen between them or none, where no further letter or digit
    /// follows the last.
    /// </summary>
    public bool TryTakeWords(string first, string second)
    {
        var start = Position;
        if (_typed[Position..].StartsWith(first, StringComparison.OrdinalIgnoreCase))
        {
            Position += first.Length;
            SkipSpaces();
            TryTakeAnyOf("-");
            SkipSpaces();
            if (TryTakeWord(second))
            {
                return true;
            }
        }

        Position = start;
        return false;
    }

    /// <summary>The run of letters A to Z in either case that begins here, in the text's own case; empty where there is none.</summary>
    public readonly ReadOnlySpan<char> PeekLetters()
    {
        var end = Position;
        while (end < _typed.Length && char.IsAsciiLetter(_typed[end]))
        {
            end++;
        }

        return _typed[Position..end];
    }

    /// <summary>Takes a number with a decimal point or comma; the sign, if any, is not part of it.</summary>
    public bool TryTakeNumber(out TyreMarkingNumber number)
    {
        var start = Position;
        var digits = 0.0;
        var scale = 1.0;
        while (AtDigit)
        {
            digits = (digits * 10) + (_typed[Position++] - '0');
        }

        var hasDecimals = Position > start && Current is '.' or ','
            && Position + 1 < _typed.Length && char.IsAsciiDigit(_typed[Position + 1]);
        if (hasDecimals)
        {
            Position++;
            while (AtDigit)
            {
                digits = (digits * 10) + (_typed[Position++] - '0');
                scale *= 10;
            }
        }

        number = new TyreMarkingNumber(digits / scale, start, Position);
        return Position > start;
    }

    /// <summary>The whole number before the comma of one just taken, the cursor then standing at the comma; false where it has no comma.</summary>
    public bool TryReadAgainBeforeComma(TyreMarkingNumber number, out TyreMarkingNumber whole)
    {
        var comma = _typed[number.Start..number.End].IndexOf(',');
        whole = new TyreMarkingNumber(Math.Floor(number.Value), number.Start, number.Start + Math.Max(comma, 0));
        Position = comma < 0 ? Position : whole.End;
        return comma >= 0;
    }

    /// <summary>A fault about the piece from <paramref name="start"/> to the next space after the cursor, which is not what was expected.</summary>
    public readonly ParseFault NotRead(int start, string expected)
    {
        var end = Math.Max(Position, start);
        while (end < _typed.Length && !char.IsWhiteSpace(_typed[end]))
        {
            end++;
        }

        var part = _shown[start..end].ToString();
        var message = part.Length == 0
            ? $"The marking ends where {expected} was expected."
            : $"“{part}” is not {expected}.";
        return new ParseFault(part, start, message);
    }

    /// <summary>A fault about a number that was read but is not valid.</summary>
    public readonly ParseFault Refused(TyreMarkingNumber number, string reason) => Refused(number.Start, number.End, reason);

    /// <summary>A fault about a piece that was read but is not valid.</summary>
    public readonly ParseFault Refused(int start, int end, string reason)
    {
        var part = _shown[start..end].ToString();
        return new ParseFault(part, start, $"“{part}” {reason}.");
    }
}
