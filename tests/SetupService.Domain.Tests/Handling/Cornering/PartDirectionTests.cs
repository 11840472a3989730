using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Tests.Handling.Cornering;

/// <summary>
/// Which way each part moves the balance, at three levels of lateral acceleration on three cars: common practice, no source. The balance is how much more of its grip the front
/// uses than the rear: more is towards understeer. Where a wheel of the axle has lifted its bar may do nothing.
/// </summary>
public sealed class PartDirectionTests
{
    /// <summary>What a change does.</summary>
    public enum Does
    {
        /// <summary>The front uses more of its grip against the rear.</summary>
        Understeer,

        /// <summary>The front uses less of its grip against the rear.</summary>
        Oversteer,

        /// <summary>Both axles use less of their grip.</summary>
        MoreGrip,

        /// <summary>Both axles use more of their grip.</summary>
        LessGrip,

        /// <summary>Hardly anything.</summary>
        Nothing,
    }

    private static readonly (string Part, Func<HandlingCar, HandlingCar> Change, Does Does)[] Table =
    [
        ("front bar 30 % stiffer", car => Front(car, one => one with { BarRollRateNmPerDeg = 1.3 * one.BarRollRateNmPerDeg }), Does.Understeer),
        ("front bar 30 % softer", car => Front(car, one => one with { BarRollRateNmPerDeg = 0.7 * one.BarRollRateNmPerDeg }), Does.Oversteer),
        ("rear bar 30 % stiffer", car => Rear(car, one => one with { BarRollRateNmPerDeg = 1.3 * one.BarRollRateNmPerDeg }), Does.Oversteer),
        ("rear bar 30 % softer", car => Rear(car, one => one with { BarRollRateNmPerDeg = 0.7 * one.BarRollRateNmPerDeg }), Does.Understeer),
        ("front springs 30 % stiffer", car => Front(car, one => one with { SpringRateNPerMm = 1.3 * one.SpringRateNPerMm }), Does.Understeer),
        ("front springs 20 % softer", car => Front(car, one => one with { SpringRateNPerMm = 0.8 * one.SpringRateNPerMm }), Does.Oversteer),
        ("rear springs 30 % stiffer", car => Rear(car, one => one with { SpringRateNPerMm = 1.3 * one.SpringRateNPerMm }), Does.Oversteer),
        ("rear springs 20 % softer", car => Rear(car, one => one with { SpringRateNPerMm = 0.8 * one.SpringRateNPerMm }), Does.Understeer),
        ("wider front tyres", car => Front(car, one => one with { TyreNominalLoadN = 1.15 * one.TyreNominalLoadN }), Does.Oversteer),
        ("narrower front tyres", car => Front(car, one => one with { TyreNominalLoadN = 0.87 * one.TyreNominalLoadN }), Does.Understeer),
        ("wider rear tyres", car => Rear(car, one => one with { TyreNominalLoadN = 1.15 * one.TyreNominalLoadN }), Does.Understeer),
        ("narrower rear tyres", car => Rear(car, one => one with { TyreNominalLoadN = 0.87 * one.TyreNominalLoadN }), Does.Oversteer),
        ("softer rubber in front", car => Front(car, one => one with { TyreFriction = 1.05 * one.TyreFriction }), Does.Oversteer),
        ("softer rubber behind", car => Rear(car, one => one with { TyreFriction = 1.05 * one.TyreFriction }), Does.Understeer),
        ("1° more negative camber in front", car => Front(car, one => Leaned(one, -1)), Does.Oversteer),
        ("1° less negative camber in front", car => Front(car, one => Leaned(one, 1)), Does.Understeer),
        ("1° more negative camber behind", car => Rear(car, one => Leaned(one, -1)), Does.Understeer),
        ("1° less negative camber behind", car => Rear(car, one => Leaned(one, 1)), Does.Oversteer),
        ("wider front track", car => Front(car, one => Spaced(one, 40)), Does.Oversteer),
        ("narrower front track", car => Front(car, one => Spaced(one, -40)), Does.Understeer),
        ("wider rear track", car => Rear(car, one => Spaced(one, 40)), Does.Understeer),
        ("narrower rear track", car => Rear(car, one => Spaced(one, -40)), Does.Oversteer),
        ("higher roll centre in front", car => Front(car, one => one with { RollCentreHeightMm = one.RollCentreHeightMm + 40 }), Does.Understeer),
        ("lower roll centre in front", car => Front(car, one => one with { RollCentreHeightMm = one.RollCentreHeightMm - 40 }), Does.Oversteer),
        ("higher roll centre behind", car => Rear(car, one => one with { RollCentreHeightMm = one.RollCentreHeightMm + 40 }), Does.Oversteer),
        ("lower roll centre behind", car => Rear(car, one => one with { RollCentreHeightMm = one.RollCentreHeightMm - 40 }), Does.Understeer),
        ("lowered 20 mm", car => Rear(Front(car, one => one with { RideHeightChangeMm = -20 }), one => one with { RideHeightChangeMm = -20 }), Does.MoreGrip),
        ("raised 20 mm", car => Rear(Front(car, one => one with { RideHeightChangeMm = 20 }), one => one with { RideHeightChangeMm = 20 }), Does.LessGrip),
        ("lower centre of gravity", car => car with { CentreOfGravityHeightMm = car.CentreOfGravityHeightMm - 30 }, Does.MoreGrip),
        ("higher centre of gravity", car => car with { CentreOfGravityHeightMm = car.CentreOfGravityHeightMm + 30 }, Does.LessGrip),
        ("a stickier road", car => car with { GripFactor = 1.1 }, Does.MoreGrip),
        ("a front tyre 5 % stiffer upright, as by pressure", car => Front(car, one => one with { TyreRateNPerMm = 1.05 * one.TyreRateNPerMm }), Does.Nothing),
        ("a rear tyre 5 % stiffer upright, as by pressure", car => Rear(car, one => one with { TyreRateNPerMm = 1.05 * one.TyreRateNPerMm }), Does.Nothing),
    ];

