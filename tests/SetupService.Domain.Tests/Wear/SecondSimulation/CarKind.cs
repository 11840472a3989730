using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>A kind of car, invented; rates at the wheel in N/mm, bars in N m per degree of roll, settings in degrees and kPa.</summary>
internal sealed record CarKind(string Label, CarBody Body, DrivenAxle Driven, double MassKg, double FrontShare, double HeightMm, double WheelbaseMm, double TrackMm)
{
    public required (double Front, double Rear) RateNPerMm { get; init; }
    public required (double Front, double Rear) BarNmPerDeg { get; init; }
    public required (double Front, double Rear) CamberDeg { get; init; }
    public required (double Front, double Rear) ToeDeg { get; init; }
    public required (double Front, double Rear) RightKpa { get; init; }
    public required (SuspensionLayout Front, SuspensionLayout Rear) Layout { get; init; }
    public required (string Front, string Rear) Marking { get; init; }

    /// <summary>Height of the roll centres, mm.</summary>
    public (double Front, double Rear) RollCentreMm { get; init; } = (60, 110);

    /// <summary>Roll of the body, degrees per g.</summary>
    public double RollDegPerG => MassKg * 9.81 * (HeightMm - ((RollCentreMm.Front + RollCentreMm.Rear) / 2)) / 1000 / (Stiffness(CarAxle.Front) + Stiffness(CarAxle.Rear));

    /// <summary>Share of the car's whole load transfer that an axle takes.</summary>
    public double TransferShare(CarAxle axle) => Stiffness(axle) / (Stiffness(CarAxle.Front) + Stiffness(CarAxle.Rear));

    /// <summary>Share of the body's roll by which its outer wheel leans on the road; judgement by the kind of suspension, no source.</summary>
    public double LeanLost(CarAxle axle) => At(axle, Layout) switch
    {
        SuspensionLayout.MacPhersonStrut => 0.75,
        SuspensionLayout.TwistBeam => 0.65,
        SuspensionLayout.DoubleWishbone => 0.5,
        _ => 0.55,
    };

    /// <summary>Share of the drive that an axle takes.</summary>
    public double DriveShare(CarAxle axle) => Driven switch
    {
        DrivenAxle.Both => 0.5,
        DrivenAxle.Front => axle == CarAxle.Front ? 1 : 0,
        _ => axle == CarAxle.Rear ? 1 : 0,
    };

    /// <summary>The one of an axle.</summary>
    public static T At<T>(CarAxle axle, (T Front, T Rear) both) => axle == CarAxle.Front ? both.Front : both.Rear;

    private double Stiffness(CarAxle axle) => (At(axle, RateNPerMm) * TrackMm * TrackMm / 2000 * Math.PI / 180) + At(axle, BarNmPerDeg);

    /// <summary>The kinds, from a small front-driven hatchback to a light car for sprints.</summary>
    public static IReadOnlyList<CarKind> All { get; } =
    [
        new("small hatchback", CarBody.Hatchback, DrivenAxle.Front, 1120, 0.63, 540, 2480, 1450)
        {
            RateNPerMm = (21, 20), BarNmPerDeg = (180, 160), CamberDeg = (-0.5, -1.4), ToeDeg = (0.05, 0.12), RightKpa = (220, 210),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.TwistBeam), Marking = ("185/60R15 84H", "185/60R15 84H"),
        },
        new("sporting hatchback", CarBody.Hatchback, DrivenAxle.Front, 1330, 0.64, 535, 2600, 1530)
        {
            RateNPerMm = (28, 27), BarNmPerDeg = (330, 260), CamberDeg = (-0.8, -1.5), ToeDeg = (0.03, 0.12), RightKpa = (240, 230),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.TwistBeam), Marking = ("225/40R18 92W", "225/40R18 92W"),
        },
        new("family estate", CarBody.Wagon, DrivenAxle.Front, 1560, 0.58, 570, 2750, 1560)
        {
            RateNPerMm = (26, 27), BarNmPerDeg = (300, 210), CamberDeg = (-0.5, -1.3), ToeDeg = (0.08, 0.10), RightKpa = (240, 240),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.FiveLink), Marking = ("215/55R17 94V", "215/55R17 94V"),
        },
        new("rear-driven saloon", CarBody.Sedan, DrivenAxle.Rear, 1510, 0.51, 550, 2800, 1540)
        {
            RateNPerMm = (27, 29), BarNmPerDeg = (340, 180), CamberDeg = (-0.5, -1.6), ToeDeg = (0.10, 0.14), RightKpa = (230, 250),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.FiveLink), Marking = ("225/45R17 91W", "225/45R17 91W"),
        },
        new("light roadster", CarBody.Convertible, DrivenAxle.Rear, 1060, 0.52, 465, 2310, 1495)
        {
            RateNPerMm = (19, 18), BarNmPerDeg = (220, 110), CamberDeg = (-0.5, -1.2), ToeDeg = (0.08, 0.10), RightKpa = (200, 200),
            Layout = (SuspensionLayout.DoubleWishbone, SuspensionLayout.FiveLink), Marking = ("195/50R16 84V", "195/50R16 84V"),
        },
        new("coupe with two driven axles", CarBody.Coupe, DrivenAxle.Both, 1580, 0.55, 540, 2630, 1570)
        {
            RateNPerMm = (32, 33), BarNmPerDeg = (420, 320), CamberDeg = (-0.9, -1.5), ToeDeg = (0.04, 0.10), RightKpa = (240, 240),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.FiveLink), Marking = ("245/40R18 97W", "245/40R18 97W"),
        },
        new("high estate", CarBody.Suv, DrivenAxle.Both, 1780, 0.56, 660, 2700, 1600)
        {
            RateNPerMm = (33, 34), BarNmPerDeg = (420, 330), CamberDeg = (-0.5, -1.0), ToeDeg = (0.06, 0.10), RightKpa = (240, 240),
            Layout = (SuspensionLayout.MacPhersonStrut, SuspensionLayout.FiveLink), Marking = ("235/60R18 103V", "235/60R18 103V"),
        },
        new("light car for sprints", CarBody.Coupe, DrivenAxle.Rear, 860, 0.44, 430, 2320, 1480)
        {
            RateNPerMm = (24, 30), BarNmPerDeg = (160, 40), CamberDeg = (-1.2, -1.8), ToeDeg = (0.03, 0.12), RightKpa = (150, 160),
            Layout = (SuspensionLayout.DoubleWishbone, SuspensionLayout.DoubleWishbone), Marking = ("195/50R15 82V", "205/50R15 86V"),
        },
    ];
}
