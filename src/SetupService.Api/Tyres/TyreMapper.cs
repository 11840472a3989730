using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>Maps a tyre document to the domain's tyre.</summary>
internal static class TyreMapper
{
    private static readonly ParseCache<TyreMarking> Markings = new(TyreMarkingReader.Read);

    /// <summary>The tyre; refused where its marking cannot be read.</summary>
    /// <param name="document">The tyre as sent.</param>
    /// <param name="needsDimensions">True for a call that cannot do without the tyre's dimensions: sizes whose height no rule gives are refused there.</param>
    public static MapResult<Tyre> Map(TyreDocument? document, bool needsDimensions = false)
    {
        if (document?.Marking is not { } text)
            return Refusal.Missing();
        if (!Markings.Map(text).Under("marking").TryGet(out var marking, out var refusal))
            return refusal;
        if (needsDimensions && !marking.HasDimensions)
            return new Refusal(Fault.At("/marking", FaultCodes.Unreadable, $"{TyreAnswers.SizeWithoutRule(marking)}, and this call needs it."));

        return new Tyre(marking)
        {
            MassKg = document.MassKg,
            PressureKpa = document.PressureKpa,
            RimProtectorMm = document.RimProtectorMm,
            VerticalRateNPerMm = document.VerticalRateNPerMm,
            CorneringStiffnessNPerDeg = document.CorneringStiffnessNPerDeg,
            Category = document.Category,
        };
    }
}
