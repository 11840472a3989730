namespace SetupService.Domain.Numerics.Smoothing;

/// <summary>L D Lᵀ of a symmetric positive definite matrix with two diagonals either side of the main one.</summary>
internal sealed class BandFactors(int count)
{
    private readonly double[] _pivots = new double[count];
    private readonly double[] _first = new double[count];
    private readonly double[] _second = new double[count];
    private int _rows;

    /// <summary>Appends a row: its diagonal and the elements one and two to its left.</summary>
    public void Append(double diagonal, double left, double furtherLeft)
    {
        var i = _rows++;
        if (i >= 2) _second[i] = furtherLeft / _pivots[i - 2];
        if (i >= 1) _first[i] = (left - (i >= 2 ? furtherLeft * _first[i - 1] : 0)) / _pivots[i - 1];
        _pivots[i] = diagonal
            - (i >= 1 ? _first[i] * _first[i] * _pivots[i - 1] : 0)
            - (i >= 2 ? _second[i] * _second[i] * _pivots[i - 2] : 0);
    }

    /// <summary>Solves for a right side, in its place.</summary>
    public void Solve(Span<double> values)
    {
        for (var i = 0; i < count; i++)
        {
            if (i >= 1) values[i] -= _first[i] * values[i - 1];
            if (i >= 2) values[i] -= _second[i] * values[i - 2];
        }

        for (var i = count - 1; i >= 0; i--)
        {
            values[i] /= _pivots[i];
            if (i + 1 < count) values[i] -= _first[i + 1] * values[i + 1];
            if (i + 2 < count) values[i] -= _second[i + 2] * values[i + 2];
        }
    }
}
