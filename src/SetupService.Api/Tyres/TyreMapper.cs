using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Http;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>Reads a tyre document into the domain's tyre.</summary>
internal static class TyreMapper
{
    private static readonly ParseCache<TyreMarking> Markings = new(TyreMarkingReader.Read);

    /// <summary>False where the marking cannot be read.</summary>
    public static bool TryRead(TyreDocument document, [NotNullWhen(true)] out Tyre? tyre)
    {
        tyre = Markings.Find(document.Marking) is { } marking
            ? new Tyre(marking)
            {
                MassKg = document.MassKg,
                PressureKpa = document.PressureKpa,
                RimProtectorMm = document.RimProtectorMm,
                VerticalRateNPerMm = document.VerticalRateNPerMm,
                CorneringStiffnessNPerDeg = document.CorneringStiffnessNPerDeg,
            }
            : null;
        return tyre is not null;
    }

    /// <summary>As <see cref="TryRead"/>; a tyre that is not described reads as null.</summary>
    public static bool TryReadOptional(TyreDocument? document, out Tyre? tyre)
    {
        tyre = null;
        return document is null || TryRead(document, out tyre);
    }
}
