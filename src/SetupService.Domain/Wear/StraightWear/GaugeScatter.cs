using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>How far single readings scatter about straight wear, and on how much that knowledge rests.</summary>
/// <param name="StandardDeviationMm">Standard deviation of one reading, mm; above 0.</param>
/// <param name="DegreesOfFreedom">Readings beyond those a fit uses up, over all zones; at least 1.</param>
/// <param name="IsFloor">True when the readings lie closer to the line than a gauge reads, and its least scatter is taken instead.</param>
public readonly record struct GaugeScatter(double StandardDeviationMm, int DegreesOfFreedom, bool IsFloor)
{
    /// <summary>
    /// Least scatter of a reading to a tenth of a millimetre, mm: the step over √12, the standard deviation of what rounding takes.
    /// </summary>
    public const double LeastMm = 0.028867513459481287;

    /// <summary>
    /// Scatter less than this share of a stated gauge error is chance. With it the 90 % ranges keep 90 to 91 cases in 100; counting
    /// the stated error as readings would keep 93 where there are four readings on two clocks, and 87 where it is stated too small.
    /// </summary>
    public const double LeastShareOfStated = 0.3;

    /// <summary>Share of the upper end of a 90 % range.</summary>
    public const double UpperShare = 0.95;

    /// <summary>Standard errors to either side of a 90 % range.</summary>
    public double Quantile { get; } = StudentT.UpperQuantile(UpperShare, DegreesOfFreedom);

    /// <summary>Scatter from sums of squares about fits.</summary>
    /// <param name="squaresMm2">Sum over all fits, mm².</param>
    /// <param name="degreesOfFreedom">At least 1.</param>
    /// <param name="statedMm">Stated error of one reading, mm; null where it is not stated.</param>
    public static GaugeScatter Estimate(double squaresMm2, int degreesOfFreedom, double? statedMm)
    {
        var foundMm = Math.Sqrt(squaresMm2 / degreesOfFreedom);
        var leastMm = statedMm is { } stated ? LeastShareOfStated * stated : LeastMm;
        return new(Math.Max(foundMm, leastMm), degreesOfFreedom, foundMm < leastMm);
    }

    /// <summary>The 90 % range of an estimate whose variance is <paramref name="variance"/> times that of one reading.</summary>
    public Uncertainty Range(double value, double variance)
    {
        var half = Quantile * StandardDeviationMm * Math.Sqrt(variance);
        return new(value, value - half, value + half, Uncertainty.NinetyPct);
    }
}
