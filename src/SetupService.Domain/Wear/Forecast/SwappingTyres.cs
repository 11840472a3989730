using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.Forecast;

/// <summary>What it brings that two tyres change places, each going on at the other's rates; all in mixes of the first.</summary>
/// <param name="ThisAsItIs">How long this tyre lasts where it is.</param>
/// <param name="ThisAtOthersPlace">How long it would last in the other's place from now.</param>
/// <param name="OtherAsItIs">How long the other lasts where it is.</param>
/// <param name="OtherAtThisPlace">How long it would last in this one's place from now.</param>
/// <param name="Change">The best time to swap, and how long until the first of both is done.</param>
public readonly record struct SwappingTyres(double ThisAsItIs, double ThisAtOthersPlace, double OtherAsItIs, double OtherAtThisPlace, PlaceChange Change)
{
    /// <summary>What it brings; null where a zone of either is at the limit, its wear not shown, or the other's clocks do not determine the wear of this one's use.</summary>
    public static SwappingTyres? Compute(WearFit fit, WearFit other, double limitMm)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(other);
        var use = fit.Design.Mix;
        if (TyreLife.Compute(fit, limitMm, use) is not { } a || TyreLife.Compute(other, limitMm, use) is not { } b) return null;
        ReadOnlySpan<WearingBand> bands =
        [
            new(a.OverLimitMm.Outer, a.LostMm.Outer, b.LostMm.Outer),
            new(a.OverLimitMm.Centre, a.LostMm.Centre, b.LostMm.Centre),
            new(a.OverLimitMm.Inner, a.LostMm.Inner, b.LostMm.Inner),
            new(b.OverLimitMm.Outer, b.LostMm.Outer, a.LostMm.Outer),
            new(b.OverLimitMm.Centre, b.LostMm.Centre, a.LostMm.Centre),
            new(b.OverLimitMm.Inner, b.LostMm.Inner, a.LostMm.Inner),
        ];
        var here = bands[..WearFit.ZoneCount];
        var there = bands[WearFit.ZoneCount..];
        return new(AsItIs(here), Swapped(here), AsItIs(there), Swapped(there), PlaceChange.Best(bands));
    }

    private static double AsItIs(ReadOnlySpan<WearingBand> bands) => Math.Min(bands[0].LifeAsItIs, Math.Min(bands[1].LifeAsItIs, bands[2].LifeAsItIs));

    private static double Swapped(ReadOnlySpan<WearingBand> bands) =>
        Math.Min(bands[0].LifeWhenChangedAfter(0), Math.Min(bands[1].LifeWhenChangedAfter(0), bands[2].LifeWhenChangedAfter(0)));
}
