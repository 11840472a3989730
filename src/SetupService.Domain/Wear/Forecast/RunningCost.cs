using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Forecast;

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
