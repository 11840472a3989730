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
            : Prose.Write(units, $"It must not be mounted: the tyre is made for {tyreIn:in} and the rim is {rimIn:in}.");
    }

    public static string WidthBasis(in Fitting candidate) => candidate.Tyre.Marking is { HasDimensions: true } marking ? marking.PermittedRimWidth.Source : SizeWords.Basis;

    public static string Width(in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var permitted = candidate.Tyre.Marking.PermittedRimWidth;
        var widthIn = candidate.Wheel.RimWidthIn;
        var range = Prose.Write(units, $"{candidate.Tyre.Marking.StandardText} goes on rims from {permitted.MinimumIn:in} to {permitted.MaximumIn:in}");
        return result.Status switch
        {
            CheckStatus.Pass => Prose.Write(units, $"The rim suits the tyre: {range}, and this one is {widthIn:in}."),
            CheckStatus.Caution => Prose.Write(units, $"Ask the tyre's maker for the permitted rims: {range} by a pattern that some sizes exceed by half an inch, and this one is {widthIn:in}."),
            _ => Prose.Write(units, $"The rim is outside what the tyre permits: {range}, and this one is {widthIn:in}. The tyre's maker has the last word."),
        };
    }
}
