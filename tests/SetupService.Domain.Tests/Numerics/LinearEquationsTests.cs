using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using SetupService.Domain.Numerics;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Tests.Numerics;

/// <summary>Linear equations and order statistics against a general-purpose library.</summary>
public sealed class LinearEquationsTests
{
    [Fact]
    public void Solutions_are_those_of_a_general_purpose_library() =>
        Gen.Select(Gen.Double[-1, 1].Array[36], Gen.Double[-1, 1].Array[6], Gen.Int[-6, 6].Array[6]).Sample((coefficients, right, powers) =>
        {
            // Equations and unknowns in units that differ by orders.
            for (var row = 0; row < 6; row++)
            {
                for (var column = 0; column < 6; column++) coefficients[(row * 6) + column] *= Math.Pow(10, powers[column] - powers[5 - row]);
            }

            var matrix = Matrix<double>.Build.Dense(6, 6, (row, column) => coefficients[(row * 6) + column] * Math.Pow(10, powers[5 - row] - powers[column]));
            if (matrix.ConditionNumber() > 1e6) return;
            var expected = matrix.Solve(Vector<double>.Build.Dense(6, row => right[row] * Math.Pow(10, powers[5 - row])));
            var x = new double[6];

            LinearEquations.Factorise(6, coefficients)!.Solve(right, x);

            for (var i = 0; i < 6; i++) Assert.Equal(expected[i], x[i] * Math.Pow(10, powers[i]), 1e-8 * expected.AbsoluteMaximum());
        });

    [Fact]
    public void Equations_that_depend_on_each_other_or_are_not_finite_have_no_factors()
    {
        Assert.Null(LinearEquations.Factorise(2, [1, 2, 2, 4]));
        Assert.Null(LinearEquations.Factorise(2, [0, 0, 0, 1]));
        Assert.Null(LinearEquations.Factorise(2, [1, double.NaN, 0, 1]));
        Assert.NotNull(LinearEquations.Factorise(2, [0, 1, 1, 0]));
    }

    [Fact]
    public void The_number_at_a_rank_is_that_of_sorting() =>
        Gen.Select(Gen.Int[0, 20].Array[1, 60], Gen.Int[0, 59]).Sample((numbers, rank) =>
        {
            double[] some = [.. numbers.Select(one => (double)one)];
            rank %= some.Length;
            double[] sorted = [.. some.Order()];

            Assert.Equal(sorted[rank], OrderStatistic.Select(some, rank));
            Assert.Equal(sorted, some.Order());
        });
}
