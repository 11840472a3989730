using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>A rate of one zone before and after a change.</summary>
/// <param name="BeforeMm">Wear of the unit of use before, mm.</param>
/// <param name="AfterMm">The same after, mm; null where the readings after do not determine it.</param>
/// <param name="Ratio">After over before, by Fieller's theorem; null in the same case.</param>
/// <param name="IsShown">True when the 90 % range of the ratio leaves 1 out; null in the same case.</param>
public readonly record struct RateChange(Uncertainty BeforeMm, Uncertainty? AfterMm, RatioRange? Ratio, bool? IsShown)
{
    /// <summary>The change; null where the readings before do not determine the rate. Both fits carry the scatter of all readings.</summary>
    public static RateChange? Compute(WearFit before, WearFit? after, TreadPlace place, TyreUse use)
    {
        ArgumentNullException.ThrowIfNull(before);
        if (before.Wear(place, use) is not { } was) return null;
        if (after?.Wear(place, use) is not { } now) return new(was, null, null, null);
        var scatter = before.Scatter;
        var gauge = scatter.StandardDeviationMm * scatter.StandardDeviationMm;
        var (wasVariance, nowVariance) = (
            gauge * before.Design.Variance(before.Design.Share(use)!.Value), gauge * after.Design.Variance(after.Design.Share(use)!.Value));
        var ratio = RatioRange.Compute(now.Value, was.Value, nowVariance, 0, wasVariance, scatter.Quantile);

        // Fieller's range leaves 1 out exactly where the difference is further from 0 than its standard errors allow.
        var isShown = Math.Abs(now.Value - was.Value) > scatter.Quantile * Math.Sqrt(wasVariance + nowVariance);
        return new(was, now, ratio, isShown);
    }
}

/// <summary>How fast a shoulder wears against the centre, before and after: the pattern, whatever the pace.</summary>
/// <param name="Before">Shoulder's rate over the centre's before.</param>
/// <param name="After">The same after; null where the readings after do not determine it.</param>
/// <param name="IsShown">True when a change of it is shown at 90 %; null where a rate is not shown to be above zero.</param>
public readonly record struct ShoulderChange(RatioRange Before, RatioRange? After, bool? IsShown)
{
    /// <summary>The change; null where the readings before do not determine the rates.</summary>
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
