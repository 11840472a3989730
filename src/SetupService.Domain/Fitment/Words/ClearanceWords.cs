using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the clearance checks: the verdict first, then the amount, then the reason.</summary>
internal static class ClearanceWords
{
    public const string Basis =
        "Measured gap less the change of nominal envelope (design section width by a UN regulation's clause, as quoted; rim over flanges by JIS D 4218:2021), "
        + "camber and travel; in-service growth and production tolerance of UN R30 from memory; probable = root-sum-square, worst = sum.";

    public const string InsideBasis =
        "The nominal envelope, and what it may grow in service, against those of the wheel and tyre fitted now: what takes no more room fits where they fit.";

    public static string Explain(FitmentContext car, in Envelope candidate, CheckId place, in CheckResult result, UnitSystem units)
    {
        if (!ClearanceChecks.TryBudget(car, candidate, place, out var budget, out var missing))
        {
            return result.Reason == UnknownReason.InsidePresent ? Inside(place, result.MoreRoomMm ?? 0, units) : $"{Missing(car, place, missing, units)}{Wanted(car, candidate, place, result, units)}";
        }

        if (result.Reason == UnknownReason.InsidePresent)
        {
            return Prose.Write(units, $"{Inside(place, result.MoreRoomMm ?? 0, units)} By the gap of {budget.GapMm:gap} measured there {budget.Margin.WorstCaseMm:gap} would be left in the worst case, under the {car.MinimumMarginMm:gap} wanted: look whether it touches today.");
        }

        var margin = budget.Margin;
        var uses = Uses(budget, units, car.Settings.CamberChange is { ChangeDeg: not 0, At: not CamberChangePlace.StrutToKnuckle });
        return Prose.Write(
            units,
            $"{Judgement(result, margin, car.MinimumMarginMm, units)} Of the {budget.GapMm:gap} measured {Place(place)}, {uses}: {margin.NominalMm:gap} nominal, {margin.ProbableMm:gap} probable. Tolerances: growth in service {budget.GrowthMm:gap}, production of the present tyre {budget.ProductionMm:gap}, measuring {budget.MeasuringMm:gap}.");
    }

    private static string Inside(CheckId place, double moreMm, UnitSystem units) => moreMm > -0.05
        ? $"It fits as the wheel and tyre fitted now do: it takes as much room {Place(place)}."
        : Prose.Write(units, $"It fits as the wheel and tyre fitted now do: it takes {-moreMm:gap} less room {Place(place)}.");

    /// <summary>What a gap nobody measured would have to be.</summary>
    private static string Wanted(FitmentContext car, in Envelope candidate, CheckId place, in CheckResult result, UnitSystem units)
    {
        if (result is not { Reason: UnknownReason.GapMissing, MoreRoomMm: { } moreMm }) return "";
        var neededMm = moreMm + ClearanceChecks.TolerancesMm(car, candidate, place) + car.MinimumMarginMm;
        return moreMm > 0.05
            ? Prose.Write(units, $" The new wheel and tyre take {moreMm:gap} more room there than those fitted now: with a gap of {neededMm:gap} or more it passes.")
            : Prose.Write(units, $" The new wheel and tyre may grow into more room there than those fitted now: with a gap of {neededMm:gap} or more it passes.");
    }

