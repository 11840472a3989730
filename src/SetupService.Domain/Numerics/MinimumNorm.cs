namespace SetupService.Domain.Numerics;

/// <summary>
/// The least-squares solution of a few linear equations, and of all such the one of least size: the pseudo-inverse, by the one-sided
/// Jacobi method (Hestenes 1958, from memory). Allocates nothing.
/// </summary>
internal static class MinimumNorm
{
    /// <summary>Most equations and most unknowns.</summary>
    public const int MaximumSize = 4;

    private const int MaximumSweeps = 30;

    // Columns whose cosine is below this are square to each other in double precision.
    private const double SquareEnough = 1e-15;

    // A singular value this small against the largest says nothing about the unknowns.
    private const double SmallestShare = 1e-11;

    /// <summary>Solves <paramref name="rows"/>·x = <paramref name="right"/>; <paramref name="rows"/> is used up.</summary>
    /// <param name="rows">Coefficients, row by row; as many rows as right-hand sides, as many columns as unknowns.</param>
    /// <param name="right">Right-hand sides.</param>
    /// <param name="x">Receives the unknowns.</param>
    public static void Solve(Span<double> rows, ReadOnlySpan<double> right, Span<double> x)
    {
        var count = x.Length;
        Span<double> turn = stackalloc double[MaximumSize * MaximumSize];
        turn.Clear();
        for (var i = 0; i < count; i++) turn[(i * count) + i] = 1;
        for (var sweep = 0; sweep < MaximumSweeps && Sweep(rows, turn, right.Length, count); sweep++) ;

        x.Clear();
        var largest = 0.0;
        for (var column = 0; column < count; column++) largest = Math.Max(largest, Dot(rows, column, column, right.Length, count));
        for (var column = 0; column < count; column++)
        {
            var square = Dot(rows, column, column, right.Length, count);
            if (!(square > SmallestShare * SmallestShare * largest)) continue;
            var share = 0.0;
            for (var row = 0; row < right.Length; row++) share += rows[(row * count) + column] * right[row];
            share /= square;
            for (var i = 0; i < count; i++) x[i] += share * turn[(i * count) + column];
        }
    }

    /// <summary>Turns each pair of columns square to each other; false where all of them were.</summary>
    private static bool Sweep(Span<double> rows, Span<double> turn, int height, int count)
    {
        var turned = false;
        for (var p = 0; p < count - 1; p++)
        {
            for (var q = p + 1; q < count; q++)
            {
                var pp = Dot(rows, p, p, height, count);
                var qq = Dot(rows, q, q, height, count);
                var pq = Dot(rows, p, q, height, count);
                if (Math.Abs(pq) <= SquareEnough * Math.Sqrt(pp * qq) || pq == 0) continue;
                turned = true;
                var cotangent = (qq - pp) / (2 * pq);
                var tangent = (cotangent < 0 ? -1 : 1) / (Math.Abs(cotangent) + Math.Sqrt(1 + (cotangent * cotangent)));
                var cosine = 1 / Math.Sqrt(1 + (tangent * tangent));
                Turn(rows, p, q, height, count, cosine, cosine * tangent);
                Turn(turn, p, q, count, count, cosine, cosine * tangent);
            }
        }

        return turned;
    }

    private static void Turn(Span<double> matrix, int p, int q, int height, int count, double cosine, double sine)
    {
        for (var row = 0; row < height; row++)
        {
            var (a, b) = (matrix[(row * count) + p], matrix[(row * count) + q]);
            matrix[(row * count) + p] = (cosine * a) - (sine * b);
            matrix[(row * count) + q] = (sine * a) + (cosine * b);
        }
    }

    private static double Dot(ReadOnlySpan<double> rows, int p, int q, int height, int count)
    {
        var sum = 0.0;
        for (var row = 0; row < height; row++) sum += rows[(row * count) + p] * rows[(row * count) + q];
        return sum;
    }
}
