using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Tests.Numerics;

/// <summary>Draws against what is known of sums: independent errors add by squares, and nine in ten of a normal distribution lie within 1.6449 standard errors (JCGM 100:2008).</summary>
public sealed class JointDrawsTests
{
    [Theory]
    [InlineData(1, 0.0)]
    [InlineData(2, 1.0)]
    [InlineData(3, 0.8)]
    [InlineData(10, 0.7)]
    [InlineData(30, 0.9)]
    [InlineData(45, 1.0)]
    public void Errors_alike_to_both_sides_add_by_squares_and_leave_a_range_alike_to_both_sides(int inputs, double falling)
    {
        var draws = new double[JointDraws.Count];
        var squares = 0.0;
        for (var i = 0; i < inputs; i++)
        {
            var end = Math.Pow(falling, i);
            squares += end * end;
            JointDraws.Add(i, -end, end, draws);
        }

        var (lower, upper) = JointDraws.Ends(draws);

        Assert.Equal(Math.Sqrt(squares), upper, 0.045 * Math.Sqrt(squares));
        Assert.Equal(-upper, lower, 1e-9);
    }

    // One input alone: its range is its own.
    [Theory]
    [InlineData(-1.0, 3.0)]
    [InlineData(0.0, 2.0)]
    [InlineData(0.5, -0.25)]
    public void One_input_keeps_its_skewed_range(double atLower, double atUpper)
    {
        var draws = new double[JointDraws.Count];
        JointDraws.Add(0, atLower, atUpper, draws);
        var (lower, upper) = JointDraws.Ends(draws);

        Assert.Equal(Math.Min(atLower, atUpper), lower, 0.01);
        Assert.Equal(Math.Max(atLower, atUpper), upper, 0.02 * Math.Abs(Math.Max(atLower, atUpper)) + 1e-9);
    }
}
