using System.Diagnostics.CodeAnalysis;
using SetupService.Api.Tyres;
using SetupService.Api.Vehicles;
using SetupService.Api.Wheels;
using SetupService.Domain.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Fitment;

/// <summary>Reads the requests of the fitment calls into domain values; false where a text in them cannot be read.</summary>
internal static class FitmentReading
{
    public static bool TryReadFitting(FittingDocument document, out Domain.Fitment.Fitting fitting)
    {
        var isRead = WheelMapper.TryRead(document.Wheel, out var wheel) & TyreMapper.TryRead(document.Tyre, out var tyre);
        fitting = isRead ? new Domain.Fitment.Fitting(wheel!, tyre!) : default;
        return isRead;
    }

    public static bool TryReadCar(
        VehicleDocument document, CarAxle axle, CheckSettings settings, [NotNullWhen(true)] out AxleUnderCheck? car)
    {
        car = VehicleMapper.TryRead(document, out var vehicle)
            ? AxleUnderCheck.Prepare(vehicle, axle, settings)
            : null;
        return car is not null;
    }

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
