using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the brake check.</summary>
internal static class BrakeWords
{
    public const string Basis = "Least distance between the two outlines as sections of revolution, or the smallest rim the car's papers allow; pad wear, caliper play and the margin wanted are common practice, no source.";

    public static string Explain(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units) => result switch
    {
        { Margin: { } margin } => Prose.Write(
            units,
            $"{Judgement(result, margin, car.MinimumMarginMm, units)} Caliper and wheel are {margin.NominalMm:gap} apart as measured, {margin.ProbableMm:gap} probable; each outline is known to {car.MeasuringErrorMm:gap}, and the caliper moves up to {BrakeCheck.PadWearMm:gap} inboard as its pads wear and {BrakeCheck.FloatMm:gap} either way on its pins."),
        { Reason: UnknownReason.OutlineTooShort, Value: { } gapMm, Limit: { } reachMm } => reachMm < 0
            ? Prose.Write(units, $"The outline of the wheel stops {-reachMm:gap} short of the caliper's end, so part of the caliper has nothing to be compared with. Where both are known they are {gapMm:gap} apart.")
            : Prose.Write(units, $"The outline of the wheel reaches only {reachMm:gap} past the caliper, less than the {car.MinimumMarginMm:gap} wanted: a spoke may stand right behind it. Where both are known they are {gapMm:gap} apart."),
        { Reason: UnknownReason.FromMinimumRim, Status: CheckStatus.Pass } => Prose.Write(
            units, $"The car's papers allow {result.Limit ?? 0:in} and larger; this rim is {candidate.Wheel.RimDiameterIn:in}. Its inner shape and the spokes are not known: try it by hand before driving."),
        { Reason: UnknownReason.FromMinimumRim } => Prose.Write(
            units, $"It does not clear the brakes: the car's papers allow {result.Limit ?? 0:in} and larger, and this rim is {candidate.Wheel.RimDiameterIn:in}."),
        _ => "Neither the outlines of caliper and wheel nor the smallest rim the car allows are given.",
    };

    private static string Judgement(in CheckResult result, in Margin margin, double minimumMarginMm, UnitSystem units) => result switch
    {
        { Status: CheckStatus.Fail } => "The wheel probably touches the brake, which can lock it or cut it.",
        { Reason: UnknownReason.OutlineEndsNear } => Prose.Write(units, $"It fits where both outlines are known, {margin.WorstCaseMm:gap} in the worst case, but the wheel's outline ends close to the caliper: turn the wheel by hand before driving."),
        { Status: CheckStatus.Caution } => Prose.Write(units, $"It is tight: {margin.WorstCaseMm:gap} in the worst case, under the {minimumMarginMm:gap} wanted. Turn the wheel by hand before driving."),
        _ => Prose.Write(units, $"It fits: {margin.WorstCaseMm:gap} in the worst case, at least the {minimumMarginMm:gap} wanted."),
    };
}
