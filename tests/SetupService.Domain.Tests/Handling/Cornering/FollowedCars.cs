using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Suspension.Points;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>The same car on suspensions of each kind, of which little more than loads, tracks and springs was given.</summary>
internal static class FollowedCars
{
    public static IReadOnlyList<string> Names => ["figures", "readings", "strut and wishbone", "five links and arm", "strut and beam"];

    public static ResolvedHandlingCar Named(string name) => HandlingCarBuilder.Build(Stated(name))!;

    public static Vehicle Stated(string name) => name switch
    {
        "figures" => Car(null, null),
        "readings" => Car(Readings, Readings),
        "strut and wishbone" => Car(SuspensionModel.From(DrawnSuspensions.Strut), SuspensionModel.From(DrawnSuspensions.Wishbone)),
        "five links and arm" => Car(SuspensionModel.From(DrawnSuspensions.Five), SuspensionModel.From(DrawnSuspensions.Arm)),
        _ => Car(SuspensionModel.From(DrawnSuspensions.Strut), SuspensionModel.From(DrawnSuspensions.Beam)),
    };

    private static SuspensionModel Readings => SuspensionModel.From(new CornerReadings
    {
        Travel = [new(-80, 0.4, null), new(-40, -0.2, null), new(0, -1, null), new(40, -1.9, null), new(80, -2.9, null)],
    });

    private static Vehicle Car(SuspensionModel? front, SuspensionModel? rear) => new()
    {
        WheelbaseMm = 2570,
        Front = Axle(front, 690, 34),
        Rear = Axle(rear, 640, 46),
    };

    private static Axle Axle(SuspensionModel? suspension, double loadKg, double rateNPerMm)
    {
        var axle = new Axle
        {
            LoadKg = loadKg,
            TrackMm = 1510,
            Tyre = new Tyre(TyreMarkingReader.Read("225/45R17 91W").Value!) { PressureKpa = 230 },
            Spring = new Spring { RateNPerMm = rateNPerMm },
            Left = new WheelAlignment { CamberDeg = -1.2, ToeDeg = 0.07 },
            Right = new WheelAlignment { CamberDeg = -1.5, ToeDeg = 0.05 },
            BumpTravelMm = 90,
            ReboundTravelMm = 100,
        };
        return suspension is null ? axle : axle with { Suspension = suspension };
    }
}
