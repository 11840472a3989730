using SetupService.Domain.Answers;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>A rate of one zone before and after a change.</summary>
/// <param name="BeforeMm">Wear of the unit of use before, mm.</param>
/// <param name="AfterMm">The same after, mm; null where the readings after do not tell it.</param>
/// <param name="Ratio">After over before, by Fieller's theorem; null likewise.</param>
/// <param name="IsShown">Whether the 90 % range of the ratio leaves 1 out; null likewise.</param>
public readonly record struct RateChange(Uncertainty BeforeMm, Uncertainty? AfterMm, RatioRange? Ratio, bool? IsShown)
{
    /// <summary>The change; null where the readings before do not tell the rate. Both fits carry the scatter of all readings.</summary>
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