    private static readonly (string Name, HandlingCar Car)[] Cars =
    [
        ("front-heavy saloon", Made(0.61, 1400, 560, 28, 30, 330, 120, -0.8)),
        ("balanced coupe", Made(0.52, 1300, 500, 38, 40, 450, 250, -1.5)),
        ("rear-heavy car on stiff springs", Made(0.42, 1150, 470, 55, 75, 350, 300, -1)),
    ];

    public static TheoryData<string, string, double> Rows()
    {
        TheoryData<string, string, double> rows = [];
        foreach (var row in Table)
        {
            foreach (var car in Cars)
            {
                foreach (var lateralG in new[] { 0.5, 0.75, 0.95 }) rows.Add(row.Part, car.Name, lateralG);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_part_moves_the_balance_the_way_drivers_know(string part, string carName, double lateralG)
    {
        var (_, change, does) = Table.Single(row => row.Part == part);
        var car = Cars.Single(one => one.Name == carName).Car;

        var (before, after) = (Solve(car, lateralG), Solve(change(car), lateralG));

        var (front, rear) = (after.Front.GripUsed - before.Front.GripUsed, after.Rear.GripUsed - before.Rear.GripUsed);
        var told = FormattableString.Invariant($"front {front:+0.0000;-0.0000}, rear {rear:+0.0000;-0.0000}");
        if ((before.HasLiftedWheel || after.HasLiftedWheel) && Math.Abs(front - rear) < 1e-6) return;
        Assert.True(
            does switch
            {
                Does.Understeer => front - rear > 1e-5,
                Does.Oversteer => front - rear < -1e-5,
                Does.MoreGrip => front < -1e-5 && rear < -1e-5,
                Does.LessGrip => front > 1e-5 && rear > 1e-5,
                _ => Math.Abs(front) < 0.005 && Math.Abs(rear) < 0.005,
            },
            told);
    }

    private static CorneringAttitude Solve(HandlingCar car, double lateralG)
    {
        var solver = CorneringSolver.Create(car, TurnDirection.Left)!;
        Assert.Null(solver.Solve(lateralG, 80));
        return solver.Attitude(new(lateralG, 80, TurnDirection.Left));
    }

    private static HandlingCar Made(double shareFront, double massKg, double heightMm, double frontRate, double rearRate, double frontBar, double rearBar, double camberDeg) => new()
    {
        WheelbaseMm = 2600,
        CentreOfGravityHeightMm = heightMm,
        Front = Leaned(WorkedCar.Axle((shareFront * massKg) - 80, 1520, frontRate, frontBar, 60, 220), camberDeg + 1),
        Rear = Leaned(WorkedCar.Axle(((1 - shareFront) * massKg) - 80, 1510, rearRate, rearBar, 110, 220), camberDeg + 1),
    };

    private static HandlingCar Front(HandlingCar car, Func<HandlingAxle, HandlingAxle> change) => car with { Front = change(car.Front) };

    private static HandlingCar Rear(HandlingCar car, Func<HandlingAxle, HandlingAxle> change) => car with { Rear = change(car.Rear) };

    // By spacers: the springs stay where they are in the body, so that the wheel works them by a longer lever and the roll stiffness stays.
    private static HandlingAxle Spaced(HandlingAxle axle, double byMm) =>
        axle with { TrackMm = axle.TrackMm + byMm, MotionRatio = axle.MotionRatio * axle.TrackMm / (axle.TrackMm + byMm) };

    private static HandlingAxle Leaned(HandlingAxle axle, double byDeg) => axle with { LeftCamberDeg = axle.LeftCamberDeg + byDeg, RightCamberDeg = axle.RightCamberDeg + byDeg };
}
