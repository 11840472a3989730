using SetupService.Api.Drawings;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Tests.Drawings;

/// <summary>The invented demo car, an Aldermoor Tarn, and pictures of candidates on it.</summary>
internal static class DrawnCar
{
    public static readonly Clearance Gaps = new()
    {
        InboardMm = 14,
        OutboardMm = 18,
        RadialMm = 22,
        InboardAtFullLockMm = 16,
        SpringSeatMm = 20,
        MeasuredAt = ClearanceMeasuredAt.WorstTravel,
        UncertaintyMm = 1,
    };

    public static Fitting Fitting(double widthIn = 7.5, double offsetMm = 45, string marking = "225/45R17 91W", double spacerMm = 0)
    {
        Assert.True(TyreMarkingReader.Read(marking).TryGet(out var read, out var fault), fault?.Message);
        var wheel = new Wheel { RimDiameterIn = read.RimDiameterIn, RimWidthIn = widthIn, OffsetMm = offsetMm, SpacerMm = spacerMm, CentreBoreMm = 63.4 };
        return new Fitting(wheel, new Tyre(read) { PressureKpa = 230 });
    }

    public static Axle Axle(Clearance? gaps = null, Fitting? present = null)
    {
        var fitting = present ?? Fitting();
        return new()
        {
            Wheel = fitting.Wheel,
            Tyre = fitting.Tyre,
            MaximumLoadKg = 870,
            BumpTravelMm = 68,
            Suspension = SuspensionModel.FromFiguresOf(SuspensionLayout.MacPhersonStrut),
            Clearance = gaps ?? Gaps,
            Hub = new Hub { BoltCircle = new BoltCircle(5, 108), CentreBoreMm = 63.4 },
        };
    }

    public static Picture Picture(
        in Fitting candidate, Axle? axle = null, UnitSystem units = UnitSystem.Metric, CamberChange? camber = null, CarAxle position = CarAxle.Front)
    {
        var vehicle = new Vehicle { TopSpeedKmh = 228, Front = axle ?? Axle(), Rear = axle ?? Axle() };
        var car = FitmentContext.Prepare(vehicle, position, new CheckSettings { CamberChange = camber });
        var sheet = new CheckSheet();
        FitmentCheck.Evaluate(car, candidate, sheet);
        return new Picture(CornerDrawing.Draw(car, candidate, sheet, units), sheet);
    }
}
