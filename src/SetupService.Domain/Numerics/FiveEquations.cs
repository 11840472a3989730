using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SetupService.Domain.Numerics;

/// <summary>
/// Five linear equations with five unknowns and three right-hand sides, solved by Gauss-Jordan elimination with row pivoting (Golub and
/// Van Loan, Matrix Computations, from memory). A row is one vector. Allocates nothing.
/// </summary>
internal static class FiveEquations
{
    /// <summary>Number of equations and of unknowns.</summary>
    public const int Count = 5;

    /// <summary>Numbers in a row: five coefficients, then three right-hand sides.</summary>
    public const int RowLength = 8;

    // A pivot this small against the largest one is the rounding of a row that depends on the others.
    private const double SmallestPivotShare = 1e-13;

    /// <summary>Solves in place: the right-hand sides of the five rows of <paramref name="numbers"/> become the solutions.</summary>
    /// <returns>Sign of the determinant, or 0 where the equations depend on each other; the solutions are then not there.</returns>
    public static int Solve(Span<double> numbers)
    {
        var rows = MemoryMarshal.Cast<double, Vector512<double>>(numbers);
        var sign = 1;
        var largest = 0.0;
        for (var column = 0; column < Count; column++)
        {
            var pivotRow = column;
            var pivotSize = Math.Abs(numbers[(column * RowLength) + column]);
            for (var row = column + 1; row < Count; row++)
            {
                var size = Math.Abs(numbers[(row * RowLength) + column]);
                if (size <= pivotSize) continue;
                pivotSize = size;
                pivotRow = row;
            }

            largest = Math.Max(largest, pivotSize);
            if (!(pivotSize > SmallestPivotShare * largest)) return 0;
            if (pivotRow != column)
            {
                sign = -sign;
                (rows[column], rows[pivotRow]) = (rows[pivotRow], rows[column]);
            }

            var pivot = numbers[(column * RowLength) + column];
            if (pivot < 0) sign = -sign;
            var scaled = rows[column] * (1 / pivot);
            rows[column] = scaled;
            for (var row = 0; row < Count; row++)
            {
                if (row != column) rows[row] -= numbers[(row * RowLength) + column] * scaled;
            }
        }

        return sign;
    }
}
