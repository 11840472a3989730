using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>How fast a shoulder wears against the centre, before and after: the pattern, whatever the pace.</summary>
/// <param name="Before">Shoulder's rate over the centre's before.</param>
/// <param name="After">The same after; null where the readings after do not tell it.</param>
/// <param name="IsShown">Whether a change of it is shown at 90 %; null where a rate is not shown to be above zero.</param>
public readonly record struct ShoulderChange(RatioRange Before, RatioRange? After, bool? IsShown)
{
    /// <summary>The change; null where the readings before do not tell rates.</summary>
    public static ShoulderChange? Compute(WearFit before, WearFit? after, TreadPlace shoulder, TyreUse use)
    {
        ArgumentNullException.ThrowIfNull(before);
        if (Ratio(before, shoulder, use) is not { } was) return null;
        if (after is null || Ratio(after, shoulder, use) is not { } now) return new(was, null, null);
        if (!was.IsBounded || !now.IsBounded || !(was.Value > 0) || !(now.Value > 0)) return new(was, now, null);

        // Of the logarithm each rate's relative error counts alike; all four rates are above zero here.
        var error = Math.Sqrt(Relative(before, shoulder, use) + Relative(before, TreadPlace.Centre, use) + Relative(after, shoulder, use) + Relative(after, TreadPlace.Centre, use));
        return new(was, now, Math.Abs(Math.Log(now.Value!.Value / was.Value!.Value)) > before.Scatter.Quantile * error);
    }

    private static RatioRange? Ratio(WearFit fit, TreadPlace shoulder, TyreUse use)
    {
        if (fit.Design.Share(use) is not { } share) return null;
        var variance = fit.Scatter.StandardDeviationMm * fit.Scatter.StandardDeviationMm * fit.Design.Variance(share);
        return RatioRange.Compute(
            fit.Zones.At(shoulder).LostOfMixMm.Dot(share), fit.Zones.Centre.LostOfMixMm.Dot(share), variance, 0, variance, fit.Scatter.Quantile);
    }

    /// <summary>Variance of a rate over its square.</summary>
    private static double Relative(WearFit fit, TreadPlace place, TyreUse use)
    {
        var share = fit.Design.Share(use)!.Value;
        var relative = fit.Scatter.StandardDeviationMm / fit.Zones.At(place).LostOfMixMm.Dot(share);
        return relative * relative * fit.Design.Variance(share);
    }
}
