using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>The zone that ends the tyre.</summary>
/// <param name="Place">The zone estimated to be at the limit first, at the mix of use there was.</param>
/// <param name="Probability">How sure that is, 0 to 1.</param>
/// <param name="MixesLeft">When, in mixes.</param>
public readonly record struct EndingZone(TreadPlace Place, double Probability, double MixesLeft)
{
    /// <summary>Least probability at which the ending zone counts as certain.</summary>
    public const double LeastProbability = 0.9;

    private const double Reach = 6;
    private const double Step = 0.5;

    /// <summary>True when the readings separate it from the other zones.</summary>
    public bool IsToldApart => Probability >= LeastProbability;

    /// <summary>The zone; null where no zone is estimated to come down to the limit.</summary>
    public static EndingZone? Find(WearFit fit, double limitMm)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (fit.Design.Share(fit.Design.Mix) is not { } mix) return null;
        (TreadPlace Place, double MixesLeft)? first = null;
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            var (overMm, lostMm) = (fit.Zones.At(place).EndDepthMm - limitMm, fit.Zones.At(place).LostOfMixMm.Dot(mix));

            // A zone past the limit counts by how far it is past, whatever its rate.
            var left = overMm <= 0 ? overMm : lostMm > 0 ? overMm / lostMm : double.PositiveInfinity;
            if (double.IsFinite(left) && !(left >= first?.MixesLeft)) first = (place, left);
        }

        if (first is not { } ending) return null;
        var when = Math.Max(0, ending.MixesLeft);
        return new(ending.Place, ProbabilityAt(fit, mix, ending.Place, when), when);
    }

    /// <summary>
    /// How sure it is that this zone is the shallowest when it is due: errors of zones do not depend on each other, so it is one integral
    /// over this zone's error. Each difference of two zones is a Student's t, taken as the normal value of the same probability.
    /// </summary>
    private static double ProbabilityAt(WearFit fit, in MixShare mix, TreadPlace place, double when)
    {
        var design = fit.Design;
        var variance = design.EndVariance - (2 * when * design.EndCovariance(mix)) + (when * when * design.Variance(mix));
        var scale = fit.Scatter.StandardDeviationMm * Math.Sqrt(variance);
        Span<double> ahead = stackalloc double[WearFit.ZoneCount - 1];
        var count = 0;
        foreach (var other in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            if (other == place) continue;
            var deeperMm = Depth(fit.Zones.At(other), mix, when) - Depth(fit.Zones.At(place), mix, when);
            var share = StudentT.Below(deeperMm / (scale * Math.Sqrt(2)), fit.Scatter.DegreesOfFreedom);
            ahead[count++] = Math.Sqrt(2) * NormalDistribution.Quantile(share);
        }

        var sum = 0.0;
        for (var error = -Reach; error <= Reach; error += Step)
            sum += Step * NormalDistribution.Density(error) * NormalDistribution.Below(ahead[0] - error) * NormalDistribution.Below(ahead[1] - error);
        return Math.Clamp(sum, 0, 1);
    }

    private static double Depth(in ZoneWear zone, in MixShare mix, double when) => zone.EndDepthMm - (when * zone.LostOfMixMm.Dot(mix));
}
