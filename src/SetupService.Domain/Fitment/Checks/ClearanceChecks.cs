using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// The checks of room around the wheel. Each place takes the candidate's change of envelope along its own
/// direction from the gap that was measured there; docs/methods/fitment-clearance.md derives the terms.
/// </summary>
public static class ClearanceChecks
{
    /// <summary>
    /// At full lock the nearest part may stand before or behind the tread, and a spring seat inboard of it: up to so far off
    /// the direction the gap was measured in, degrees. Common practice, no source.
    /// </summary>
    public const double ObliqueDeg = 40;

    /// <summary>The share of a movement across the measured direction that counts: sin 40°.</summary>
    public const double ObliqueShare = 0.6427876096865393;

    /// <summary>Judges the room at a place.</summary>
    public static CheckResult Evaluate(AxleUnderCheck car, in Envelope candidate, CheckId place) =>
        TryBudget(car, candidate, place, out var budget, out var missing)
            ? CheckResult.Room(budget.Margin, car.MinimumMarginMm)
            : CheckResult.Unknown(missing);

    /// <summary>
    /// The terms that make up the room at a place; false with the reason where one of them is not known.
    /// </summary>
    public static bool TryBudget(
        AxleUnderCheck car, in Envelope candidate, CheckId place, out ClearanceBudget budget, out Finding missing) =>
        TryBudget(car, candidate, place, standing: false, out budget, out missing);

    /// <summary>As the other; <paramref name="standing"/> leaves travel out, for what is judged with the car at rest.</summary>
    internal static bool TryBudget(
        AxleUnderCheck car, in Envelope candidate, CheckId place, bool standing, out ClearanceBudget budget, out Finding missing)
    {
        budget = default;
        if (Gap(car.Axle.Clearance, place) is not { } gapMm)
        {
            missing = Finding.GapMissing;
            return false;
        }

        if (car.Present is null)
        {
            missing = Finding.PresentFittingMissing;
            return false;
        }

        if (!standing && car.Contradicting.Contains(place))
        {
            missing = Finding.MeasurementsContradict;
            return false;
        }

        if ((standing ? 0 : Travel(car, candidate, place)) is not { } travelMm)
        {
            missing = car.Travel.Missing;
            return false;
        }

        if (CamberTakes(car, candidate, place) is not { } camberMm)
        {
            missing = Finding.PivotHeightMissing;
            return false;
        }

        missing = Finding.Computed;
        budget = Budget(car, candidate, place) with { GapMm = gapMm, CamberMm = camberMm, TravelMm = travelMm };
        return true;
    }

    /// <summary>The gap that was measured at a place, mm; null where it was not.</summary>
    public static double? Gap(Clearance clearance, CheckId place) => place switch
    {
        CheckId.InboardClearance => clearance.InboardMm,
        CheckId.OutboardClearance => clearance.OutboardMm,
        CheckId.RadialClearance => clearance.RadialMm,
        CheckId.FullLockClearance => clearance.InboardAtFullLockMm,
        _ => clearance.SpringSeatMm,
    };

    private static ClearanceBudget Budget(AxleUnderCheck car, in Envelope candidate, CheckId place)
    {
        ref readonly var present = ref car.PresentEnvelope;
        var inboardMm = present.InboardMm - candidate.InboardMm;
        var radialMm = candidate.RadiusMm - present.RadiusMm;
        var (takesMm, alongWidth, alongRadius) = place switch
        {
            CheckId.InboardClearance => (inboardMm, 1.0, 0.0),
            CheckId.OutboardClearance => (candidate.OutboardMm - present.OutboardMm, 1, 0),
            CheckId.RadialClearance => (radialMm, 0, 1),
            CheckId.FullLockClearance => (inboardMm + (ObliqueShare * Math.Max(0, radialMm)), 1, ObliqueShare),
            _ => (radialMm + (ObliqueShare * Math.Max(0, inboardMm)), ObliqueShare, 1),
        };
        return new ClearanceBudget
        {
            GapMm = 0,
            CandidateMm = takesMm,
            GrowthMm = Combined(alongWidth * candidate.WidthGrowthMm, alongRadius * candidate.RadiusGrowthMm),
            ProductionMm = Combined(alongWidth * present.WidthShortfallMm, alongRadius * present.RadiusShortfallMm),
            MeasuringMm = car.MeasuringErrorMm,
        };
    }

    /// <summary>What travel takes of the gap at a place, mm; null where it is not known.</summary>
    internal static double? Travel(AxleUnderCheck car, in Envelope candidate, CheckId place) => place switch
    {
        CheckId.RadialClearance => car.Travel.RadialMm,
        CheckId.OutboardClearance => car.Travel.Outboard?.TakesMm(candidate.RadiusMm),

        // The spring seat travels with the wheel.
        CheckId.SpringSeatClearance => 0,
        CheckId.FullLockClearance => car.Travel.FullLock?.TakesMm(candidate.RadiusMm),
        _ => car.Travel.Inboard?.TakesMm(candidate.RadiusMm),
    };

    /// <summary>
    /// What a change of camber takes at a place, mm; null where a height is missing. A point at height z above the pivot
    /// moves inboard by (z − pivot) · tan(−change).
    /// </summary>
    private static double? CamberTakes(AxleUnderCheck car, in Envelope candidate, CheckId place)
    {
        if (car.Settings.CamberChange is not { ChangeDeg: not 0 } change) return 0;

        var shoulderRiseMm = candidate.HalfWidthMm * change.ShoulderRisePerMm;
        var strut = car.Axle.Suspension.Layout is SuspensionLayout.MacPhersonStrut;
        var goesWithStrut = change.At == CamberChangePlace.StrutTop || (change.At == CamberChangePlace.LowerJoint && strut);
        return place switch
        {
            CheckId.RadialClearance => shoulderRiseMm,
            CheckId.OutboardClearance =>
                -change.InboardPerMm * (candidate.RadiusMm + candidate.WidestRadiusMm - OutboardPivot(candidate, change)),
            _ when goesWithStrut => 0,
            CheckId.SpringSeatClearance =>
                shoulderRiseMm + (ObliqueShare * Positive(change.InboardPerMm * (candidate.OverallDiameterMm - change.PivotHeightMm))),

            // Without drawn points a lower joint may turn the wheel about a strut's top, which gives no room beside the strut.
            _ when change.At == CamberChangePlace.LowerJoint && car.Axle.Suspension.Layout is (null or SuspensionLayout.Measured) =>
                Positive(change.NarrowestAbovePivotMm * change.InboardPerMm),
            _ => change.NarrowestAbovePivotMm * change.InboardPerMm,
        };
    }

    /// <summary>
    /// Height of the pivot for the arch: as given, else the one of its plausible places that gives least room
    /// (wheel centre where the top goes in, the ground where it goes out); none for the lower joint, whose pivot is above.
    /// </summary>
    private static double? OutboardPivot(in Envelope candidate, CamberChange change)
    {
        if (change.PivotHeightMm is { } pivotMm) return pivotMm;
        if (change.At == CamberChangePlace.LowerJoint) return null;
        return change.ChangeDeg < 0 ? candidate.RadiusMm : 0;
    }

    private static double? Positive(double? mm) => mm is { } known ? Math.Max(0, known) : null;

    private static double Combined(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
