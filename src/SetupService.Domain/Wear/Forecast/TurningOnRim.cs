using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>What turning a tyre on its rim brings: its outer and inner shoulder change places.</summary>
/// <param name="Change">When and how much, in mixes.</param>
/// <param name="IsShown">True when the readings show that the shoulders wear at different rates; else the gain may be chance.</param>
public readonly record struct TurningOnRim(PlaceChange Change, bool IsShown)
{
    /// <summary>What it brings; null where a zone is at the limit or its wear is not shown.</summary>
    public static TurningOnRim? Compute(WearFit fit, double limitMm)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (TyreLife.Compute(fit, limitMm, fit.Design.Mix) is not { } tread) return null;
        var change = PlaceChange.Best(
        [
            new(tread.OverLimitMm.Outer, tread.LostMm.Outer, tread.LostMm.Inner),
            new(tread.OverLimitMm.Centre, tread.LostMm.Centre, tread.LostMm.Centre),
            new(tread.OverLimitMm.Inner, tread.LostMm.Inner, tread.LostMm.Outer),
        ]);
        var mix = fit.Design.Share(fit.Design.Mix)!.Value;
        var error = Math.Sqrt(fit.LostVarianceMm2(TreadPlace.Outer, mix) + fit.LostVarianceMm2(TreadPlace.Inner, mix));
        return new(change, Math.Abs(tread.LostMm.Outer - tread.LostMm.Inner) > fit.Scatter.Quantile * error);
    }
}
