using SetupService.Api.Http;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment;

/// <summary>Maps what the requests of the fitment calls share to domain values.</summary>
internal static class FitmentMapper
{
    /// <summary>A wheel and tyre.</summary>
    public static MapResult<Fitting> Map(FittingDocument? document)
    {
        if (document is null)
            return Refusal.Missing();
        Refusal? refusal = null;
        var wheel = WheelMapper.Map(document.Wheel).Take("wheel", ref refusal);
        var tyre = TyreMapper.Map(document.Tyre).Take("tyre", ref refusal);
        if (refusal is not null)
            return refusal;
        return new Fitting(wheel!, tyre!);
    }

    /// <summary>The settings of a check: margins, required checks, camber change.</summary>
    public static CheckSettings Settings(TolerancesDocument? tolerances, CheckId[]? required, CamberChangeDocument? change) => new()
    {
        MinimumMarginMm = tolerances?.MinimumMarginMm,
        Required = required is null ? null : ToSet(required),
        CamberChange = change is null
            ? null
            : new CamberChange(change.ChangeDeg, change.At, change.PivotHeightMm, change.NarrowestHeightMm),
    };

    private static CheckIdSet ToSet(CheckId[] names)
    {
        CheckIdSet set = default;
        foreach (var name in names)
            set = set.With(name);
        return set;
    }
}
