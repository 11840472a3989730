namespace SetupService.Domain.Numerics.LeastSquares;

/// <summary>
/// The normal equations of a least-squares problem of a few unknowns, on memory the caller lends. Solved by Cholesky's
/// factors after scaling every unknown to the same size.
/// </summary>
public readonly ref struct NormalEquations
{
    // What is left of a scaled diagonal of 1 when one unknown is as good as a mixture of the others.
    private const double Singular = 1e-13;

    private readonly int _count;
    private readonly Span<double> _matrix;
    private readonly Span<double> _right;
    private readonly Span<double> _factor;
    private readonly Span<double> _scale;

    /// <summary>Empty equations; <paramref name="memory"/> holds at least <see cref="MemoryFor"/> numbers.</summary>
    public NormalEquations(Span<double> memory, int unknownCount)
    {
        _count = unknownCount;
        var square = unknownCount * unknownCount;
        _matrix = memory[..square];
        _factor = memory.Slice(square, square);
        _right = memory.Slice(2 * square, unknownCount);
        _scale = memory.Slice((2 * square) + unknownCount, unknownCount);
        Clear();
    }

    /// <summary>How many numbers the equations need.</summary>
    public static int MemoryFor(int unknownCount) => 2 * unknownCount * (unknownCount + 1);

    /// <summary>Forgets all readings.</summary>
    public void Clear()
    {
        _matrix.Clear();
        _right.Clear();
    }

    /// <summary>Counts a reading in.</summary>
    public void Add(ReadOnlySpan<double> gradient, double residual)
    {
        for (var row = 0; row < _count; row++)
        {
            _right[row] += gradient[row] * residual;
            for (var column = 0; column <= row; column++) _matrix[(row * _count) + column] += gradient[row] * gradient[column];
        }
    }

    /// <summary>Makes the factors; false where the readings cannot tell the unknowns apart. Call it before what is below.</summary>
    public bool TryFactor()
    {
        for (var row = 0; row < _count; row++) _scale[row] = Math.Sqrt(_matrix[(row * _count) + row]);
        for (var row = 0; row < _count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var sum = _matrix[(row * _count) + column] / (_scale[row] * _scale[column]);
                for (var k = 0; k < column; k++) sum -= _factor[(row * _count) + k] * _factor[(column * _count) + k];
                if (row == column)
                {
                    // Also false for what is not a number.
                    if (!(sum > Singular)) return false;
                    _factor[(row * _count) + row] = Math.Sqrt(sum);
                }
                else
                {
                    _factor[(row * _count) + column] = sum / _factor[(column * _count) + column];
                }
            }
        }

        return true;
    }

    /// <summary>The step of the unknowns that lessens the residuals most; answers the sum of squares it promises to take off.</summary>
    public double Solve(Span<double> step)
    {
        for (var i = 0; i < _count; i++) step[i] = _right[i] / _scale[i];
        Substitute(step);
        var promised = 0.0;
        for (var i = 0; i < _count; i++)
        {
            step[i] /= _scale[i];
            promised += step[i] * _right[i];
        }

        return promised;
    }

    /// <summary>
    /// Square roots of the inverse matrix' diagonal: the standard error of each unknown per unit of the readings' own.
    /// </summary>
    public void StandardFactors(Span<double> factors)
    {
        Span<double> column = stackalloc double[_count];
        for (var i = 0; i < _count; i++)
        {
            column.Clear();
            column[i] = 1;
            Substitute(column);
            factors[i] = Math.Sqrt(column[i]) / _scale[i];
        }
    }

    /// <summary>The inverse matrix by rows: covariances of the unknowns where every reading's error is one.</summary>
    public void Covariance(Span<double> covariance)
    {
        for (var i = 0; i < _count; i++)
        {
            var row = covariance.Slice(i * _count, _count);
            row.Clear();
            row[i] = 1;
            Substitute(row);
            for (var k = 0; k < _count; k++) row[k] /= _scale[i] * _scale[k];
        }
    }

    /// <summary>Half the logarithm of the matrix' determinant.</summary>
    public double HalfLogDeterminant
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < _count; i++) sum += Math.Log(_factor[(i * _count) + i] * _scale[i]);
            return sum;
        }
    }

    private void Substitute(Span<double> values)
    {
        for (var row = 0; row < _count; row++)
        {
            for (var k = 0; k < row; k++) values[row] -= _factor[(row * _count) + k] * values[k];
            values[row] /= _factor[(row * _count) + row];
        }

        for (var row = _count - 1; row >= 0; row--)
        {
            for (var k = row + 1; k < _count; k++) values[row] -= _factor[(k * _count) + row] * values[k];
            values[row] /= _factor[(row * _count) + row];
        }
    }
}
