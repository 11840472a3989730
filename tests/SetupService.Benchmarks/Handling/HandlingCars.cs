using SetupService.Benchmarks.Geometry;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Benchmarks.Handling;

/// <summary>An invented car with full kinematics at both ends: struts in front, double wishbones behind.</summary>
internal static class HandlingCars
{
    public static ResolvedHandlingCar Drawn() => HandlingCarBuilder.Build(Vehicle()) ?? throw new InvalidOperationException("The car lacks something.");

    public static Vehicle Vehicle() => new()
    {
        WheelbaseMm = 2570,
        CentreOfGravityHeightMm = 505,
        Front = Axle(BenchmarkCorners.Strut.Suspension, 690, 27, -2, 250),
        Rear = Axle(BenchmarkCorners.Named("doubleWishbone").Suspension, 640, 62, -1.5, 120),
    };

    private static Axle Axle(Hardpoints points, double loadKg, double rateNPerMm, double camberDeg, double barNmPerDeg) => new()
    {
        Suspension = SuspensionModel.From(points),
        LoadKg = loadKg,
        TrackMm = 1510,
        UnsprungMassKg = 38,
        Tyre = new Tyre(TyreMarkingReader.Read("225/45R17 91W").Value!) { PressureKpa = 230, VerticalRateNPerMm = 210 },
        Left = new WheelAlignment { CamberDeg = camberDeg, ToeDeg = 0.05 },
        Right = new WheelAlignment { CamberDeg = camberDeg, ToeDeg = 0.05 },
        Spring = new Spring { RateNPerMm = rateNPerMm },
        BarRollRateNmPerDeg = barNmPerDeg,
        Compliance = new Compliance { CamberDegPerKn = 0.12, ToeDegPerKn = 0.03 },
        BumpTravelMm = 68,
        ReboundTravelMm = 85,
    };
}
