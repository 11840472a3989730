using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>A place in a wheel's text, moving on as pieces are taken. Every expression given to it begins with \G.</summary>
internal sealed class MarkingScanner(string text)
{
    private readonly string _typed = text.TrimEnd();

    public int Position { get; private set; }

    public bool AtEnd => Position >= _typed.Length;

    /// <summary>Skips spaces, then takes the piece that stands here where it fits.</summary>
    public bool TryTake(Regex piece, out Match match)
    {
        while (!AtEnd && char.IsWhiteSpace(_typed[Position]))
        {
            Position++;
        }

        match = piece.Match(_typed, Position);
        if (match.Success)
        {
            Position += match.Length;
        }

        return match.Success;
    }

    /// <summary>A fault about a text that as a whole is not what was expected.</summary>
    public static ParseFault NotRead(string text, string expected)
    {
        var part = text.Trim();
        return Fault(part, text.Length - text.TrimStart().Length, expected);
    }

    /// <summary>A fault about the piece from <paramref name="start"/> to the next space after the place reached.</summary>
    public ParseFault NotRead(int start, string expected)
    {
        var end = Math.Max(Position, start);
        while (end < _typed.Length && !char.IsWhiteSpace(_typed[end]))
        {
            end++;
        }

        return Fault(_typed[start..end], start, expected);
    }

    /// <summary>A fault about a piece that was read but cannot stand.</summary>
    public static ParseFault Refused(Capture piece, string reason) =>
        new(piece.Value, piece.Index, $"“{piece.Value}” {reason}.");

    private static ParseFault Fault(string part, int start, string expected) => new(
        part,
        start,
        part.Length == 0 ? $"The text ends where {expected} was expected." : $"“{part}” is not {expected}.");
}
