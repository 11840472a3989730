using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the rolling checks.</summary>
internal static class RollingWords
{
    public const string MatchBasis = "Rolling circumference 3.05 D (radial), 2.99 D (diagonal), ETRTO as a textbook quotes it; the limits are common practice, no source.";

    public static string DiameterBasis(UnitSystem units) =>
        $"UN Regulation 39, 5.3: shown less true from 0 to a tenth of the true speed and {(units == UnitSystem.Us ? "2.5 mph" : "4 km/h")}, as three texts quote it.";

    public static string Match(FitmentContext car, in Envelope candidate, in CheckResult result, UnitSystem units)
    {
        if (car.OtherCircumferenceMm is not { } otherMm || result.Value is not { } differencePct)
        {
            return "The other axle's tyre is not described, so the two cannot be compared.";
        }

        var comparison = Prose.Write(
            units, $"in one turn the new tyre rolls {candidate.RollingCircumferenceMm:gap} and the one on the other axle {otherMm:gap}, {Math.Abs(differencePct):pct} apart");
        return (result.Status, result.Reason) switch
        {
            (CheckStatus.Fail, _) => Prose.Write(units, $"Front and rear do not match: {comparison}. With both axles driven, more than {RollingChecks.BothDrivenFailPct:pct} strains the drive between them."),
            (CheckStatus.Caution, _) => Prose.Write(units, $"Front and rear differ: {comparison}. More than {RollingChecks.SensorCautionPct:pct} can mislead the wheel-speed sensors, and with them the anti-lock brakes."),
            (_, UnknownReason.NoWiderThanNow) => Prose.Write(units, $"Front and rear match as well as now: {comparison}, and the car has {Math.Abs(car.PresentDifferencePct ?? 0):pct} today."),
            _ => Prose.Write(units, $"Front and rear match: {comparison}, within {RollingChecks.SensorCautionPct:pct}."),
        };
    }

    public static string Diameter(FitmentContext car, in Envelope candidate, in CheckResult result, UnitSystem units)
    {
        if (car.Axle.Tyre is not { Marking: var present } || result.Value is not { } changePct) return "The tyre fitted now is not described, so there is nothing to compare with.";
        var trueKmh = Comparison.DefaultIndicatedKmh * candidate.RollingCircumferenceMm / present.RollingCircumferenceMm;
        var allowedKmh = (RollingChecks.OverreadShare * trueKmh) + RollingChecks.OverreadKmh;
        var change = Prose.Write(
            units,
            $"The overall diameter goes from {present.Dimensions.OverallDiameterMm:gap} to {candidate.OverallDiameterMm:gap}, {changePct:pct}. If the speedometer reads exactly now, {Comparison.DefaultIndicatedKmh:kmh} shown is then {trueKmh:kmh} true.");
        return result.Status switch
        {
            CheckStatus.Fail when changePct > 0 => Prose.Write(units, $"The speedometer would show too little wherever in its permitted band it reads now. {change}"),
            CheckStatus.Fail => Prose.Write(units, $"The speedometer would show more than the {allowedKmh:kmh} too much that the rule allows. {change}"),
            CheckStatus.Caution => Prose.Write(units, $"Measure the speedometer: it may never show less than true, so it must show at least {trueKmh - Comparison.DefaultIndicatedKmh:kmh} too much now. {change}"),
            _ => Prose.Write(units, $"The speedometer stays within the rule, which allows up to {allowedKmh:kmh} too much. {change}"),
        };
    }
}
