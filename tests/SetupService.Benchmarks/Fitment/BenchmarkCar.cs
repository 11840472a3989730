using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wheels;

namespace SetupService.Benchmarks.Fitment;

/// <summary>A fully described axle and a spread of candidates, so that no check ends early for want of a value.</summary>
internal static class BenchmarkCar
{
    public static FitmentContext Front() => Car().At(CarAxle.Front);

    /// <summary>The car, ready for many candidates, with another bolt circle where one is given.</summary>
    public static FitmentCar Car(BoltCircle? circle = null)
    {
        var axle = new Axle
        {
            Wheel = Wheel(7.5, 45),
            Tyre = new Tyre(Read("225/45R17 91W")) { MassKg = 9.9, PressureKpa = 230 },
            LoadKg = 690,
            MaximumLoadKg = 870,
            MinimumLoadIndex = 87,
            Left = new WheelAlignment { SteeringAxisInclinationDeg = 13.1 },
            BumpTravelMm = 68,
            BumpStop = new BumpStop { LengthMm = 45, CompressedLengthMm = 18, MotionRatio = 0.94 },
            Suspension = SuspensionModel.From(new CornerReadings { Travel = [new(-40, -0.3), new(0, -0.7), new(40, -1.5), new(100, -2.7)] }),
            Clearance = new Clearance
            {
                InboardMm = 24,
                OutboardMm = 28,
                RadialMm = 120,
                InboardAtFullLockMm = 21,
                SpringSeatMm = 20,
                MeasuredAt = ClearanceMeasuredAt.RideHeight,
                UncertaintyMm = 1,
            },
            Hub = new Hub
            {
                BoltCircle = circle ?? new BoltCircle(5, 108),
                CentreBoreMm = 63.4,
                FastenerThread = new FastenerThread(14, 1.5),
                FastenerKind = FastenerKind.Bolt,
                FastenerLengthMm = 28,
                FastenerSeat = FastenerSeat.Cone60,
                CaliperProfile = [new(-60, 150), new(-20, 164), new(18, 165)],
            },
        };
        var vehicle = new Vehicle { DrivenAxle = DrivenAxle.Rear, TopSpeedKmh = 228, Front = axle, Rear = axle };
        var change = new CamberChange(-1.5, CamberChangePlace.StrutToKnuckle, 240, 430);
        return new(vehicle, CarAxle.Front, new CheckSettings { CamberChange = change });
    }

    public static Fitting[] Candidates()
    {
        string[] markings = ["225/45R17 91W", "235/45R17 94W XL", "215/45R17 91Y", "235/40R17 90V", "245/40R17 91W"];
        var tyres = markings.Select(marking => new Tyre(Read(marking)) { MassKg = 10, PressureKpa = 230 }).ToArray();
        var candidates =
            from tyre in tyres
            from width in new[] { 7.0, 7.5, 8, 8.5 }
            from offset in Enumerable.Range(30, 25)
            select new Fitting(Wheel(width, offset), tyre);
        return [.. candidates];
    }

    private static Wheel Wheel(double widthIn, double offsetMm) => new()
    {
        RimDiameterIn = 17,
        RimWidthIn = widthIn,
        OffsetMm = offsetMm,
        MassKg = 9.6,
        BoltCircle = new BoltCircle(5, 108),
        CentreBoreMm = 63.4,
        LoadRatingKg = 650,
        FastenerSeat = FastenerSeat.Cone60,
        PadThicknessMm = 12,
        InnerProfile = [new(-120, 196), new(-20, 180), new(30, 176)],
    };

    private static TyreMarking Read(string marking) =>
        TyreMarkingReader.Read(marking).Value ?? throw new InvalidOperationException($"The benchmark's own marking {marking} does not read.");
}
