using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Cautions;

/// <summary>
/// Reads the last digits of the identification on a tyre's sidewall: "2319" is week 23 of 2019. Codes of three digits are older than 2000 and leave the decade
/// open: "239" is week 23 of 1999, 1989 or before. Source: an owner's manual of 2006 (read), after the American identification rule; it dates the change of form
/// to July 2000, so that a three-digit code ending in 0 may be half a year younger than given here, which changes no caution.
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

/// <summary>The week a tyre was made in, as its sidewall says; made by <see cref="MadeWeekReader"/>.</summary>
/// <param name="Week">Week of the year, 1 to 53.</param>
/// <param name="Year">The year; of a code of three digits, which leaves the decade open, the latest it can be.</param>
/// <param name="IsDecadeKnown">True when the code names the decade; a tyre of one that does not may be ten or twenty years older.</param>
public sealed record MadeWeek(int Week, int Year, bool IsDecadeKnown)
{
    private const double DaysPerYear = 365.2425;
    private const int DaysPerWeek = 7;

    /// <summary>
    /// About the first day of the week. Where week 1 begins is counted in more than one way (the first full week, or the one with the year's first Thursday),
    /// which moves it by less than a week.
    /// </summary>
    public DateOnly FirstDay => new DateOnly(Year, 1, 1).AddDays((Week - 1) * DaysPerWeek);

    /// <summary>
    /// Age in years, within about a week; at least that where the decade is open. Null where the week lies more than a week after the day, so that code or day
    /// must be wrong.
    /// </summary>
    /// <param name="today">The day asked about.</param>
    public double? AgeYears(DateOnly today)
    {
        var days = today.DayNumber - FirstDay.DayNumber;
        return days < -DaysPerWeek ? null : Math.Max(0, days) / DaysPerYear;
    }
}
