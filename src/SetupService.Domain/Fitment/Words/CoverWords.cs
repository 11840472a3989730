using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the arch cover check.</summary>
internal static class CoverWords
{
    public static string Basis(UnitSystem units) => Prose.Write(
        units, $"Nominal room at the arch lip; the furthest any rule that was read lets a wheel stand out is {CoverCheck.WidestAllowedPokeMm:gap} (Dutch Regeling voertuigen 5.2.48). Local law decides.");

    public static string Explain(FitmentContext car, in CheckResult result, UnitSystem units)
    {
        if (result.Reason == UnknownReason.InsidePresent)
        {
            return "The outer edge stands no further out than that of the wheel and tyre fitted now, so the arch covers it as it covers them; local law decides.";
        }

        if (result.Value is not { } insideMm)
        {
            return result.Reason is UnknownReason.GapMissing or UnknownReason.PresentFittingMissing
                ? "Without the gap to the arch lip and the wheel and tyre it was measured with, whether the arch covers them is not known."
                : Prose.Write(units, $"Whether the arch covers the candidate is read off the room at its lip. {ClearanceWords.Missing(car, CheckId.OutboardClearance, result.Reason, units)}");
        }

        return result.Status switch
        {
            CheckStatus.Pass => Prose.Write(
                units, $"The outer edge stays {insideMm:room} inside the lip where the gap was measured. Rules ask for cover before and behind that place too; local law decides."),
            CheckStatus.Caution when insideMm > -0.05 =>
                "The outer edge stands just outside the lip. Many countries do not allow that, some with wider covers; local law decides.",
            CheckStatus.Caution => Prose.Write(
                units, $"The outer edge stands {-insideMm:room} outside the lip. Many countries do not allow that, some with wider covers; local law decides."),
            _ => Prose.Write(
                units, $"The outer edge stands {-insideMm:room} outside the lip, more than the {CoverCheck.WidestAllowedPokeMm:gap} of the widest rule that was read."),
        };
    }
}
