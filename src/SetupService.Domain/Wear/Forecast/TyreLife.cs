using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>What a tyre has left and loses with a stretch of use.</summary>
/// <param name="OverLimitMm">Depth above the limit at the last reading, mm; above 0.</param>
/// <param name="LostMm">Wear of the stretch, mm; shown to be above 0.</param>
internal readonly record struct TyreLife(AcrossTread<double> OverLimitMm, AcrossTread<double> LostMm)
{
    /// <summary>The tyre; null where a zone is at the limit, its wear is not shown, or the readings do not tell what such use wears.</summary>
    public static TyreLife? Compute(WearFit fit, double limitMm, TyreUse use)
    {
        if (fit.Design.Share(use) is not { } share) return null;
        foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
        {
            if (fit.EndMm(place) <= limitMm || !(fit.LostMm(place, share) > 0) || fit.Left(place, limitMm, use) is not { IsBounded: true }) return null;
        }

        return new(
            new(fit.EndMm(TreadPlace.Outer) - limitMm, fit.EndMm(TreadPlace.Centre) - limitMm, fit.EndMm(TreadPlace.Inner) - limitMm),
            new(fit.LostMm(TreadPlace.Outer, share), fit.LostMm(TreadPlace.Centre, share), fit.LostMm(TreadPlace.Inner, share)));
    }
}

/// <summary>What wear costs in money: the share of the usable depth a use takes, times the price.</summary>
public static class RunningCost
{
    /// <summary>Cost of the use a wear belongs to, in the price's currency; no end is below 0.</summary>
    /// <param name="wearMm">Wear of that use, mm.</param>
    /// <param name="usableMm">New depth minus the limit, mm; above 0.</param>
    /// <param name="price">Price of the tyre.</param>
    public static Uncertainty Compute(Uncertainty wearMm, double usableMm, double price) => new(
        Math.Max(0, wearMm.Value / usableMm * price),
        Math.Max(0, wearMm.Lower / usableMm * price),
        Math.Max(0, wearMm.Upper / usableMm * price),
        wearMm.LevelPct);
}
