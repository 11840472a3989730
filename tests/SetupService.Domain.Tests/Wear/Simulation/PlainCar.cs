using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>A car without faults of which a test changes one thing.</summary>
internal static class PlainCar
{
    public static TrueCar Of(double trackLaps = 0, double roadKm = 8000) => new()
    {
        Front = Axle(CarAxle.Front, WheelPosition.FrontLeft, WheelPosition.FrontRight),
        Rear = Axle(CarAxle.Rear, WheelPosition.RearLeft, WheelPosition.RearRight),
        Use = new() { RoadKm = roadKm, TrackLaps = trackLaps, LeftShare = 0.5 },
        DrivenAxle = DrivenAxle.Rear,
    };

    /// <summary>The same car with both front wheels changed.</summary>
    public static TrueCar Fronts(this TrueCar car, Func<TrueWheel, TrueWheel> change) =>
        car with { Front = car.Front with { Left = change(car.Front.Left), Right = change(car.Front.Right) } };

    /// <summary>Wear of the left front tyre at the three usual places, mm.</summary>
    public static (double OuterMm, double CentreMm, double InnerMm) LeftFrontLost(this TrueCar car)
    {
        var lostMm = TyreWear.Of(car)[0].LostMm;
        return (Strips.At(lostMm, 15), Strips.At(lostMm, 50), Strips.At(lostMm, 85));
    }

    private static TrueAxle Axle(CarAxle place, WheelPosition left, WheelPosition right) => new()
    {
        Place = place,
        WheelLoadN = 3400,
        Tyre = new() { WidthMm = 200, RadiusMm = 310, Friction = 1.05, WearMmPerM = 1.1e-4 },
        IsDriven = place == CarAxle.Rear,
        SteerCamberGainDegPerG = place == CarAxle.Front ? 0.3 : 0,
        Left = new() { Position = left },
        Right = new() { Position = right },
    };
}
