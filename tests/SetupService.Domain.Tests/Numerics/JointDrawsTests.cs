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

        Assert.Equal(Math.Sqrt(squares), upper, 0.1 * Math.Sqrt(squares));
        Assert.Equal(-upper, lower, 1e-9);
    }

    // Whichever inputs there are and whichever way they work, in one figure and in two at once.
    [Fact]
    public void Whichever_inputs_are_drawn_errors_add_by_squares()
    {
        var random = new Random(20261130);
        var (draws, ones, others) = (new double[JointDraws.Count], new double[JointDraws.Count], new double[JointDraws.Count]);
        var (worst, total) = (0.0, 0.0);
        const int sums = 1000;
        for (var sum = 0; sum < sums; sum++)
        {
            int[] inputs = [.. Enumerable.Range(0, 60).OrderBy(_ => random.NextDouble()).Take(random.Next(2, 46))];
            double[] ends = [.. inputs.Select(_ => Math.Pow(-Math.Log(1 - random.NextDouble()), 1.5) * (random.Next(2) == 0 ? 1 : -1))];
            Array.Clear(draws);
            for (var i = 0; i < inputs.Length; i++) JointDraws.Add(inputs[i], -ends[i], ends[i], draws);
            JointDraws.Fill(0, 0, [.. inputs.Select((input, i) => EffectOnBoth.Create(input, (-ends[i], ends[i] / 2), (ends[i], ends[i] / 4)))], ones, others);
            var expected = Math.Sqrt(ends.Sum(end => end * end));
            var (_, upper) = JointDraws.Ends(draws.AsSpan());
            var error = Math.Abs((upper / expected) - 1);
            (worst, total) = (Math.Max(worst, error), total + error);
            Assert.Equal(upper, JointDraws.Ends(ones).Upper, 1e-12 * expected);
        }

        Assert.InRange(worst, 0, 0.1);
        Assert.InRange(total / sums, 0, 0.03);
    }

    // An effect may be other to either side, draw by draw.
    [Fact]
    public void Two_figures_are_drawn_as_each_alone()
    {
        var (one, other, ones, others) = (new double[JointDraws.Count], new double[JointDraws.Count], new double[JointDraws.Count], new double[JointDraws.Count]);
        (int Input, (double One, double Other) AtLower, (double One, double Other) AtUpper)[] effects = [(3, (-0.2, 0.5), (0.7, 0.1)), (0, (0.4, -1), (-0.1, 2)), (41, (0, -0.3), (0.25, 0))];
        Array.Fill(one, 1.5);
        Array.Fill(other, -2);
        foreach (var effect in effects)
        {
            JointDraws.Add(effect.Input, effect.AtLower.One, effect.AtUpper.One, one);
            JointDraws.Add(effect.Input, effect.AtLower.Other, effect.AtUpper.Other, other);
        }

        JointDraws.Fill(1.5, -2, [.. effects.Select(effect => EffectOnBoth.Create(effect.Input, effect.AtLower, effect.AtUpper))], ones, others);

        for (var i = 0; i < JointDraws.Count; i++)
        {
            Assert.Equal(one[i], ones[i], 1e-14);
            Assert.Equal(other[i], others[i], 1e-14);
        }
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
