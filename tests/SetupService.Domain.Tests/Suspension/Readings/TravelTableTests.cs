using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Suspension.Readings;

/// <summary>Tables as people type them. Which separators and decimal marks occur: common practice, no source.</summary>
public sealed class TravelTableTests
{
    [Theory]
    [InlineData("-20 -0.4\n0 -0.9\n20 -1.3")]
    [InlineData("-20\t-0.4\r\n0\t-0.9\r\n\r\n20\t-1.3\r\n")]
    [InlineData("-20,-0.4\n0,-0.9\n20,-1.3")]
    [InlineData("-20;-0,4\n0;-0,9\n20;-1,3")]
    [InlineData("-20 -0,4\n0   -0,9\n20, -1,3")]
    [InlineData("\u221220; \u22120.4\n 0 ; -0.9 \n+20; -1.3")]
    public void Every_way_of_writing_gives_the_same_readings(string text)
    {
        var readings = TravelTable.Read(text, out var faults);

        Assert.Empty(faults);
        Assert.Equal([new(-20, -0.4), new(0, -0.9), new(20, -1.3)], readings);
    }

    [Fact]
    public void Toe_may_follow_in_any_line()
    {
        var readings = TravelTable.Read("0 -0.9 0.05\n20 -1.3\n40,-1.5,0.1", out var faults);

        Assert.Empty(faults);
        Assert.Equal([0.05, null, 0.1], readings.Select(reading => reading.ToeDeg));
    }

    [Fact]
    public void Every_bad_line_is_told_with_its_number()
    {
        TravelTable.Read("20\n0 -0.9\n\nten -1\n20,-1,1\n600 -1\n20 NaN\n1 2 3 4", out var faults);

        Assert.Equal(["line 1:", "line 4:", "line 5:", "line 6:", "line 7:", "line 8:"], faults.Select(fault => fault[..7]));
        Assert.Contains("decimal commas", faults[2], StringComparison.Ordinal);
        Assert.Contains("-500 to 500 mm", faults[3], StringComparison.Ordinal);
    }

    // The ranges of the contract's readings: 500 mm, 15° and 5° to either side.
    [Theory]
    [InlineData("500 15 5", "500.5 0", "the travel is 500.5 mm")]
    [InlineData("-500 -15 -5", "0 15.5", "the camber is 15.5 °")]
    [InlineData("0 0 5", "0 -15.5", "the camber is -15.5 °")]
    [InlineData("0 15", "0 0 5.5", "the toe is 5.5 °")]
    [InlineData("0 -15", "0 0 -5.5", "the toe is -5.5 °")]
    public void A_reading_at_the_end_of_its_range_is_read_and_one_beyond_is_not(string atEnd, string beyond, string told)
    {
        Assert.Single(TravelTable.Read($"{atEnd}\n{beyond}", out var faults));
        Assert.StartsWith($"line 2: {told};", Assert.Single(faults), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0 -0.9")]
    public void Two_readings_are_needed(string text)
    {
        TravelTable.Read(text, out var faults);

        Assert.Contains("2 to 200 are needed", Assert.Single(faults), StringComparison.Ordinal);
    }
}
