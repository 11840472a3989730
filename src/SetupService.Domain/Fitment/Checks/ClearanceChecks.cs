using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// The clearance checks around the wheel. At each place the candidate's change of envelope, along that place's own direction,
/// is subtracted from the gap measured there; docs/methods/fitment-clearance.md derives the terms.
/// </summary>
public static class ClearanceChecks
{
    /// <summary>
    /// The share of a movement across the measured direction that counts: sin 40°, the greatest angle between the direction a gap was
    /// measured in and the nearest part. At full lock that part may be ahead of or behind the tread, and a spring seat may be inboard of it.
    /// Common practice, no source.
    /// </summary>
    public const double ObliqueShare = 0.6427876096865393;

    /// <summary>Judges the room at a place: where the candidate takes no more of it than the wheel and tyre fitted now, it passes whether the gap was measured or not.</summary>
    public static CheckResult Evaluate(FitmentContext car, in Envelope candidate, CheckId place)
    {
        var isKnown = TryBudget(car, candidate, place, out var budget, out var missing);
        var result = isKnown ? CheckResult.Room(budget.Margin, car.MinimumMarginMm) : CheckResult.Unknown(missing);
        if (result.Status == CheckStatus.Pass || missing == UnknownReason.MeasurementsContradict) return result;
        if ((isKnown ? MoreRoom(car, budget, place) : MoreRoom(car, candidate, place)) is not { } more) return result;
        return more.IsInside
            ? result with { Status = CheckStatus.Pass, Reason = UnknownReason.InsidePresent, MoreRoomMm = more.NominalMm }
            : isKnown ? result : result with { MoreRoomMm = more.NominalMm };
    }

    /// <summary>The same as <see cref="MoreRoom(FitmentContext, in Envelope, CheckId)"/> of a place whose terms are all known.</summary>
    private static MoreRoom MoreRoom(FitmentContext car, in ClearanceBudget budget, CheckId place)
    {
        var present = car.PresentAt(place);
        return new(budget.CandidateMm + budget.CamberMm + (budget.TravelMm - (present.TravelMm ?? 0)), budget.GrowthMm - present.GrowthMm);
    }

    /// <summary>What the wheel and tyre fitted now use at a place by travel, mm, and may by growth.</summary>
    internal static PresentPlace AtPresent(FitmentContext car, in Envelope present, CheckId place) =>
        new(Travel(car, present, place), Growth(present, Takes(present, present, place)));

    /// <summary>What the candidate, the camber change and travel take at a place beyond what the wheel and tyre fitted now take; null where these are not described or a height is missing.</summary>
    internal static MoreRoom? MoreRoom(FitmentContext car, in Envelope candidate, CheckId place)
    {
        if (car.Present is null || CamberTakes(car, candidate, place) is not { } camberMm) return null;
        ref readonly var present = ref car.PresentEnvelope;
        var travelMm = Travel(car, candidate, place) - car.PresentAt(place).TravelMm;

        // Where the wheel's way is not known, a tyre of no greater radius takes no more of it; of a greater one it cannot be told.
        if (travelMm is null && candidate.RadiusMm > present.RadiusMm) return null;
        var takes = Takes(present, candidate, place);
        var growthMm = Growth(candidate, takes) - car.PresentAt(place).GrowthMm;
        return new(takes.Mm + camberMm + (travelMm ?? 0), growthMm);
    }

    /// <summary>
    /// The terms that make up the room at a place; false with the reason where one of them is not known.
    /// </summary>
    public static bool TryBudget(
        FitmentContext car, in Envelope candidate, CheckId place, out ClearanceBudget budget, out UnknownReason missing) =>
        TryBudget(car, candidate, place, standing: false, out budget, out missing);

