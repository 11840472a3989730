namespace SetupService.Domain.Fitment.Checks;

/// <summary>The checks of the tyre on the rim: equal diameters, and a rim width the tyre permits.</summary>
public static class RimChecks
{
    /// <summary>How far outside a pattern (not a listed row) a rim may be before it fails, inches.</summary>
    private const double PatternDoubtIn = 0.5;

    /// <summary>Tyre and rim of one diameter code; anything else fails.</summary>
    public static CheckResult Diameter(in Fitting candidate) => CheckResult.From(
        candidate.Tyre.Marking.FitsRimDiameter(candidate.Wheel.RimDiameterIn),
        candidate.Wheel.RimDiameterIn,
        candidate.Tyre.Marking.RimDiameterIn);

    /// <summary>
    /// The rim width against what the tyre permits. Listed rows are held to; outside a pattern a rim within half
    /// an inch is a caution, because tables list such rims for some sizes. Unknown where the tyre's size has no rule for its dimensions.
    /// </summary>
    public static CheckResult Width(in Fitting candidate)
    {
        if (!candidate.Tyre.Marking.HasDimensions) return CheckResult.Unknown(UnknownReason.TyreSizeUnknown) with { Value = candidate.Wheel.RimWidthIn };
        var permitted = candidate.Tyre.Marking.PermittedRimWidth;
        var widthIn = candidate.Wheel.RimWidthIn;
        var nearestIn = Math.Clamp(widthIn, permitted.MinimumIn, permitted.MaximumIn);
        var result = CheckResult.From(widthIn == nearestIn, widthIn, widthIn == nearestIn ? null : nearestIn);
        var inDoubt = widthIn != nearestIn && !permitted.IsListed && Math.Abs(widthIn - nearestIn) <= PatternDoubtIn;
        return inDoubt ? result with { Status = Answers.CheckStatus.Caution, Reason = UnknownReason.JustOutsidePattern } : result;
    }
}
