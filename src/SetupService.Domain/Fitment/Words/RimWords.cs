using SetupService.Domain.Answers;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the rim checks.</summary>
internal static class RimWords
{
    public const string DiameterBasis = "Rim diameter code of the marking against the wheel's.";

    public static string Diameter(in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var tyreIn = candidate.Tyre.Marking.RimDiameterIn;
        var rimIn = candidate.Wheel.RimDiameterIn;
        return result.Status == CheckStatus.Pass
            ? Prose.Write(units, $"Tyre and rim are both {rimIn:in}.")
            : Prose.Write(units, $"The tyre is made for {tyreIn:in} and the rim is {rimIn:in}: it must not be mounted.");
    }

    public static string WidthBasis(in Fitting candidate) => candidate.Tyre.Marking.PermittedRimWidth.Source;

    public static string Width(in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var permitted = candidate.Tyre.Marking.PermittedRimWidth;
        var widthIn = candidate.Wheel.RimWidthIn;
        var range = Prose.Write(units, $"{candidate.Tyre.Marking.StandardText} is taken on rims from {permitted.MinimumIn:in} to {permitted.MaximumIn:in}");
        return result.Status switch
        {
            CheckStatus.Pass => Prose.Write(units, $"{range}; this one is {widthIn:in}."),
            CheckStatus.Caution => Prose.Write(units, $"{range}, by a pattern that some sizes exceed by half an inch; this one is {widthIn:in}. Ask the tyre's maker for the permitted rims."),
            _ => Prose.Write(units, $"{range}; this one, {widthIn:in}, is outside. The tyre's maker has the last word."),
        };
    }
}
