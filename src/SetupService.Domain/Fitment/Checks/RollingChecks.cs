using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>What another rolling circumference does: to the other axle, and to the speedometer.</summary>
public static class RollingChecks
{
    /// <summary>Front-to-rear difference above which wheel-speed sensors may be misled, percent: common practice, no source.</summary>
    public const double SensorCautionPct = 1;

    /// <summary>Front-to-rear difference above which a car with both axles driven is strained, percent: common practice, no source.</summary>
    public const double BothDrivenFailPct = 2;

    /// <summary>UN Regulation 39, 5.3: a speedometer may show up to a tenth of the true speed and 4 km/h more, never less.</summary>
    public const double OverreadShare = 0.1;

    /// <summary>The constant part of the same rule, km/h.</summary>
    public const double OverreadKmh = 4;

    /// <summary>The highest true speed at which the rule is tested, km/h (from memory).</summary>
    public const double HighestTestKmh = 120;

    /// <summary>Differences closer than this are the same one worked out in another order, percent.</summary>
    private const double SameDifferencePct = 1e-9;

    /// <summary>Rolling circumference against the other axle's; percent of it.</summary>
    public static CheckResult AxleMatch(FitmentContext car, in Envelope candidate)
    {
        if (car.OtherCircumferenceMm is not { } otherMm) return CheckResult.Unknown(WithoutSize(car.OppositeTyre) ?? UnknownReason.ValueMissing);
        var differencePct = 100 * ((candidate.RollingCircumferenceMm / otherMm) - 1);
        var size = Math.Abs(differencePct);
        var bothDriven = car.Vehicle.DrivenAxle == DrivenAxle.Both;
        if (bothDriven && size > BothDrivenFailPct) return CheckResult.From(false, differencePct, BothDrivenFailPct);
        var result = CheckResult.From(true, differencePct, SensorCautionPct);
        if (size <= SensorCautionPct) return result;
        return size <= Math.Abs(car.PresentDifferencePct ?? 0) + SameDifferencePct
            ? result with { Reason = UnknownReason.NoWiderThanNow }
            : result with { Status = CheckStatus.Caution };
    }

    /// <summary>
    /// Change of overall diameter, percent, against what the speedometer rule leaves: nothing upwards if it reads
    /// exactly now. It fails where it would break the rule wherever in its permitted band it reads now.
    /// </summary>
    public static CheckResult Diameter(FitmentContext car, in Envelope candidate)
    {
        if (car.Axle.Tyre is not { Marking: { HasDimensions: true } present }) return CheckResult.Unknown(WithoutSize(car.Axle.Tyre) ?? UnknownReason.PresentFittingMissing);
        var changePct = 100 * ((candidate.OverallDiameterMm / present.Dimensions.OverallDiameterMm) - 1);
        var ratio = candidate.RollingCircumferenceMm / present.RollingCircumferenceMm;
        var result = CheckResult.From(ratio <= LargestRatio && ratio >= SmallestRatio, changePct, 0);
        return result.Status == CheckStatus.Pass && ratio > 1 ? result with { Status = CheckStatus.Caution } : result;
    }

    private static UnknownReason? WithoutSize(Tyres.Tyre? tyre) => tyre is null ? null : UnknownReason.TyreSizeUnknown;

    /// <summary>Ratio above which even a speedometer at the upper end of its permitted error would show less than the true speed.</summary>
    internal static double LargestRatio => HighestTestKmh * (1 + OverreadShare) / (HighestTestKmh - OverreadKmh);

    /// <summary>Ratio below which even a speedometer that is exact now would show more than the rule allows.</summary>
    internal static double SmallestRatio => HighestTestKmh / ((HighestTestKmh * (1 + OverreadShare)) + OverreadKmh);
}
