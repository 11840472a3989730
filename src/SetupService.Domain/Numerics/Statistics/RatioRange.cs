namespace SetupService.Domain.Numerics.Statistics;

/// <summary>
/// The range of a ratio of two estimates by Fieller's theorem: every ratio that the readings do not contradict. Its ends are
/// where top − ratio × bottom stands exactly as many standard errors from zero as the level asks. Source of the theorem:
/// E. C. Fieller, Some problems in interval estimation, J. R. Statist. Soc. B 16 (1954), from memory; derived anew here.
/// </summary>
/// <param name="Value">Top over bottom; 0 where the top is not above zero, null where the bottom is not.</param>
/// <param name="Lower">Lower end, not below 0; null where the readings bound it not even from below.</param>
/// <param name="Upper">Upper end; null where the bottom is not shown to be above zero, and no ratio is too large.</param>
public readonly record struct RatioRange(double? Value, double? Lower, double? Upper)
{
    /// <summary>True when both ends are known.</summary>
    public bool IsBounded => Value is not null && Lower is not null && Upper is not null;

    /// <summary>True when neither the value nor an end is known.</summary>
    public bool IsUnknown => Value is null && Lower is null && Upper is null;

    /// <summary>The same in another unit.</summary>
    public RatioRange Times(double factor) => new(Value * factor, Lower * factor, Upper * factor);

    /// <summary>The range of a ratio that cannot be negative.</summary>
    /// <param name="top">Estimate above the line.</param>
    /// <param name="bottom">Estimate below it.</param>
    /// <param name="topVariance">Variance of the top.</param>
    /// <param name="covariance">Covariance of both.</param>
    /// <param name="bottomVariance">Variance of the bottom; above 0.</param>
    /// <param name="quantile">Standard errors to either side.</param>
    public static RatioRange Compute(double top, double bottom, double topVariance, double covariance, double bottomVariance, double quantile)
    {
        // Ends of (top − x bottom)² = q² (topVariance − 2 x covariance + x² bottomVariance), written a x² − 2 b x + c = 0.
        var q = quantile * quantile;
        var a = (bottom * bottom) - (q * bottomVariance);
        var b = (top * bottom) - (q * covariance);
        var c = (top * top) - (q * topVariance);
        var root = Math.Sqrt(Math.Max(0, (b * b) - (a * c)));
        double? value = bottom > 0 ? Math.Max(0, top / bottom) : top <= 0 ? 0 : null;

        // Shown above zero: both ends are there. Else the lower end is the way to where even the fastest bottom arrives.
        var isShown = bottom > 0 && a > 0;
        double? most = isShown ? Math.Max(0, (b + root) / a) : null;
        var isOpenBelow = !(top > 0) || c <= 0;
        var neverArrives = bottom < 0 && a >= 0;
        double? least = isOpenBelow ? 0 : neverArrives ? null : c / (b + root);
        return new(value, least, most);
    }
}
