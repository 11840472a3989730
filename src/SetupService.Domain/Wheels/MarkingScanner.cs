using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>A place in a wheel's text, moving on as pieces are taken. Every expression given to it begins with \G.</summary>
internal sealed class MarkingScanner(string text)
{
    private readonly string _text = text.TrimEnd();

    public int Position { get; private set; }

    public bool AtEnd => Position >= _text.Length;

    /// <summary>Skips spaces, then takes the piece that stands here where it fits.</summary>
    public bool TryTake(Regex piece, out Match match)
    {
        while (!AtEnd && char.IsWhiteSpace(_text[Position]))
        {
            Position++;
        }

        match = piece.Match(_text, Position);
        if (match.Success)
        {
            Position += match.Length;
        }

        return match.Success;
    }

    /// <summary>A fault about the piece from <paramref name="start"/> to the next space after the place reached.</summary>
    public ReadingFault NotRead(int start, string expected)
    {
        var end = Math.Max(Position, start);
        while (end < _text.Length && !char.IsWhiteSpace(_text[end]))
        {
            end++;
        }

        var part = _text[start..end];
        var message = part.Length == 0
            ? $"The text ends where {expected} was expected."
            : $"“{part}” is not {expected}.";
        return new ReadingFault(part, start, message);
    }

    /// <summary>A fault about a piece that was read but cannot stand.</summary>
    public static ReadingFault Refused(Capture piece, string reason) =>
        new(piece.Value, piece.Index, $"“{piece.Value}” {reason}.");
}
