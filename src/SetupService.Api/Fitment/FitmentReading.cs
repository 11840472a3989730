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
        var isRead = WheelReading.TryRead(document.Wheel, out var wheel) & TyreReading.TryRead(document.Tyre, out var tyre);
        fitting = isRead ? new Domain.Fitment.Fitting(wheel!, tyre!) : default;
        return isRead;
    }

    public static bool TryReadCar(
        VehicleDocument document, Vehicles.Axle axle, CheckSettings settings, [NotNullWhen(true)] out AxleUnderCheck? car)
    {
        car = VehicleReading.TryRead(document, out var vehicle)
            ? AxleUnderCheck.Prepare(vehicle, (CarAxle)axle, settings)
            : null;
        return car is not null;
    }

    public static CheckSettings Settings(TolerancesDocument? tolerances, CheckName[]? required, CamberChangeDocument? change) => new()
    {
        MinimumMarginMm = tolerances?.MinimumMarginMm,
        Required = required is null ? CheckIdSet.RequiredByDefault : SetOf(required),
        CamberChange = change is null
            ? null
            : new CamberChange(change.ChangeDeg, (CamberChangePlace)change.At, change.PivotHeightMm, change.NarrowestHeightMm),
    };

    private static CheckIdSet SetOf(CheckName[] names)
    {
        CheckIdSet set = default;
        foreach (var name in names)
            set = set.With((CheckId)name);
        return set;
    }
}
