using CsCheck;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Numerics;

public sealed class MinimumNormTests
{
    private static readonly Gen<double> WholeNumbers = Gen.Int[-4, 4].Select(number => (double)number);

    // By hand.
    [Theory]
    [InlineData(new double[] { 3, 4 }, new double[] { 25 }, new double[] { 3, 4 })]
    [InlineData(new double[] { 1, 1, 1, 1 }, new double[] { 2, 4 }, new double[] { 1.5, 1.5 })]
    [InlineData(new double[] { 1, 0, 1, 1, 1, 2 }, new double[] { 1, 2, 4 }, new double[] { 5.0 / 6, 1.5 })]
    [InlineData(new double[] { 2, 0, 0, 0, 0, 5 }, new double[] { 4, 10 }, new double[] { 2, 0, 2 })]
    [InlineData(new double[] { 0, 0, 0, 0 }, new double[] { 1, 2 }, new double[] { 0, 0 })]
    [InlineData(new double[] { 1, 2, 2, 4 }, new double[] { 5, 10 }, new double[] { 1, 2 })]
    public void Systems_solved_by_hand_are_solved(double[] rows, double[] right, double[] expected)
    {
        var x = new double[expected.Length];
        MinimumNorm.Solve(rows, right, x);

        Assert.All(x.Zip(expected), pair => Assert.Equal(pair.Second, pair.First, 1e-12));
    }

    // What makes it the pseudo-inverse's solution (Moore, Penrose): the residual is square to every column, and the solution to
    // everything the rows do not see. The rows are mixed of fewer, of whole numbers, so that what they do not see is clear.
    [Fact]
    public void The_residual_is_square_to_the_columns_and_the_solution_to_what_the_rows_do_not_see() =>
        Gen.Int[1, 4].SelectMany(unknowns => Gen.Int[1, unknowns].SelectMany(rank => Gen.Int[1, 4].SelectMany(equations => Gen.Select(
            WholeNumbers.Array[rank * unknowns], WholeNumbers.Array[equations * rank], WholeNumbers.Array[equations], WholeNumbers.Array[unknowns],
            (seen, mixed, right, other) => (unknowns, rank, seen, mixed, right, other))))).Sample(one =>
        {
            var equations = one.right.Length;
            var matrix = new double[equations * one.unknowns];
            for (var i = 0; i < equations; i++)
            {
                for (var j = 0; j < one.unknowns; j++)
                {
                    matrix[(i * one.unknowns) + j] = Enumerable.Range(0, one.rank).Sum(k => one.mixed[(i * one.rank) + k] * one.seen[(k * one.unknowns) + j]);
                }
            }

            var x = new double[one.unknowns];
            MinimumNorm.Solve([.. matrix], one.right, x);
            var size = 1 + x.Max(Math.Abs);
            double[] residual = [.. Enumerable.Range(0, equations).Select(i => Enumerable.Range(0, one.unknowns).Sum(j => matrix[(i * one.unknowns) + j] * x[j]) - one.right[i])];
            for (var j = 0; j < one.unknowns; j++)
            {
                Assert.Equal(0, Enumerable.Range(0, equations).Sum(i => matrix[(i * one.unknowns) + j] * residual[i]), 1e-10 * size);
            }

            var unseen = Unseen(one.other, matrix, equations);
            Assert.Equal(0, Enumerable.Range(0, one.unknowns).Sum(j => unseen[j] * x[j]), 1e-9 * size);
        });

    // A row a million times heavier is met and the others get what it leaves.
    [Fact]
    public void A_heavy_row_is_met_first()
    {
        var x = new double[2];
        MinimumNorm.Solve([1e6, 1e6, 1, 0, 0, 1], [3e6, 5, 5], x);

        Assert.Equal(3, x[0] + x[1], 1e-9);
        Assert.Equal(x[0], x[1], 1e-9);
    }

    /// <summary>A vector less what of it lies along the vectors seen (Gram and Schmidt, twice over).</summary>
    private static double[] Unseen(double[] vector, double[] rows, int rowCount)
    {
        var count = vector.Length;
        var basis = new List<double[]>();
        for (var k = 0; k < rowCount; k++)
        {
            var along = Less(rows[(k * count)..((k + 1) * count)]);
            var length = Math.Sqrt(along.Sum(value => value * value));
            if (length > 1e-6) basis.Add([.. along.Select(value => value / length)]);
        }

        return Less(vector);

        double[] Less(double[] rest)
        {
            for (var pass = 0; pass < 2; pass++)
            {
                foreach (var direction in basis)
                {
                    var part = rest.Zip(direction, (a, b) => a * b).Sum();
                    rest = [.. rest.Zip(direction, (a, b) => a - (part * b))];
                }
            }

            return rest;
        }
    }
}