    /// <summary>As the overload above; true in <paramref name="standing"/> leaves suspension travel out, for what is judged with the car at rest.</summary>
    internal static bool TryBudget(
        FitmentContext car, in Envelope candidate, CheckId place, bool standing, out ClearanceBudget budget, out UnknownReason missing)
    {
        budget = default;
        if (Gap(car.Axle.Clearance, place) is not { } gapMm)
        {
            missing = UnknownReason.GapMissing;
            return false;
        }

        if (car.Present is null)
        {
            missing = car.Axle is { Wheel: not null, Tyre.Marking.HasDimensions: false } ? UnknownReason.TyreSizeUnknown : UnknownReason.PresentFittingMissing;
            return false;
        }

        if (!standing && car.Contradicting.Contains(place))
        {
            missing = UnknownReason.MeasurementsContradict;
            return false;
        }

        if ((standing ? 0 : Travel(car, candidate, place)) is not { } travelMm)
        {
            missing = car.Travel.Missing;
            return false;
        }

        if (CamberTakes(car, candidate, place) is not { } camberMm)
        {
            missing = UnknownReason.PivotHeightMissing;
            return false;
        }

        missing = UnknownReason.Computed;
        budget = Budget(car, candidate, place) with { GapMm = gapMm, CamberMm = camberMm, TravelMm = travelMm };
        if (!standing && car.Travel.Errors is { } errors) budget = budget with { MeasuringMm = Combined(budget.MeasuringMm, OpenMm(errors, candidate.RadiusMm, place)) };
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

    /// <summary>The sum of the tolerances at a place, mm, without what errors of the suspension's points add.</summary>
    internal static double TolerancesMm(FitmentContext car, in Envelope candidate, CheckId place) => Budget(car, candidate, place).SumMm;

    private static ClearanceBudget Budget(FitmentContext car, in Envelope candidate, CheckId place)
    {
        ref readonly var present = ref car.PresentEnvelope;
        var takes = Takes(present, candidate, place);
        return new ClearanceBudget
        {
            GapMm = 0,
            CandidateMm = takes.Mm,
            GrowthMm = Growth(candidate, takes),
            ProductionMm = Combined(takes.AlongWidth * present.WidthShortfallMm, takes.AlongRadius * present.RadiusShortfallMm),
            MeasuringMm = car.MeasuringErrorMm,
        };
    }

    /// <summary>What the candidate's nominal envelope takes at a place beyond the present one's, mm, and what shares of width and radius act there.</summary>
    private static (double Mm, double AlongWidth, double AlongRadius) Takes(in Envelope present, in Envelope candidate, CheckId place)
    {
        var inboardMm = present.InboardMm - candidate.InboardMm;
        var radialMm = candidate.RadiusMm - present.RadiusMm;
        return place switch
        {
            CheckId.InboardClearance => (inboardMm, 1, 0),
            CheckId.OutboardClearance => (candidate.OutboardMm - present.OutboardMm, 1, 0),
            CheckId.RadialClearance => (radialMm, 0, 1),
            CheckId.FullLockClearance => (inboardMm + (ObliqueShare * Math.Max(0, radialMm)), 1, ObliqueShare),
            _ => (radialMm + (ObliqueShare * Math.Max(0, inboardMm)), ObliqueShare, 1),
        };
    }

    private static double Growth(in Envelope fitting, (double Mm, double AlongWidth, double AlongRadius) takes) =>
        Combined(takes.AlongWidth * fitting.WidthGrowthMm, takes.AlongRadius * fitting.RadiusGrowthMm);

    /// <summary>What travel uses of the gap at a place, mm, at least 0; null where it is not known.</summary>
    internal static double? Travel(FitmentContext car, in Envelope candidate, CheckId place) => place switch
    {
        CheckId.RadialClearance => car.Travel.RadialMm,
        CheckId.OutboardClearance => car.Travel.Outboard?.TakesMm(candidate.RadiusMm),

        // The spring seat travels with the wheel.
        CheckId.SpringSeatClearance => 0,
        CheckId.FullLockClearance => car.Travel.FullLock?.TakesMm(candidate.RadiusMm),
        _ => car.Travel.Inboard?.TakesMm(candidate.RadiusMm),
    };

    /// <summary>Half width, mm, of what errors of the suspension's points leave open of what travel uses.</summary>
    private static double OpenMm(in (SideTravelError Inboard, SideTravelError FullLock, SideTravelError Outboard) errors, double radiusMm, CheckId place) => place switch
    {
        CheckId.InboardClearance => errors.Inboard.HalfWidthMm(radiusMm),
        CheckId.FullLockClearance => errors.FullLock.HalfWidthMm(radiusMm),
        CheckId.OutboardClearance => errors.Outboard.HalfWidthMm(radiusMm),
        _ => 0,
    };

    /// <summary>
    /// What a change of camber uses of the gap at a place, mm, negative = it adds room; null where a height is missing. A point at height z above the pivot
    /// moves inboard by (z − pivot) · tan(−change).
    /// </summary>
    private static double? CamberTakes(FitmentContext car, in Envelope candidate, CheckId place)
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

            // Without the suspension's points the wheel may turn about a strut's top when the lower joint moves, which adds no room beside the strut.
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

/// <summary>What the wheel and tyre fitted now use at a place, the same for every candidate.</summary>
/// <param name="TravelMm">By suspension travel; null where it is not known.</param>
/// <param name="GrowthMm">By growing in service.</param>
internal readonly record struct PresentPlace(double? TravelMm, double GrowthMm);

/// <summary>Room a candidate takes at a place beyond what the wheel and tyre fitted now take, mm; negative = less.</summary>
/// <param name="NominalMm">By nominal sizes.</param>
/// <param name="GrowthMm">How much more than the present ones it may grow in service.</param>
internal readonly record struct MoreRoom(double NominalMm, double GrowthMm)
{
    // What the order of adding up leaves of nothing, mm.
    private const double RoundingMm = 1e-9;

    /// <summary>True when it takes no more room, new or grown.</summary>
    public bool IsInside => NominalMm <= RoundingMm && NominalMm + GrowthMm <= RoundingMm;
}
