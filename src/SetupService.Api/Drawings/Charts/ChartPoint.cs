namespace SetupService.Api.Drawings.Charts;

/// <summary>A point of a line. A number that is not finite, or larger than 1e9, counts as not known.</summary>
/// <param name="X">Where it stands on the shared axis, in the axis' unit.</param>
/// <param name="Y">The value in the panel's unit; null where there is none.</param>
public readonly record struct ChartPoint(double X, double? Y)
{
    private const double Largest = 1e9;

    /// <summary>Lower end of the uncertainty; null where there is none.</summary>
    public double? Lower { get; init; }

    /// <summary>Upper end of the uncertainty; null where there is none.</summary>
    public double? Upper { get; init; }

    internal bool HasPlace => IsKnown(X);

    internal bool HasValue => HasPlace && Y is { } value && IsKnown(value);

    internal bool HasBand => HasPlace && Lower is { } lower && Upper is { } upper && IsKnown(lower) && IsKnown(upper);

    private static bool IsKnown(double value) => Math.Abs(value) <= Largest;
}
