using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace SetupService.Domain.Numerics;

/// <summary>
/// A square system of a few linear equations, factorised once and solved for any number of right-hand sides: LU factorisation with row pivoting, rows and columns
/// scaled to a largest coefficient of 1 first (Golub and Van Loan, Matrix Computations, ch. 3, from memory). What each equation alone asks of the unknowns is solved for at once, so that
/// any right-hand side is a sum of those. Solving allocates nothing.
/// </summary>
internal sealed class LinearEquations
{
    // A pivot this small, all coefficients being at most 1, is the rounding of equations that depend on each other.
    private const double SmallestPivot = 1e-14;

    private const int MostOnStack = 32;

    private readonly int _count;
    private readonly double[] _factors;
    private readonly int[] _order;
    private readonly double[] _rowScale;
    private readonly double[] _columnScale;

    // The unknowns for a right-hand side of 1 in one equation, equation by equation, each filled up to whole vectors.
    private readonly double[] _byEquation;
    private readonly int _stride;

    private LinearEquations(int count, double[] factors, double[] rowScale, double[] columnScale)
    {
        (_count, _factors, _rowScale, _columnScale) = (count, factors, rowScale, columnScale);
        _order = new int[count];
        for (var i = 0; i < count; i++) _order[i] = i;
        _stride = (count + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;
        _byEquation = new double[count * _stride];
    }

    /// <summary>Factorises; null where the equations depend on each other or a coefficient is not finite.</summary>
    /// <param name="count">Number of equations and of unknowns.</param>
    /// <param name="coefficients">Coefficients, row by row; left as they are.</param>
    public static LinearEquations? Factorise(int count, ReadOnlySpan<double> coefficients)
    {
        var (rowScale, columnScale) = (new double[count], new double[count]);
        var factors = coefficients[..(count * count)].ToArray();
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++) rowScale[row] = Math.Max(rowScale[row], Math.Abs(factors[(row * count) + column]));
        }

        for (var column = 0; column < count; column++)
        {
            for (var row = 0; row < count; row++) columnScale[column] = Math.Max(columnScale[column], Math.Abs(factors[(row * count) + column] / rowScale[row]));
            for (var row = 0; row < count; row++) factors[(row * count) + column] /= rowScale[row] * columnScale[column];
        }

        var equations = new LinearEquations(count, factors, rowScale, columnScale);
        if (!equations.TryEliminate()) return null;
        var right = count <= MostOnStack ? stackalloc double[count] : new double[count];
        for (var row = 0; row < count; row++)
        {
            right.Clear();
            right[row] = 1;
            equations.Substitute(right, equations._byEquation.AsSpan(row * equations._stride, count));
        }

        return equations;
    }

    /// <summary>Solves for one right-hand side.</summary>
    /// <param name="right">Right-hand side.</param>
    /// <param name="x">Receives the unknowns; another place than <paramref name="right"/>.</param>
    public void Solve(ReadOnlySpan<double> right, Span<double> x)
    {
        right = right[.._count];
        for (var from = 0; from < _count; from += Vector256<double>.Count)
        {
            var sum = Vector256<double>.Zero;
            ref var first = ref MemoryMarshal.GetArrayDataReference(_byEquation);
            for (var row = 0; row < right.Length; row++) sum += Vector256.Create(right[row]) * Vector256.LoadUnsafe(ref first, (nuint)((row * _stride) + from));
            if (from + Vector256<double>.Count <= _count) sum.CopyTo(x[from..]);
            else for (var i = from; i < _count; i++) x[i] = sum.GetElement(i - from);
        }
    }

    private void Substitute(ReadOnlySpan<double> right, Span<double> x)
    {
        for (var row = 0; row < _count; row++)
        {
            var sum = right[_order[row]] / _rowScale[_order[row]];
            for (var column = 0; column < row; column++) sum -= _factors[(row * _count) + column] * x[column];
            x[row] = sum;
        }

        for (var row = _count - 1; row >= 0; row--)
        {
            var sum = x[row];
            for (var column = row + 1; column < _count; column++) sum -= _factors[(row * _count) + column] * x[column];
            x[row] = sum / _factors[(row * _count) + row];
        }

        for (var column = 0; column < _count; column++) x[column] /= _columnScale[column];
    }

    private bool TryEliminate()
    {
        for (var column = 0; column < _count; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < _count; row++)
            {
                if (Math.Abs(_factors[(row * _count) + column]) > Math.Abs(_factors[(pivot * _count) + column])) pivot = row;
            }

            if (!(Math.Abs(_factors[(pivot * _count) + column]) > SmallestPivot)) return false;
            if (pivot != column)
            {
                for (var i = 0; i < _count; i++) (_factors[(pivot * _count) + i], _factors[(column * _count) + i]) = (_factors[(column * _count) + i], _factors[(pivot * _count) + i]);
                (_order[pivot], _order[column]) = (_order[column], _order[pivot]);
            }

            for (var row = column + 1; row < _count; row++)
            {
                var share = _factors[(row * _count) + column] /= _factors[(column * _count) + column];
                if (share == 0) continue;
                for (var next = column + 1; next < _count; next++) _factors[(row * _count) + next] -= share * _factors[(column * _count) + next];
            }
        }

        return true;
    }
}
