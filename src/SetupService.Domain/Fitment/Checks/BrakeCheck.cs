using SetupService.Domain.Answers;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// Room between the brake caliper and the inside of the wheel, spokes and faces included: from both outlines where they are known, else
/// from the smallest rim the car's papers allow. docs/methods/fitment-check.md derives it.
/// </summary>
public static class BrakeCheck
{
    /// <summary>
    /// How far a floating caliper follows its pads inboard until they are worn, mm: the lining of a car's new pad less what is
    /// left when it must go. Common practice, no source.
    /// </summary>
    public const double PadWearMm = 10;

    /// <summary>Play of a floating caliper on its pins along the wheel's axis, to either side, mm. Common practice, no source.</summary>
    public const double FloatMm = 0.5;

    /// <summary>Outlines of at most so many points are laid on the stack, longer ones on the heap.</summary>
    private const int StackPoints = 128;

    /// <summary>Judges the room over the caliper; mm by outlines, inches by the smallest rim.</summary>
    public static CheckResult Evaluate(FitmentContext car, in Fitting candidate)
    {
        ArgumentNullException.ThrowIfNull(car);
        var profile = candidate.Wheel.InnerProfile;
        if (car.Caliper.Length > 0 && profile.Count > 0)
        {
            var inside = profile.Count <= StackPoints ? stackalloc ProfilePoint[profile.Count] : new ProfilePoint[profile.Count];
            for (var i = 0; i < inside.Length; i++)
            {
                // The wheel's stations start at its mounting face, which the spacer moves outboard.
                var point = profile[i];
                inside[i] = new(point.StationMm + candidate.Wheel.SpacerMm, point.RadiusMm);
            }

            return ByOutlines(car, candidate.Wheel, inside);
        }

        return car.Axle.Hub.MinimumRimDiameterIn is { } smallestIn
            ? CheckResult.From(candidate.Wheel.RimDiameterIn >= smallestIn, candidate.Wheel.RimDiameterIn, smallestIn) with { Reason = UnknownReason.FromMinimumRim }
            : CheckResult.Unknown(UnknownReason.ValueMissing);
    }

    private static CheckResult ByOutlines(FitmentContext car, Wheel wheel, ReadOnlySpan<ProfilePoint> inside)
    {
        var (nominalMm, movedMm) = new OutlineDistance(car.Caliper, inside, PadWearMm + FloatMm, FloatMm).Least();
        var budget = new ClearanceBudget
        {
            GapMm = nominalMm,
            CandidateMm = 0,
            AllowanceMm = nominalMm - movedMm,

            // Two outlines were measured, each with its error.
            ProductionMm = car.MeasuringErrorMm,
            MeasuringMm = car.MeasuringErrorMm,
        };
        var result = CheckResult.Room(budget.Margin, car.MinimumMarginMm);
        if (result.Status == CheckStatus.Fail && (nominalMm < 0 || SharesStation(car.Caliper, inside))) return result;

        var reachMm = ReachMm(car.Caliper, inside, wheel);
        if (!(reachMm >= car.MinimumMarginMm)) return CheckResult.Unknown(UnknownReason.OutlineTooShort) with { Value = nominalMm, Limit = reachMm };

        // What the outline does not show begins at its end: less than the margin and the errors away, it may be nearer than what is shown.
        var isNear = result.Status == CheckStatus.Pass && reachMm < car.MinimumMarginMm + budget.SumMm;
        return isNear ? result with { Status = CheckStatus.Caution, Reason = UnknownReason.OutlineEndsNear } : result;
    }

    private static bool SharesStation(ReadOnlySpan<ProfilePoint> caliper, ReadOnlySpan<ProfilePoint> inside) =>
        inside[0].StationMm <= caliper[^1].StationMm && caliper[0].StationMm <= inside[^1].StationMm;

    /// <summary>
    /// How far the wheel's outline reaches past the caliper, mm, at the end where it reaches least; negative = it stops short of it. Inboard no more is asked
    /// for than the rim itself has.
    /// </summary>
    private static double ReachMm(ReadOnlySpan<ProfilePoint> caliper, ReadOnlySpan<ProfilePoint> inside, Wheel wheel)
    {
        var outboardMm = inside[^1].StationMm - caliper[^1].StationMm;
        var isWholeInboard = inside[0].StationMm <= wheel.SpacerMm - wheel.BackspacingMm;
        return isWholeInboard ? outboardMm : Math.Min(outboardMm, caliper[0].StationMm - inside[0].StationMm);
    }
}
