using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the checks of room.</summary>
internal static class ClearanceWords
{
    public const string Basis =
        "Measured gap less the change of nominal envelope (design section width by a UN regulation's clause, as quoted; rim over flanges by JIS D 4218:2021), "
        + "camber and travel; in-service growth and production tolerance of UN R30 from memory; probable = root-sum-square, worst = sum.";

    public static string Explain(AxleUnderCheck car, in Envelope candidate, CheckId place, in CheckResult result, UnitSystem units)
    {
        if (!ClearanceChecks.TryBudget(car, candidate, place, out var budget, out var missing)) return Missing(car, place, missing, units);
        var margin = budget.Margin;
        var tolerance = Prose.Write(
            units,
            $"growth in service {budget.GrowthMm:mm}, the present tyre's production tolerance {budget.ProductionMm:mm}, measuring {budget.MeasuringMm:mm}");
        return Prose.Write(
            units,
            $"Of the {budget.GapMm:mm} measured {Place(place)}, {Taken(budget, units, car.Settings.CamberChange is { ChangeDeg: not 0, At: not CamberChangePlace.StrutToKnuckle })}: {margin.NominalMm:mm} nominal. Tolerances ({tolerance}) leave {margin.ProbableMm:mm} probably and {margin.WorstCaseMm:mm} at worst. {Judgement(result, car.MinimumMarginMm, units)}");
    }

    private static string Taken(in ClearanceBudget budget, UnitSystem units, bool changes)
    {
        var candidate = budget.CandidateMm < 0
            ? Prose.Write(units, $"the candidate gives back {-budget.CandidateMm:mm}")
            : Prose.Write(units, $"the candidate takes {budget.CandidateMm:mm}");
        if (budget.CamberMm != 0)
        {
            candidate = budget.CamberMm < 0
                ? Prose.Write(units, $"{candidate}, the camber change gives back {-budget.CamberMm:mm}")
                : Prose.Write(units, $"{candidate}, the camber change takes {budget.CamberMm:mm}");
        }

        else if (changes)
        {
            candidate = Prose.Write(units, $"{candidate}, the camber change takes nothing because the strut goes with the wheel");
        }

        return budget.TravelMm == 0 ? candidate : Prose.Write(units, $"{candidate}, suspension travel takes {budget.TravelMm:mm}");
    }

    private static string Judgement(in CheckResult result, double minimumMarginMm, UnitSystem units) => result.Status switch
    {
        CheckStatus.Fail when result.Margin is { ProbableMm: > -0.05 } => "It probably just touches.",
        CheckStatus.Fail => "It probably touches.",
        CheckStatus.Caution => Prose.Write(units, $"The worst case is {Under(result, minimumMarginMm)} the {minimumMarginMm:mm} wanted: try it by hand through full travel and lock before driving."),
        _ => Prose.Write(units, $"At least the {minimumMarginMm:mm} wanted remains."),
    };

    public static string Missing(AxleUnderCheck car, CheckId place, Finding missing, UnitSystem units) => missing switch
    {
        Finding.GapMissing => Prose.Write(units, $"The gap {Place(place)} was not measured, so what is left of it cannot be told."),
        Finding.PresentFittingMissing => Prose.Write(units, $"The gap {Place(place)} was measured with a wheel and tyre that are not both described, so the candidate cannot be compared with them."),
        Finding.BumpTravelMissing => Prose.Write(units, $"The gap {Place(place)} was measured at ride height and the bump travel is not given, so what travel takes of it is not known."),
        Finding.CamberCurveMissing => Prose.Write(units, $"The gap {Place(place)} was measured at ride height and neither a measured camber curve nor the points of the suspension tell how far the wheel leans up to the bump travel of {car.Axle.BumpTravelMm ?? 0:mm}."),
        Finding.PointsContradict => Prose.Write(units, $"The gap {Place(place)} was measured at ride height and the points of the suspension contradict each other (look at {car.Travel.Corner?.ContradictingPoint ?? ""} first), so how far the wheel leans up to the bump travel of {car.Axle.BumpTravelMm ?? 0:mm} is not known."),
        Finding.PointsDoNotHold => Prose.Write(units, $"The gap {Place(place)} was measured at ride height and the points of the suspension leave the wheel a free movement there, so how far it leans up to the bump travel of {car.Axle.BumpTravelMm ?? 0:mm} is not known."),
        Finding.TravelNotReached => Prose.Write(units, $"The gap {Place(place)} was measured at ride height and the points of the suspension meet only up to {car.Travel.Corner?.ReachedMm ?? 0:mm} of the bump travel of {car.Axle.BumpTravelMm ?? 0:mm}, so how far the wheel leans there is not known."),
        _ when place is CheckId.OutboardClearance or CheckId.SpringSeatClearance => Prose.Write(
            units, $"How much a camber change of {car.Settings.CamberChange?.ChangeDeg ?? 0:deg} takes of the gap {Place(place)} depends on the height of its pivot, which is not given."),
        _ => Prose.Write(
            units, $"How much a camber change of {car.Settings.CamberChange?.ChangeDeg ?? 0:deg} takes of the gap {Place(place)} depends on the heights of its pivot and of the narrowest place, which are not both given."),
    };

    private static string Place(CheckId place) => place switch
    {
        CheckId.InboardClearance => "inboard",
        CheckId.OutboardClearance => "to the arch lip",
        CheckId.RadialClearance => "over the tread",
        CheckId.FullLockClearance => "inboard at full lock",
        _ => "to the spring seat",
    };

    /// <summary>A shortfall that rounding to tenths of a millimetre would hide is said in words.</summary>
    private static string Under(in CheckResult result, double minimumMarginMm) =>
        minimumMarginMm - result.Value < 0.1 ? "just under" : "under";
}
