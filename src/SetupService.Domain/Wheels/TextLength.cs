using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

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
