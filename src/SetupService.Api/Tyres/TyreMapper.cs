using SetupService.Api.Http;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>Maps a tyre document to the domain's tyre.</summary>
internal static class TyreMapper
{
    private static readonly ParseCache<TyreMarking> Markings = new(TyreMarkingReader.Read);

    /// <summary>The tyre; refused where its marking cannot be read.</summary>
    public static MapResult<Tyre> Map(TyreDocument? document)
    {
        if (document?.Marking is not { } text)
            return Refusal.Missing();
        if (!Markings.Map(text).Under("marking").TryGet(out var marking, out var refusal))
            return refusal;

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
