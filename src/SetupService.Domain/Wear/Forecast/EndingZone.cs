using SetupService.Domain.Answers;
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
    private const double RoughReach = 4;
    private const double RoughStep = 0.8;
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
            var (overMm, lostMm) = (fit.EndMm(place) - limitMm, fit.LostMm(place, mix));

            // A zone past the limit counts by how far it is past, whatever its rate.
            var left = overMm <= 0 ? overMm : lostMm > 0 ? overMm / lostMm : double.PositiveInfinity;
            if (double.IsFinite(left) && !(left >= first?.MixesLeft)) first = (place, left);
        }

        if (first is not { } ending) return null;
        var when = Math.Max(0, ending.MixesLeft);
        return new(ending.Place, ProbabilityAt(fit, mix, ending.Place, when), when);
    }

    /// <summary>The same of a rough forecast, from the ranges of what is left, taken as log-normal and independent.</summary>
    public static EndingZone? Find(AcrossTread<ZoneForecast?> zones)
    {
        ReadOnlySpan<TreadPlace> places = [TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner];
        TreadPlace? first = null;
        foreach (var place in places)
        {
            if (zones.At(place) is { MixesLeft.Value: { } left } && !(left >= (first is { } known ? zones.At(known)!.Value.MixesLeft.Value : null))) first = place;
        }

        if (first is not { } ending) return null;
        var (middle, spread) = Log(zones.At(ending)!.Value.MixesLeft);
        var sum = 0.0;
        for (var error = -RoughReach; error <= RoughReach; error += RoughStep)
        {
            var chance = RoughStep * NormalDistribution.Density(error);
            foreach (var other in places)
            {
                if (other == ending || zones.At(other) is not { } zone) continue;
                var (otherMiddle, otherSpread) = Log(zone.MixesLeft);
                chance *= NormalDistribution.Below((otherMiddle - middle - (spread * error)) / otherSpread);
            }

            sum += chance;
        }

        return new(ending, Math.Clamp(sum, 0, 1), zones.At(ending)!.Value.MixesLeft.Value!.Value);

        static (double Middle, double Spread) Log(in RatioRange left)
        {
            const double Least = 1e-6;
            var (lower, upper) = (Math.Max(Least, left.Lower ?? Least), Math.Max(Least, left.Upper ?? 1 / Least));
            return (Math.Log(Math.Max(Least, left.Value!.Value)), Math.Max(Least, Math.Log(upper / lower) / (2 * Uncertainty.StandardErrorsAtNinetyPct)));
        }
    }

    /// <summary>
    /// How sure it is that this zone is the shallowest when it is due: errors of zones do not depend on each other, so it is one integral
    /// over this zone's error. Each difference of two zones is a Student's t, taken as the normal value of the same probability.
    /// </summary>
    private static double ProbabilityAt(WearFit fit, in MixShare mix, TreadPlace place, double when)
    {
        var (depthMm, varianceMm2) = At(fit, mix, place, when);
        Span<(double Ahead, double Scale)> others = stackalloc (double, double)[WearFit.ZoneCount - 1];
        var count = 0;
        foreach (var other in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            if (other == place) continue;
            var (otherMm, otherVarianceMm2) = At(fit, mix, other, when);
            var share = StudentT.Below((otherMm - depthMm) / Math.Sqrt(varianceMm2 + otherVarianceMm2), fit.Scatter.DegreesOfFreedom);
            var scale = Math.Sqrt(varianceMm2 / otherVarianceMm2);
            others[count++] = (Math.Sqrt(1 + (scale * scale)) * NormalDistribution.Quantile(share), scale);
        }

        var sum = 0.0;
        for (var error = -Reach; error <= Reach; error += Step)
            sum += Step * NormalDistribution.Density(error) * NormalDistribution.Below(others[0].Ahead - (others[0].Scale * error)) * NormalDistribution.Below(others[1].Ahead - (others[1].Scale * error));
        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>A zone's depth some use from now, mm, with its variance, mm².</summary>
    private static (double DepthMm, double VarianceMm2) At(WearFit fit, in MixShare mix, TreadPlace place, double when) => (
        fit.EndMm(place) - (when * fit.LostMm(place, mix)),
        fit.EndVarianceMm2(place) - (2 * when * fit.EndCovarianceMm2(place, mix)) + (when * when * fit.LostVarianceMm2(place, mix)));
}
