using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wheels;

public class BoltCircleTests
{
    // Number of holes first, then the diameter through the hole centres: read in an encyclopaedia of measures.
    // The other separators are common practice, no source.
    [Theory]
    [InlineData("5x108", 5, 108)]
    [InlineData("5×114.3", 5, 114.3)]
    [InlineData("5x114,3", 5, 114.3)]
    [InlineData("5/112", 5, 112)]
    [InlineData("5-120", 5, 120)]
    [InlineData(" 4 X 100 mm ", 4, 100)]
    [InlineData("6*139.7", 6, 139.7)]
    [InlineData("3x80", 3, 80)]
    [InlineData("10x300", 10, 300)]
    public void Circles_are_read_as_people_type_them(string text, int holeCount, double diameterMm)
    {
        Assert.True(BoltCircleReader.Read(text).TryGet(out var circle, out var fault), fault?.Message);
        Assert.Equal(new BoltCircle(holeCount, diameterMm), circle);
    }

    [Theory]
    [InlineData("", "", 0, "5x108")]
    [InlineData(" five", "five", 1, "5x108")]
    [InlineData("5x", "5x", 0, "5x108")]
    [InlineData("108", "108", 0, "5x108")]
    [InlineData("5x108x7", "5x108x7", 0, "5x108")]
    [InlineData("5x108 blue", "5x108 blue", 0, "5x108")]
    [InlineData("2x108", "2", 0, "3 to 10 holes")]
    [InlineData("11x108", "11", 0, "3 to 10 holes")]
    [InlineData("5x79.9", "79.9", 2, "80 to 300 mm")]
    [InlineData("5x300.1", "300.1", 2, "80 to 300 mm")]
    public void The_fault_names_the_part(string text, string part, int position, string words)
    {
        var fault = BoltCircleReader.Read(text).Fault;

        Assert.NotNull(fault);
        Assert.Equal((part, position), (fault.Part, fault.Position));
        Assert.Contains(words, fault.Message);
    }

    // The tolerance itself still matches; a hundredth beyond it does not. A circle of no diameter makes the difference exact.
    [Theory]
    [InlineData(BoltCircle.MatchToleranceMm, 0, true)]
    [InlineData(0, BoltCircle.MatchToleranceMm, true)]
    [InlineData(BoltCircle.MatchToleranceMm + 0.01, 0, false)]
    [InlineData(100.34, 100, true)]
    [InlineData(100.36, 100, false)]
    public void Circles_match_up_to_the_tolerance_and_no_further(double oneMm, double otherMm, bool expected) =>
        Assert.Equal(expected, new BoltCircle(5, oneMm).Matches(new BoltCircle(5, otherMm)));

    // 114 for 114.3 and 108 for 107.95 are one circle in the trade's writing, 120 and 120.65 are two: common practice, no source.
    [Theory]
    [InlineData("5x114.3", "5x114", true)]
    [InlineData("4x108", "4x107.95", true)]
    [InlineData("5x108", "5x108", true)]
    [InlineData("5x120", "5x120.65", false)]
    [InlineData("5x114.3", "5x115", false)]
    [InlineData("5x110", "5x112", false)]
    [InlineData("4x108", "5x108", false)]
    public void Circles_match_within_the_trades_rounding(string one, string other, bool expected)
    {
        var (first, second) = (BoltCircleReader.Read(one).Value!, BoltCircleReader.Read(other).Value!);

        Assert.Equal(expected, first.Matches(second));
        Assert.Equal(expected, second.Matches(first));
    }
}
