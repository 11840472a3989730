namespace SetupService.Domain.Numerics;

/// <summary>
/// Five linear equations with five unknowns and one or more right-hand sides, solved by Gaussian elimination with row pivoting
/// (Golub and Van Loan, Matrix Computations, from memory). Allocates nothing.
/// </summary>
internal static class FiveEquations
{
    /// <summary>Number of equations and of unknowns.</summary>
    public const int Count = 5;

    // A pivot this small against the largest one is the rounding of a row that depends on the others.
    private const double SmallestPivotShare = 1e-13;

    /// <summary>
    /// Solves in place: <paramref name="rows"/> holds five rows of <paramref name="width"/> numbers, five coefficients and then the
    /// right-hand sides, which become the solutions.
    /// </summary>
    /// <returns>Sign of the determinant, or 0 where the equations depend on each other; the solutions are then not there.</returns>
    public static int Solve(Span<double> rows, int width)
    {
        var sign = 1;
        var largest = 0.0;
        for (var column = 0; column < Count; column++)
        {
            var pivotRow = column;
            var pivotSize = Math.Abs(rows[(column * width) + column]);
            for (var row = column + 1; row < Count; row++)
            {
                var size = Math.Abs(rows[(row * width) + column]);
                if (size <= pivotSize) continue;
                pivotSize = size;
                pivotRow = row;
            }

            largest = Math.Max(largest, pivotSize);
            if (!(pivotSize > SmallestPivotShare * largest)) return 0;
            var pivot = rows.Slice(column * width, width);
            if (pivotRow != column)
            {
                sign = -sign;
                var other = rows.Slice(pivotRow * width, width);
                for (var i = column; i < width; i++) (pivot[i], other[i]) = (other[i], pivot[i]);
            }

            if (pivot[column] < 0) sign = -sign;
            var inverse = 1 / pivot[column];
            for (var row = column + 1; row < Count; row++)
            {
                var target = rows.Slice(row * width, width);
                var factor = target[column] * inverse;
                if (factor == 0) continue;
                for (var i = column + 1; i < width; i++) target[i] -= factor * pivot[i];
            }
        }

        SubstituteBack(rows, width);
        return sign;
    }

    private static void SubstituteBack(Span<double> rows, int width)
    {
        for (var row = Count - 1; row >= 0; row--)
        {
            var target = rows.Slice(row * width, width);
            var inverse = 1 / target[row];
            for (var side = Count; side < width; side++)
            {
                var sum = target[side];
                for (var i = row + 1; i < Count; i++) sum -= target[i] * rows[(i * width) + side];
                target[side] = sum * inverse;
            }
        }
    }
}