    public static string Missing(FitmentContext car, CheckId place, UnknownReason missing, UnitSystem units)
    {
        var gap = Prose.Write(units, $"The gap {Place(place)}");
        var upMm = car.Travel.Upward?.TotalMm ?? 0;
        return missing switch
        {
            UnknownReason.GapMissing => $"{gap} was not measured.",
            UnknownReason.TyreSizeUnknown => $"{gap} was measured with a tyre whose size has no rule for its height, so there is nothing to compare the new one with.",
            UnknownReason.PresentFittingMissing => $"{gap} was measured with a wheel and tyre that are not both described, so there is nothing to compare the new ones with.",
            UnknownReason.MeasurementsContradict => Contradiction(car, place, units),
            UnknownReason.BumpTravelMissing => $"{gap} was measured at ride height and the bump travel is not given, so what travel takes of it is not known.",
            UnknownReason.CamberCurveMissing => Prose.Write(units, $"{gap} was measured at ride height, and neither a measured camber curve nor the points of the suspension say how the wheel moves over {upMm:gap} of upward travel."),
            UnknownReason.PointsContradict => Prose.Write(units, $"{gap} was measured at ride height, and the points of the suspension contradict each other (look at {car.Travel.Path?.ContradictingPoint ?? ""} first), so how the wheel moves over {upMm:gap} of upward travel is not known."),
            UnknownReason.PointsDoNotHold => Prose.Write(units, $"{gap} was measured at ride height, and the points of the suspension leave the wheel a free movement there, so how it moves over {upMm:gap} of upward travel is not known."),
            UnknownReason.TravelNotReached => Prose.Write(units, $"{gap} was measured at ride height, and the points of the suspension meet only up to {car.Travel.Path?.ReachedMm ?? 0:gap} of the upward travel of {upMm:gap}, so how the wheel moves there is not known."),
            _ when place is CheckId.OutboardClearance or CheckId.SpringSeatClearance => Prose.Write(
                units, $"How much of the gap {Place(place)} a camber change of {car.Settings.CamberChange?.ChangeDeg ?? 0:deg} uses depends on the height of its pivot, which is not given."),
            _ => Prose.Write(
                units, $"How much of the gap {Place(place)} a camber change of {car.Settings.CamberChange?.ChangeDeg ?? 0:deg} uses depends on the heights of its pivot and of the narrowest place, which are not both given."),
        };
    }

    /// <summary>The two measurements that cannot both be right, in words.</summary>
    private static string Contradiction(FitmentContext car, CheckId place, UnitSystem units)
    {
        var gapMm = ClearanceChecks.Gap(car.Axle.Clearance, place) ?? 0;
        var travelMm = ClearanceChecks.Travel(car, car.PresentEnvelope, place) ?? 0;
        return travelMm > 0
            ? Prose.Write(units, $"The measurements contradict each other: {gapMm:gap} {Place(place)} at ride height, and upward travel of {car.Travel.Upward?.TotalMm ?? 0:gap} that uses {travelMm:gap} of it, so the wheel fitted now would touch. Measure both again.")
            : Prose.Write(units, $"The measurements contradict each other: {gapMm:gap} {Place(place)}, and that it was measured with all travel allowed for, so the wheel fitted now would touch. Measure the gap again.");
    }

    private static string Uses(in ClearanceBudget budget, UnitSystem units, bool changesCamber)
    {
        var text = budget.CandidateMm < 0
            ? Prose.Write(units, $"the new wheel and tyre give back {-budget.CandidateMm:gap}")
            : Prose.Write(units, $"the new wheel and tyre use {budget.CandidateMm:gap}");
        if (budget.CamberMm != 0)
        {
            text = budget.CamberMm < 0
                ? Prose.Write(units, $"{text}, the camber change gives back {-budget.CamberMm:gap}")
                : Prose.Write(units, $"{text}, the camber change uses {budget.CamberMm:gap}");
        }
        else if (changesCamber)
        {
            text = $"{text}, the camber change uses nothing because the strut goes with the wheel";
        }

        return budget.TravelMm == 0 ? text : Prose.Write(units, $"{text}, suspension travel uses {budget.TravelMm:gap}");
    }

    private static string Judgement(in CheckResult result, in Margin margin, double minimumMarginMm, UnitSystem units) => result.Status switch
    {
        CheckStatus.Fail when margin.ProbableMm > -0.05 => "It probably just touches.",
        CheckStatus.Fail => "It probably touches.",
        CheckStatus.Caution => Prose.Write(units, $"It is tight: {margin.WorstCaseMm:gap} in the worst case, {Under(result, minimumMarginMm)} the {minimumMarginMm:gap} wanted. Try it by hand through full travel and lock before driving."),
        _ => Prose.Write(units, $"It fits: {margin.WorstCaseMm:gap} in the worst case, at least the {minimumMarginMm:gap} wanted."),
    };

    /// <summary>Where a gap was measured, behind "the gap".</summary>
    public static string Place(CheckId place) => place switch
    {
        CheckId.InboardClearance => "inboard",
        CheckId.OutboardClearance => "to the arch lip",
        CheckId.RadialClearance => "over the tread",
        CheckId.FullLockClearance => "inboard at full lock",
        _ => "to the spring seat",
    };

    /// <summary>Puts a shortfall in words where rounding to 0.1 mm would hide it.</summary>
    private static string Under(in CheckResult result, double minimumMarginMm) =>
        minimumMarginMm - result.Value < 0.1 ? "just under" : "under";
}
