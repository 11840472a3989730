namespace SetupService.Domain.Wear.Cautions;

/// <summary>The week a tyre was made in, as its sidewall says; made by <see cref="MadeWeekReader"/>.</summary>
/// <param name="Week">Week of the year, 1 to 53.</param>
/// <param name="Year">The year; of a code of three digits, which leaves the decade open, the latest it can be.</param>
/// <param name="IsDecadeKnown">Whether the code names the decade; a tyre of one that does not may be ten or twenty years older.</param>
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
