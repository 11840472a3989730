using SetupService.Domain.Fitment;
using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>The invented demo car, an Aldermoor Tarn in road trim, and short ways to say a wheel and a tyre.</summary>
internal static class DemoCar
{
    public static Wheel Wheel(double widthIn = 7.5, double offsetMm = 45, double diameterIn = 17, double spacerMm = 0) => new()
    {
        RimDiameterIn = diameterIn,
        RimWidthIn = widthIn,
        OffsetMm = offsetMm,
        SpacerMm = spacerMm,
        MassKg = 9.6,
        BoltCircle = new BoltCircle(5, 108),
        CentreBoreMm = 63.4,
        LoadRatingKg = 650,
        FastenerSeat = FastenerSeat.Cone60,
        PadThicknessMm = 12,
    };

    public static Tyre Tyre(string marking = "225/45R17 91W", double? pressureKpa = 230)
    {
        var reading = TyreMarkingReader.Read(marking);
        Assert.True(reading.TryGet(out var read, out var fault), fault?.Message);
        return new Tyre(read) { MassKg = 9.9, PressureKpa = pressureKpa };
    }

    public static Fitting Fitting(double widthIn = 7.5, double offsetMm = 45, string marking = "225/45R17 91W", double spacerMm = 0)
    {
        var tyre = Tyre(marking);
        return new Fitting(Wheel(widthIn, offsetMm, tyre.Marking.RimDiameterIn, spacerMm), tyre);
    }

    public static Axle Axle() => new()
    {
        Wheel = Wheel(),
        Tyre = Tyre(),
        LoadKg = 690,
        MaximumLoadKg = 870,
        MinimumLoadIndex = 87,
        Left = new WheelAlignment { SteeringAxisInclinationDeg = 13.1 },
        BumpTravelMm = 68,
        Suspension = SuspensionModel.FromFiguresOf(SuspensionLayout.MacPhersonStrut),
        Clearance = new Clearance
        {
            InboardMm = 14,
            OutboardMm = 18,
            RadialMm = 22,
            InboardAtFullLockMm = 16,
            SpringSeatMm = 20,
            MeasuredAt = ClearanceMeasuredAt.WorstTravel,
            UncertaintyMm = 1,
        },
        Hub = new Hub
        {
            BoltCircle = new BoltCircle(5, 108),
            CentreBoreMm = 63.4,
            FastenerThread = new FastenerThread(14, 1.5),
            FastenerKind = FastenerKind.Bolt,
            FastenerLengthMm = 28,
            FastenerSeat = FastenerSeat.Cone60,
            MinimumRimDiameterIn = 16,
        },
    };

    public static Vehicle Vehicle(Axle? front = null) => new()
    {
        DrivenAxle = DrivenAxle.Rear,
        TopSpeedKmh = 228,
        Front = front ?? Axle(),
        Rear = Axle(),
    };

    public static FitmentContext Front(Axle? front = null, CheckSettings? settings = null) =>
        FitmentContext.Prepare(Vehicle(front), CarAxle.Front, settings ?? new CheckSettings());

    public static CheckSheet Check(FitmentContext car, in Fitting candidate)
    {
        var sheet = new CheckSheet();
        FitmentCheck.Evaluate(car, candidate, sheet);
        return sheet;
    }
}
