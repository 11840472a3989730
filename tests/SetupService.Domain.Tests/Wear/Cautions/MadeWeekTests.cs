using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Tests.Wear.Cautions;

public sealed class MadeWeekTests
{
    // "0301" is the third week of 2001, "031" of 1991 or 1981: an owner's manual of 2006 (read), after the American identification rule.
    [Theory]
    [InlineData("0301", 3, 2001, true)]
    [InlineData("2319", 23, 2019, true)]
    [InlineData(" 5326 ", 53, 2026, true)]
    [InlineData("031", 3, 1991, false)]
    [InlineData("529", 52, 1999, false)]
    public void A_code_says_its_week(string code, int week, int year, bool isDecadeKnown) =>
        Assert.Equal(new MadeWeek(week, year, isDecadeKnown), MadeWeekReader.Read(code).Value);

    [Theory]
    [InlineData("0019", "00", 0)]
    [InlineData("5419", "54", 0)]
    [InlineData("549", "54", 0)]
    [InlineData("23a9", "a9", 2)]
    [InlineData("٢٣١٩", "٢٣١٩", 0)]
    [InlineData("23", "23", 0)]
    [InlineData("23190", "23190", 0)]
    [InlineData("", "", 0)]
    [InlineData(" -319", "-319", 1)]
    public void What_is_no_week_is_named(string code, string part, int position)
    {
        Assert.False(MadeWeekReader.Read(code).TryGet(out _, out var fault));
        Assert.Equal((part, position), (fault.Part, fault.Position));
    }

    [Fact]
    public void Age_is_counted_from_about_the_week_s_first_day()
    {
        var made = MadeWeekReader.Read("2319").Value!;

        Assert.Equal(new DateOnly(2019, 6, 4), made.FirstDay);
        Assert.Equal(6, made.AgeYears(new DateOnly(2025, 6, 4))!.Value, 0.01);
        Assert.Equal(0, made.AgeYears(new DateOnly(2019, 6, 1)));
        Assert.Null(made.AgeYears(new DateOnly(2019, 5, 1)));
    }

    [Fact]
    public void Every_week_has_a_day_in_or_beside_its_year()
    {
        for (var week = 1; week <= 53; week++)
        {
            for (var year = 0; year <= 99; year++)
            {
                var made = MadeWeekReader.Read(FormattableString.Invariant($"{week:00}{year:00}")).Value!;
                Assert.Equal(2000 + year, made.FirstDay.Year);
            }
        }
    }
}
