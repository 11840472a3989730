namespace SetupService.Domain.Fitment.Outlines;

/// <summary>How far outlines reach, mm: stations from the hub face, heights from the wheel axis.</summary>
/// <param name="OutermostMm">The greatest station.</param>
/// <param name="InnermostMm">The smallest station.</param>
/// <param name="HighestMm">The greatest height.</param>
/// <param name="LowestMm">The smallest height.</param>
public readonly record struct OutlineExtremes(double OutermostMm, double InnermostMm, double HighestMm, double LowestMm)
{
    /// <summary>The extremes of nothing; anything added to them takes their place.</summary>
    public static OutlineExtremes None => new(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>With a point.</summary>
    public OutlineExtremes With(OutlinePoint point) => With(new OutlineExtremes(point.StationMm, point.StationMm, point.HeightMm, point.HeightMm));

    /// <summary>With other extremes.</summary>
    public OutlineExtremes With(OutlineExtremes other) => new(
        Math.Max(OutermostMm, other.OutermostMm),
        Math.Min(InnermostMm, other.InnermostMm),
        Math.Max(HighestMm, other.HighestMm),
        Math.Min(LowestMm, other.LowestMm));
}
