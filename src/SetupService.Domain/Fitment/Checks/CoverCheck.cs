using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>The check that the arch covers the wheel and tyre, from the one gap measured at the lip.</summary>
public static class CoverCheck
{
    /// <summary>
    /// How far wheels and tyres may protrude from the cover by the Dutch Regeling voertuigen, 5.2.48 (4), mm:
    /// the widest limit that was read; other countries allow less.
    /// </summary>
    public const double WidestAllowedPokeMm = 30;

    /// <summary>
    /// Room left inside the lip with the car at rest, mm, negative = outside it: inside passes, outside is a caution because local law
    /// decides, more than <see cref="WidestAllowedPokeMm"/> outside fails.
    /// </summary>
    public static CheckResult Evaluate(FitmentContext car, in Envelope candidate)
    {
        if (!ClearanceChecks.TryBudget(car, candidate, CheckId.OutboardClearance, standing: true, out var budget, out var missing))
        {
            return ClearanceChecks.MoreRoom(car, candidate, CheckId.OutboardClearance) is { IsInside: true }
                ? new() { Status = CheckStatus.Pass, Reason = UnknownReason.InsidePresent }
                : CheckResult.Unknown(missing);
        }

        // At worst travel a gap has the way up to the stop in it, and more with it.
        var standsAtMm = car.Standing is { } place && car.Axle.Clearance.MeasuredAt == Vehicles.ClearanceMeasuredAt.RideHeight
            ? SideTravel.OutboardAtMm(place, candidate.RadiusMm)
            : 0;
        var insideMm = budget.Margin.NominalMm - standsAtMm;
        var result = CheckResult.From(insideMm >= -WidestAllowedPokeMm, insideMm, 0);
        return result.Status == CheckStatus.Pass && insideMm < 0 ? result with { Status = CheckStatus.Caution } : result;
    }
}
