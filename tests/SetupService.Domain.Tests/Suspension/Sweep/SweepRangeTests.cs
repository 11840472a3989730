using CsCheck;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Suspension.Sweep;

public sealed class SweepRangeTests
{
    [Theory]
    [InlineData(-60, 60, 10, 13)]
    [InlineData(-60, 59.9, 10, 12)]
    [InlineData(60, -60, -20, 7)]
    [InlineData(0, 0, 5, 1)]
    [InlineData(0, 0, -5, 1)]
    [InlineData(0, 1, 0.1, 11)]
    [InlineData(0, 4.9, 5, 1)]
    [InlineData(0, -1, 5, 0)]
    [InlineData(0, 1, -5, 0)]
    public void Values_go_from_the_start_to_the_end_and_not_past_it(double from, double to, double step, int count)
    {
        var range = new SweepRange(from, to, step);

        Assert.Equal(count, range.Count);
        if (count > 0) Assert.Equal(from, range[0]);
    }

    // The end is met where the steps lead to within 1e-9 of a step of it, and not where they fall short by more.
    [Theory]
    [InlineData(1 - 0.9e-9, 2)]
    [InlineData(1 - 1.1e-9, 1)]
    [InlineData(1 + 0.9e-9, 2)]
    public void The_end_is_met_to_within_a_billionth_of_a_step(double to, int count)
    {
        Assert.Equal(count, new SweepRange(0, to, 1).Count);
        Assert.Equal(count, new SweepRange(0, -to, -1).Count);
        Assert.Equal(count, new SweepRange(0, 250 * to, 250).Count);
    }

    [Fact]
    public void Every_value_is_a_step_from_the_last_and_the_last_is_the_end_where_a_whole_number_of_steps_leads_there() =>
        Gen.Select(Gen.Double[-300, 300], Gen.Double[-25, 25].Where(step => Math.Abs(step) > 1e-3), Gen.Int[0, 400]).Sample((from, step, steps) =>
        {
            var to = from + (steps * step);
            var range = new SweepRange(from, to, step);

            Assert.Equal(steps + 1, range.Count);
            Assert.Equal(to, range[steps], 1e-9);
            Assert.Equal(steps, new SweepRange(from, to - (0.5 * step), step).Count);
        });

    [Fact]
    public void One_value_is_a_range_of_one()
    {
        var range = SweepRange.Only(-12.5);

        Assert.Equal(1, range.Count);
        Assert.Equal(-12.5, range[0]);
    }

    // A count that no number of its type can hold is the greatest there is, not a negative one.
    [Theory]
    [InlineData(1e300)]
    [InlineData(3e9)]
    public void The_count_is_capped(double to) => Assert.Equal(int.MaxValue, new SweepRange(0, to, 1).Count);
}
