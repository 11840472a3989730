using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the rolling checks.</summary>
internal static class RollingWords
{
    public const string MatchBasis = "Rolling circumference 3.05 D (radial), 2.99 D (diagonal), ETRTO as a textbook quotes it; the limits are common practice, no source.";

    public const string DiameterBasis = "UN Regulation 39, 5.3: shown less true from 0 to a tenth of the true speed and 4 km/h, as three texts quote it.";

    public static string Match(AxleUnderCheck car, in Envelope candidate, in CheckResult result, UnitSystem units)
    {
        if (car.OtherCircumferenceMm is not { } otherMm || result.Value is not { } differencePct)
        {
            return "The other axle's tyre is not described, so the two cannot be compared.";
        }

        var comparison = Prose.Write(
            units, $"In one turn the candidate rolls {candidate.RollingCircumferenceMm:mm} and the tyre now on the other axle {otherMm:mm}, {Math.Abs(differencePct):pct} apart");
        return (result.Status, result.Finding) switch
        {
            (CheckStatus.Fail, _) => Prose.Write(units, $"{comparison}. With both axles driven more than {RollingChecks.BothDrivenFailPct:pct} strains the drive between them."),
            (CheckStatus.Caution, _) => Prose.Write(units, $"{comparison}. More than {RollingChecks.SensorCautionPct:pct} can mislead wheel-speed sensors and what relies on them, anti-lock brakes among it."),
            (_, Finding.NoWiderThanNow) => Prose.Write(units, $"{comparison}, no more than the {Math.Abs(car.PresentDifferencePct ?? 0):pct} the car has now."),
            _ => Prose.Write(units, $"{comparison}, within {RollingChecks.SensorCautionPct:pct}."),
        };
    }

    public static string Diameter(AxleUnderCheck car, in Envelope candidate, in CheckResult result, UnitSystem units)
    {
        if (car.Axle.Tyre is not { Marking: var present } || result.Value is not { } changePct) return "The tyre fitted now is not described, so there is nothing to compare with.";
        var trueKmh = Comparison.DefaultIndicatedKmh * candidate.RollingCircumferenceMm / present.RollingCircumferenceMm;
        var allowedKmh = (RollingChecks.OverreadShare * trueKmh) + RollingChecks.OverreadKmh;
        var change = Prose.Write(
            units,
            $"The overall diameter goes from {present.Dimensions.OverallDiameterMm:mm} to {candidate.OverallDiameterMm:mm}, {changePct:pct}. If the speedometer reads exactly now, {Comparison.DefaultIndicatedKmh:kmh} shown is then {trueKmh:kmh} true");
        return result.Status switch
        {
            CheckStatus.Fail when changePct > 0 => Prose.Write(units, $"{change}: it would show too little wherever in its permitted band it reads now."),
            CheckStatus.Fail => Prose.Write(units, $"{change}: it would show more than the {allowedKmh:kmh} too much that the rule allows."),
            CheckStatus.Caution => Prose.Write(units, $"{change}, and it may never show less than true: it passes only if it shows at least {trueKmh - Comparison.DefaultIndicatedKmh:kmh} too much now, so measure it."),
            _ => Prose.Write(units, $"{change}; it may show up to {allowedKmh:kmh} too much."),
        };
    }
}
