using CsCheck;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Numerics;

public sealed class FiveEquationsTests
{
    private const int Count = FiveEquations.Count;
    private const int Sides = FiveEquations.RowLength - Count;

    private static readonly Gen<double[]> Matrices = Gen.Double[-1, 1].Array[Count * Count];

    private static readonly Gen<double> WholeNumbers = Gen.Int[-3, 3].Select(number => (double)number);

    // Whole numbers, by the closed form of M.-D. Choi, Tricks or treats with the Hilbert matrix, American Mathematical Monthly 90
    // (1983), from memory. A condition of half a million leaves ten digits.
    [Fact]
    public void The_inverse_of_the_fifth_hilbert_matrix_is_found()
    {
        double[][] inverse =
        [
            [25, -300, 1050, -1400, 630],
            [-300, 4800, -18900, 26880, -12600],
            [1050, -18900, 79380, -117600, 56700],
            [-1400, 26880, -117600, 179200, -88200],
            [630, -12600, 56700, -88200, 44100],
        ];
        double[] hilbert = [.. from i in Enumerable.Range(0, Count) from j in Enumerable.Range(0, Count) select 1.0 / (i + j + 1)];
        foreach (var first in new[] { 0, Count - Sides })
        {
            var rows = Rows(hilbert);
            for (var side = 0; side < Sides; side++) rows[((first + side) * FiveEquations.RowLength) + Count + side] = 1;

            Assert.Equal(1, FiveEquations.Solve(rows));
            for (var i = 0; i < Count; i++)
            {
                for (var side = 0; side < Sides; side++)
                    Assert.Equal(inverse[i][first + side], Solution(rows, i, side), 1e-9 * Math.Abs(inverse[i][first + side]));
            }
        }
    }

    [Fact]
    public void The_solution_put_back_gives_the_right_hand_sides() =>
        Gen.Select(Matrices, Gen.Double[-1, 1].Array[Sides * Count]).Sample((matrix, right) =>
        {
            var rows = Rows(matrix);
            for (var i = 0; i < Count; i++) Array.Copy(right, Sides * i, rows, (i * FiveEquations.RowLength) + Count, Sides);
            if (FiveEquations.Solve(rows) == 0) return;
            var condition = Condition(matrix);
            for (var side = 0; side < Sides; side++)
            {
                for (var i = 0; i < Count; i++)
                {
                    var (sum, size) = (0.0, 1.0);
                    for (var j = 0; j < Count; j++)
                    {
                        var part = matrix[(i * Count) + j] * Solution(rows, j, side);
                        sum += part;
                        size += Math.Abs(part);
                    }

                    // Gauss-Jordan elimination leaves residuals of rounding times the condition at most (Higham, Accuracy and Stability of Numerical Algorithms, 2002, ch. 14, from memory).
                    Assert.Equal(right[(Sides * i) + side], sum, 1e-14 * condition * size * LargestSolution(rows, side));
                }
            }
        });

    // Laplace's expansion, which no elimination is part of.
    [Fact]
    public void The_sign_is_that_of_the_determinant() =>
        Matrices.Sample(matrix =>
        {
            var determinant = Determinant(matrix, Count);
            if (Math.Abs(determinant) < 1e-9) return;

            Assert.Equal(Math.Sign(determinant), FiveEquations.Solve(Rows(matrix)));
        });

    // Whole numbers, so that they depend on each other exactly and only the elimination rounds.
    [Fact]
    public void Rows_that_depend_on_each_other_have_no_sign() =>
        Gen.Select(WholeNumbers.Array[Count * Count], WholeNumbers.Array[Count - 1], Gen.Int[0, Count - 1]).Sample((matrix, shares, dependent) =>
        {
            var rows = Rows(matrix);
            for (var j = 0; j < Count; j++)
            {
                var sum = 0.0;
                for (var i = 0; i < Count - 1; i++) sum += shares[i] * matrix[((dependent + 1 + i) % Count * Count) + j];
                rows[(dependent * FiveEquations.RowLength) + j] = sum;
            }

            Assert.Equal(0, FiveEquations.Solve(rows));
        });

    [Fact]
    public void Nothing_an_unknown_without_effect_and_what_is_no_number_have_no_sign()
    {
        Assert.Equal(0, FiveEquations.Solve(Rows(new double[Count * Count])));
        Assert.Equal(0, FiveEquations.Solve(Rows(UnitWith(2, 0))));
        Assert.Equal(0, FiveEquations.Solve(Rows(UnitWith(3, double.NaN))));
        Assert.Equal(1, FiveEquations.Solve(Rows(UnitWith(0, 1))));
    }

    private static double[] UnitWith(int place, double number)
    {
        var matrix = new double[Count * Count];
        for (var i = 0; i < Count; i++) matrix[(i * Count) + i] = i == place ? number : 1;
        return matrix;
    }

    private static double[] Rows(double[] matrix)
    {
        var rows = new double[Count * FiveEquations.RowLength];
        for (var i = 0; i < Count; i++) Array.Copy(matrix, i * Count, rows, i * FiveEquations.RowLength, Count);
        return rows;
    }

    private static double Solution(double[] rows, int unknown, int side) => rows[(unknown * FiveEquations.RowLength) + Count + side];

    /// <summary>Largest row sum of the matrix times that of its inverse, whose columns are the solutions for unit sides, three at a time.</summary>
    private static double Condition(double[] matrix)
    {
        var (ofMatrix, ofInverse) = (new double[Count], new double[Count]);
        for (var first = 0; first < Count; first += Sides)
        {
            var rows = Rows(matrix);
            for (var side = 0; side < Sides && first + side < Count; side++) rows[((first + side) * FiveEquations.RowLength) + Count + side] = 1;
            FiveEquations.Solve(rows);
            for (var side = 0; side < Sides && first + side < Count; side++)
            {
                for (var i = 0; i < Count; i++)
                {
                    ofInverse[i] += Math.Abs(Solution(rows, i, side));
                    ofMatrix[i] += Math.Abs(matrix[(i * Count) + first + side]);
                }
            }
        }

        return ofMatrix.Max() * ofInverse.Max();
    }

    private static double LargestSolution(double[] rows, int side) => Enumerable.Range(0, Count).Max(i => Math.Max(1, Math.Abs(Solution(rows, i, side))));

    private static double Determinant(double[] matrix, int size)
    {
        if (size == 1) return matrix[0];
        var sum = 0.0;
        for (var column = 0; column < size; column++)
        {
            double[] minor = [.. from row in Enumerable.Range(1, size - 1) from other in Enumerable.Range(0, size) where other != column select matrix[(row * size) + other]];
            sum += (column % 2 == 0 ? 1 : -1) * matrix[column] * Determinant(minor, size - 1);
        }

        return sum;
    }
}
