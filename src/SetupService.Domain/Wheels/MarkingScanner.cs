using System.Globalization;
using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>A place in a wheel's text, in plain characters, moving on as pieces are taken. Every expression given to it begins with \G.</summary>
internal sealed class MarkingScanner(string text)
{
    private readonly string _typed = TypedText.Plain(text).TrimEnd();

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

    /// <summary>A fault found in the plain text, quoting what was typed there.</summary>
    public static ParseFault AsTyped(ParseFault fault, string text)
    {
        var typed = text.Substring(fault.Position, fault.Part.Length);
        return fault with { Part = typed, Message = fault.Message.Replace($"“{fault.Part}”", $"“{typed}”", StringComparison.Ordinal) };
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

    /// <summary>A fault about a piece that was read but is not valid.</summary>
    public static ParseFault Refused(Capture piece, string reason) =>
        new(piece.Value, piece.Index, $"“{piece.Value}” {reason}.");

    private static ParseFault Fault(string part, int start, string expected) => new(
        part,
        start,
        part.Length == 0 ? $"The text ends where {expected} was expected." : $"“{part}” is not {expected}.");
}

/// <summary>Values of the numbers found in wheel texts; the expressions that found them have checked their form.</summary>
internal static class WheelMarkingNumber
{
    /// <summary>A number with a decimal point or comma.</summary>
    public static double Decimal(string digits) =>
        double.Parse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    /// <summary>The fraction written behind whole inches; 0 where there is none.</summary>
    public static double Fraction(string fraction) => fraction switch
    {
        "1/4" or "¼" => 0.25,
        "1/2" or "½" => 0.5,
        "3/4" or "¾" => 0.75,
        _ => 0,
    };

    /// <summary>A range in words, limits included.</summary>
    public static string Range(string what, double minimum, double maximum, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} from {minimum:0.##} to {maximum:0.##} {unit}");
}

/// <summary>Refuses a text that is too long before any of it is read.</summary>
internal static class TextLength
{
    private const int ShownExcess = 20;

    /// <summary>The fault of a text longer than the maximum, not counting spaces at either end; null where it is not.</summary>
    public static ParseFault? Check(string text, int maximumLength)
    {
        var trimmed = text.AsSpan().Trim();
        if (trimmed.Length <= maximumLength)
        {
            return null;
        }

        // The excess is named by its beginning; it may be very long.
        var excess = trimmed[maximumLength..];
        return new ParseFault(
            excess[..Math.Min(ShownExcess, excess.Length)].ToString(),
            text.Length - text.AsSpan().TrimStart().Length + maximumLength,
            string.Create(CultureInfo.InvariantCulture, $"The text is {trimmed.Length} characters long; at most {maximumLength} are read."));
    }
}
