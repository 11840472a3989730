namespace SetupService.Domain.Numerics.LeastSquares;

/// <summary>A formula with unknowns, and the readings it is fitted to. Readings are of the order of one (angles in radians).</summary>
public interface IFittedModel
{
    /// <summary>How many unknowns the formula has.</summary>
    int UnknownCount { get; }

    /// <summary>How many readings there are.</summary>
    int ReadingCount { get; }

    /// <summary>
    /// One reading less what the formula says of it, and the formula's derivatives by its unknowns; false where the formula has
    /// no value there, which makes the fit stay away.
    /// </summary>
    bool TryEvaluate(int reading, scoped ReadOnlySpan<double> unknowns, scoped Span<double> gradient, out double residual);
}
