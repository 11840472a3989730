using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the brake check.</summary>
internal static class BrakeWords
{
    public const string Basis = "Smallest difference of radius between the two outlines, or the smallest rim the car's papers allow; the margin wanted is common practice, no source.";

    public static string Explain(AxleUnderCheck car, in Fitting candidate, in CheckResult result, UnitSystem units) => result switch
    {
        { Margin: { } margin } => Prose.Write(
            units,
            $"The outlines of caliper and wheel come within {margin.NominalMm:mm}, {margin.ProbableMm:mm} probably and {margin.WorstCaseMm:mm} at worst with both measured to {car.MeasuringErrorMm:mm}. {Judgement(result, car.MinimumMarginMm, units)}"),
        { Finding: Finding.OutlineTooShort, Value: { } gapMm } => Prose.Write(
            units, $"Where the outlines overlap they stay {gapMm:mm} apart, but the wheel's does not reach along the whole caliper."),
        { Finding: Finding.OutlineTooShort } => "The outlines of caliper and wheel share no station, so nothing can be compared.",
        { Finding: Finding.FromMinimumRim, Status: CheckStatus.Pass } => Prose.Write(
            units, $"The car's papers allow {result.Limit ?? 0:in} and larger; this rim is {candidate.Wheel.RimDiameterIn:in}. Its inner shape and the spokes are not known: try it by hand before driving."),
        { Finding: Finding.FromMinimumRim } => Prose.Write(
            units, $"The car's papers allow {result.Limit ?? 0:in} and larger; this rim is {candidate.Wheel.RimDiameterIn:in}: it does not clear the brakes."),
        _ => "Neither the outlines of caliper and wheel nor the smallest rim the car allows are given.",
    };

    private static string Judgement(in CheckResult result, double minimumMarginMm, UnitSystem units) => result.Status switch
    {
        CheckStatus.Fail => "It probably touches, which can lock the wheel or cut it.",
        CheckStatus.Caution => Prose.Write(units, $"The worst case is under the {minimumMarginMm:mm} wanted: turn the wheel by hand before driving."),
        _ => Prose.Write(units, $"At least the {minimumMarginMm:mm} wanted remains."),
    };
}
