using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// The checks of room around the wheel. Each place takes the candidate's change of envelope along its own
/// direction from the gap that was measured there; docs/methods/fitment-clearance.md derives the terms.
/// </summary>
public static class ClearanceChecks
{
    /// <summary>Judges the room at a place.</summary>
    public static CheckResult Evaluate(AxleUnderCheck car, in Envelope candidate, CheckId place) =>
        TryBudget(car, candidate, place, out var budget, out var missing)
            ? CheckResult.Room(budget.Margin, car.MinimumMarginMm)
            : CheckResult.Unknown(missing);

    /// <summary>
    /// The terms that make up the room at a place; false with the reason where one of them is not known.
    /// </summary>
    public static bool TryBudget(
        AxleUnderCheck car, in Envelope candidate, CheckId place, out ClearanceBudget budget, out Finding missing)
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

        if (Travel(car, candidate, place) is not { } travelMm)
        {
            missing = car.Travel.Missing;
            return false;
        }

        var directionMm = 0.0;
        if (!CamberTakes(car, candidate, place, out var camberMm, ref directionMm))
        {
            missing = Finding.PivotHeightMissing;
            return false;
        }

        missing = Finding.Computed;
        budget = Budget(car, candidate, place, directionMm) with { GapMm = gapMm, CamberMm = camberMm, TravelMm = travelMm };
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

    private static ClearanceBudget Budget(AxleUnderCheck car, in Envelope candidate, CheckId place, double directionMm)
    {
        ref readonly var present = ref car.PresentEnvelope;
        var inboardMm = present.InboardMm - candidate.InboardMm;
        var radialMm = candidate.RadiusMm - present.RadiusMm;
        var measuringMm = car.MeasuringErrorMm;
        return place switch
        {
            CheckId.InboardClearance => new()
            {
                GapMm = 0,
                CandidateMm = inboardMm,
                GrowthMm = candidate.WidthGrowthMm,
                ProductionMm = present.WidthShortfallMm,
                MeasuringMm = measuringMm,
            },
            CheckId.OutboardClearance => new()
            {
                GapMm = 0,
                CandidateMm = candidate.OutboardMm - present.OutboardMm,
                GrowthMm = candidate.WidthGrowthMm,
                ProductionMm = present.WidthShortfallMm,
                MeasuringMm = measuringMm,
            },
            CheckId.RadialClearance => new()
            {
                GapMm = 0,
                CandidateMm = radialMm,
                GrowthMm = candidate.RadiusGrowthMm,
                ProductionMm = present.RadiusShortfallMm,
                MeasuringMm = measuringMm,
            },

            // At lock the nearest part may stand inboard, or before or behind the tread: a greater radius may count in full.
            CheckId.FullLockClearance => new()
            {
                GapMm = 0,
                CandidateMm = inboardMm,
                GrowthMm = Hypotenuse(candidate.WidthGrowthMm, candidate.RadiusGrowthMm),
                ProductionMm = Hypotenuse(present.WidthShortfallMm, present.RadiusShortfallMm),
                MeasuringMm = measuringMm,
                DirectionMm = directionMm + Math.Max(0, radialMm),
            },

            // The seat stands over the tyre's inner shoulder: upward counts, and going further inboard may count in full.
            _ => new()
            {
                GapMm = 0,
                CandidateMm = radialMm,
                GrowthMm = Hypotenuse(candidate.WidthGrowthMm, candidate.RadiusGrowthMm),
                ProductionMm = Hypotenuse(present.WidthShortfallMm, present.RadiusShortfallMm),
                MeasuringMm = measuringMm,
                DirectionMm = directionMm + Math.Max(0, inboardMm),
            },
        };
    }

    private static double? Travel(AxleUnderCheck car, in Envelope candidate, CheckId place) => place switch
    {
        CheckId.RadialClearance => car.Travel.RadialMm,
        CheckId.OutboardClearance => car.Travel.OutboardPerRadius * candidate.RadiusMm,

        // The spring seat travels with the wheel.
        CheckId.SpringSeatClearance => 0,
        _ => car.Travel.InboardPerRadius * candidate.RadiusMm,
    };

    /// <summary>
    /// What a change of camber takes at a place. A point at height z above the pivot moves inboard by
    /// (z − pivot) · tan(−change).
    /// </summary>
    private static bool CamberTakes(AxleUnderCheck car, in Envelope candidate, CheckId place, out double takesMm, ref double directionMm)
    {
        takesMm = 0;
        if (car.Settings.CamberChange is not { ChangeDeg: not 0 } change) return true;

        var strut = car.Axle.Layout is SuspensionLayout.MacPhersonStrut;
        var turnsAgainstStrut = change.At == CamberChangePlace.StrutToKnuckle || (change.At == CamberChangePlace.LowerJoint && !strut);
        switch (place)
        {
            case CheckId.InboardClearance:
            case CheckId.FullLockClearance:
                if (turnsAgainstStrut)
                {
                    if (change.NarrowestAbovePivotMm is not { } heightMm) return false;
                    takesMm = heightMm * change.InboardPerMm;
                }
                else if (place == CheckId.FullLockClearance)
                {
                    // The strut goes with the wheel, but at lock the nearest part may stand on the body.
                    directionMm = Math.Abs(change.InboardPerMm) * LockLever(candidate, change);
                }

                return true;
            case CheckId.OutboardClearance:
                if (OutboardPivot(candidate, change) is not { } pivotMm) return false;
                takesMm = -change.InboardPerMm * (candidate.RadiusMm + candidate.WidestRadiusMm - pivotMm);
                return true;
            case CheckId.RadialClearance:
                takesMm = candidate.HalfWidthMm * change.ShoulderRisePerMm;
                return true;
            default:
                if (!turnsAgainstStrut) return true;
                if (change.PivotHeightMm is not { } seatPivotMm) return false;
                takesMm = candidate.HalfWidthMm * change.ShoulderRisePerMm;
                directionMm = Math.Max(0, change.InboardPerMm * (candidate.OverallDiameterMm - seatPivotMm));
                return true;
        }
    }

    /// <summary>Lever of a part at wheel-centre height; half a radius where the pivot's height is not known.</summary>
    private static double LockLever(in Envelope candidate, CamberChange change) =>
        change.PivotHeightMm is { } pivotMm ? Math.Abs(candidate.RadiusMm - pivotMm) : candidate.RadiusMm / 2;

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

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
