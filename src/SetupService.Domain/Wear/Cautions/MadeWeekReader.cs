using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Cautions;

/// <summary>
/// Reads the last digits of the identification on a tyre's sidewall: "2319" is week 23 of 2019. Codes of three digits are older than 2000 and leave the decade
/// open: "239" is week 23 of 1999, 1989 or before. Source: an owner's manual of 2006 (read), after the American identification rule; it dates the change of form
/// to July 2000, so that a three-digit code ending in 0 may be half a year younger than told here, which changes no caution.
/// </summary>
public static class MadeWeekReader
{
    /// <summary>The longest text read.</summary>
    public const int MaximumLength = 16;

    private const int LastWeek = 53;

    /// <summary>The week, or what of the text is none.</summary>
    public static ParseResult<MadeWeek> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var code = text.Trim();
        var start = text.Length - text.TrimStart().Length;
        for (var i = 0; i < code.Length; i++)
        {
            if (!char.IsAsciiDigit(code[i])) return Fail(code[i..], start + i, $"“{Short(code[i..])}” is not a digit; a tyre's week is written as four digits, such as 2319 for week 23 of 2019.");
        }

        if (code.Length is not (3 or 4))
        {
            return Fail(code, start, code.Length == 0
                ? "the week is missing; it is written as four digits, such as 2319 for week 23 of 2019."
                : $"“{Short(code)}” has {code.Length} digits; a tyre's week has four, or three on one made before 2000.");
        }

        var week = Digit(code[0]) * 10 + Digit(code[1]);
        if (week is < 1 or > LastWeek) return Fail(code[..2], start, $"“{code[..2]}” is no week; a year has weeks 01 to {LastWeek}.");
        return ParseResult.Success(code.Length == 4
            ? new MadeWeek(week, 2000 + (Digit(code[2]) * 10) + Digit(code[3]), IsDecadeKnown: true)
            : new MadeWeek(week, 1990 + Digit(code[2]), IsDecadeKnown: false));
    }

    private static int Digit(char digit) => digit - '0';

    private static string Short(string text) => text.Length <= MaximumLength ? text : text[..MaximumLength] + "…";

    private static ParseResult<MadeWeek> Fail(string part, int position, string message) => ParseResult.Failure<MadeWeek>(part, position, message);
}
