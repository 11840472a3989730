using CsCheck;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Tests.Numerics;

public sealed class FiveEquationsTests
{
    private const int Count = FiveEquations.Count;

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
        var rows = new double[Count * 2 * Count];
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++) rows[(i * 2 * Count) + j] = 1.0 / (i + j + 1);
            rows[(i * 2 * Count) + Count + i] = 1;
        }

        Assert.Equal(1, FiveEquations.Solve(rows, 2 * Count));
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++) Assert.Equal(inverse[i][j], rows[(i * 2 * Count) + Count + j], 1e-9 * Math.Abs(inverse[i][j]));
        }
    }

    [Fact]
    public void The_solution_put_back_gives_the_right_hand_sides() =>
        Gen.Select(Matrices, Gen.Double[-1, 1].Array[2 * Count]).Sample((matrix, right) =>
        {
            const int Width = Count + 2;
            var rows = new double[Count * Width];
            for (var i = 0; i < Count; i++)
            {
                Array.Copy(matrix, i * Count, rows, i * Width, Count);
                Array.Copy(right, 2 * i, rows, (i * Width) + Count, 2);
            }

            if (FiveEquations.Solve(rows, Width) == 0) return;
            for (var side = 0; side < 2; side++)
            {
                for (var i = 0; i < Count; i++)
                {
                    var (sum, size) = (0.0, 1.0);
                    for (var j = 0; j < Count; j++)
                    {
                        var part = matrix[(i * Count) + j] * rows[(j * Width) + Count + side];
                        sum += part;
                        size += Math.Abs(part);
                    }

                    // Elimination with pivots leaves residuals of rounding, however near the rows are to depending on each other.
                    Assert.Equal(right[(2 * i) + side], sum, 1e-12 * size * LargestSolution(rows, Width, side));
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
            var rows = new double[Count * (Count + 1)];
            for (var i = 0; i < Count; i++) Array.Copy(matrix, i * Count, rows, i * (Count + 1), Count);

            Assert.Equal(Math.Sign(determinant), FiveEquations.Solve(rows, Count + 1));
        });

    // Whole numbers, so that they depend on each other exactly and only the elimination rounds.
    [Fact]
    public void Rows_that_depend_on_each_other_have_no_sign() =>
        Gen.Select(WholeNumbers.Array[Count * Count], WholeNumbers.Array[Count - 1], Gen.Int[0, Count - 1]).Sample((matrix, shares, dependent) =>
        {
            var rows = new double[Count * (Count + 1)];
            for (var i = 0; i < Count; i++) Array.Copy(matrix, i * Count, rows, i * (Count + 1), Count);
            for (var j = 0; j < Count; j++)
            {
                var sum = 0.0;
                for (var i = 0; i < Count - 1; i++) sum += shares[i] * matrix[((dependent + 1 + i) % Count * Count) + j];
                rows[(dependent * (Count + 1)) + j] = sum;
            }

            Assert.Equal(0, FiveEquations.Solve(rows, Count + 1));
        });

    [Fact]
    public void Nothing_an_unknown_without_effect_and_what_is_no_number_have_no_sign()
    {
        Assert.Equal(0, FiveEquations.Solve(new double[Count * (Count + 1)], Count + 1));
        var rows = Unit();
        rows[2 * (Count + 1) + 2] = 0;
        Assert.Equal(0, FiveEquations.Solve(rows, Count + 1));
        rows = Unit();
        rows[(3 * (Count + 1)) + 3] = double.NaN;
        Assert.Equal(0, FiveEquations.Solve(rows, Count + 1));
        Assert.Equal(1, FiveEquations.Solve(Unit(), Count + 1));
    }

    private static double[] Unit()
    {
        var rows = new double[Count * (Count + 1)];
        for (var i = 0; i < Count; i++) rows[(i * (Count + 1)) + i] = 1;
        return rows;
    }

    private static double LargestSolution(double[] rows, int width, int side) =>
        Enumerable.Range(0, Count).Max(i => Math.Max(1, Math.Abs(rows[(i * width) + Count + side])));

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
