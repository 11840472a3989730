using SetupService.Api.Http;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;
using SetupService.Domain.Fitment;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>Maps the requests of the fitment calls to domain values.</summary>
internal static class FitmentMapper
{
    /// <summary>A wheel and tyre.</summary>
    public static MapResult<Domain.Fitment.Fitting> Map(FittingDocument? document)
    {
        if (document is null)
            return Refusal.Missing();
        Refusal? refusal = null;
        var wheel = WheelMapper.Map(document.Wheel).Take("wheel", ref refusal);
        var tyre = TyreMapper.Map(document.Tyre).Take("tyre", ref refusal);
        if (refusal is not null)
            return refusal;
        return new Domain.Fitment.Fitting(wheel!, tyre!);
    }

    /// <summary>The fittings of a comparison.</summary>
    public static MapResult<(Domain.Fitment.Fitting Current, Domain.Fitment.Fitting Candidate)> Map(ComparisonRequest request)
    {
        Refusal? refusal = null;
        var current = Map(request.Current).Take("current", ref refusal);
        var candidate = Map(request.Candidate).Take("candidate", ref refusal);
        if (refusal is not null)
            return refusal;
        return (current, candidate);
    }

    /// <summary>The car and candidate of a check.</summary>
    public static MapResult<(Vehicle Vehicle, Domain.Fitment.Fitting Candidate)> Map(CheckRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.Map(request.Vehicle).Take("vehicle", ref refusal);
        var candidate = Map(request.Candidate).Take("candidate", ref refusal);
        if (refusal is not null)
            return refusal;
        return (vehicle!, candidate);
    }

    /// <summary>The car and tyre of a question for offsets.</summary>
    public static MapResult<(Vehicle Vehicle, Tyre Tyre)> Map(WindowRequest request)
    {
        Refusal? refusal = null;
        var vehicle = VehicleMapper.Map(request.Vehicle).Take("vehicle", ref refusal);
        var tyre = TyreMapper.Map(request.Tyre).Take("tyre", ref refusal);
        if (refusal is not null)
            return refusal;
        return (vehicle!, tyre!);
    }

    /// <summary>What a caller wants of a check.</summary>
    public static CheckSettings Settings(TolerancesDocument? tolerances, CheckId[]? required, CamberChangeDocument? change) => new()
    {
        MinimumMarginMm = tolerances?.MinimumMarginMm,
        Required = required is null ? null : SetOf(required),
        CamberChange = change is null
            ? null
            : new CamberChange(change.ChangeDeg, change.At, change.PivotHeightMm, change.NarrowestHeightMm),
    };

    private static CheckIdSet SetOf(CheckId[] names)
    {
        CheckIdSet set = default;
        foreach (var name in names)
            set = set.With(name);
        return set;
    }
}
