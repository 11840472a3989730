using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>Solves a car in the bends of a track, as many to the left as to the right, and keeps load and inclination of each wheel.</summary>
public static class TrackBends
{
    /// <summary>Lateral acceleration in a track's usual corner where not stated, g; common practice for road tyres, no source.</summary>
    public const double UsualLateralG = 0.85;

    /// <summary>Radius of a usual corner where not stated, m; common practice, no source.</summary>
    public const double UsualRadiusM = 60;

    // Corners are not all taken alike: as shares of the usual one, with how often.
    private static readonly (double OfUsual, double Share)[] Mix = [(1.1, 0.3), (0.95, 0.4), (0.75, 0.3)];
    private const double CamberStepDeg = -0.5;

    /// <summary>What wears the tyres of both axles; null where the car has no equilibrium in these bends, or the work allowed is spent.</summary>
    /// <param name="car">The car; it has a wheelbase.</param>
    /// <param name="vehicle">The same car, for the width of its treads.</param>
    /// <param name="use">How hard and how tight the bends are.</param>
    /// <param name="budget">Work allowed; null = no limit.</param>
    public static TrackUse? Solve(HandlingCar car, Vehicle vehicle, in WearUse use, WorkBudget? budget = null) =>
        Turns(car, use, budget) is { } turns ? Use(turns, vehicle, use) : null;

    /// <summary>The same of a car of which one like it is known, from which the change of an inclination by a degree of camber is taken.</summary>
    /// <param name="car">The car; it has a wheelbase.</param>
    /// <param name="vehicle">The same car, for the width of its treads.</param>
    /// <param name="use">How hard and how tight the bends are.</param>
    /// <param name="like">What wears the tyres of the one like it: set, or fitted, otherwise.</param>
    /// <param name="budget">Work allowed; null = no limit.</param>
    public static TrackUse? Solve(HandlingCar car, Vehicle vehicle, in WearUse use, TrackUse like, WorkBudget? budget) =>
        Turns(car, use, budget) is { } turns ? Use(turns.Attitudes, null, car, vehicle, use, like) : null;

    /// <summary>A car solved in these bends; null where it has no equilibrium in one of them, or the work allowed is spent.</summary>
    internal static TrackTurns? Turns(HandlingCar car, in WearUse use, WorkBudget? budget)
    {
        ArgumentNullException.ThrowIfNull(car);
        return TrackTurns.Solve(car, [.. Turns(use).Select(one => one.Demand)], budget);
    }

    /// <summary>What wears the tyres of a car solved; null where it has no equilibrium with a little more camber.</summary>
    internal static TrackUse? Use(TrackTurns turns, Vehicle vehicle, in WearUse use) =>
        turns.AttitudesOf(Leaned(turns.Car)) is { } leaned ? Use(turns.Attitudes, leaned, turns.Car, vehicle, use, null) : null;

    /// <summary>What wears the tyres of a car like one solved; see <see cref="Solve(HandlingCar, Vehicle, in WearUse, TrackUse, WorkBudget?)"/>.</summary>
    internal static TrackUse? UseOf(HandlingCar car, Vehicle vehicle, in WearUse use, TrackUse like, TrackTurns solved) =>
        solved.AttitudesOf(car) is { } attitudes ? Use(attitudes, null, car, vehicle, use, like) : null;

    /// <summary>Why the car has no equilibrium in these bends, as the cornering call says it; null where it has, or the work allowed is spent.</summary>
    public static CorneringObstacle? FindObstacle(HandlingCar car, in WearUse use, WorkBudget? budget = null)
    {
        foreach (var (demand, _) in Turns(use))
        {
            if (CorneringRun.Create(car, TurnPath.AtRadius(demand.Turn, demand.RadiusM), budget) is not { } run) return null;
            if (run.At(demand.LateralG, out var obstacle) is null && budget is not { IsSpent: true }) return obstacle;
        }

        return null;
    }

    /// <summary>These bends as the camber target of an axle has them.</summary>
    public static CamberDemand Demand(CarAxle at, in WearUse use) => new() { Axle = at, Corners = [.. Turns(use).Select(one => new BendShare(one.Demand, one.Share))] };

    private static (CorneringDemand Demand, double Share)[] Turns(in WearUse use)
    {
        var (usualG, radiusM) = (use.LateralG ?? UsualLateralG, use.CornerRadiusM ?? UsualRadiusM);
        return
        [
            .. Mix.Select(one => (new CorneringDemand(one.OfUsual * usualG, radiusM, TurnDirection.Left), one.Share)),
            .. Mix.Select(one => (new CorneringDemand(one.OfUsual * usualG, radiusM, TurnDirection.Right), one.Share)),
        ];
    }

    private static HandlingCar Leaned(HandlingCar car) => car with { Front = Leaned(car.Front), Rear = Leaned(car.Rear) };

    private static HandlingAxle Leaned(HandlingAxle axle) =>
        axle with { LeftCamberDeg = axle.LeftCamberDeg + CamberStepDeg, RightCamberDeg = axle.RightCamberDeg + CamberStepDeg };

    private static TrackUse Use(CorneringAttitude[] now, CorneringAttitude[]? leaned, HandlingCar car, Vehicle vehicle, WearUse use, TrackUse? like)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var turns = Turns(use);
        return new(At(CarAxle.Front), At(CarAxle.Rear));

        AxleUse At(CarAxle at)
        {
            var (left, right) = at == CarAxle.Front ? (WheelPosition.FrontLeft, WheelPosition.FrontRight) : (WheelPosition.RearLeft, WheelPosition.RearRight);
            var work = 0.0;
            for (var i = 0; i < now.Length; i++) work += turns[i].Share * (Work(now[i].At(left)) + Work(now[i].At(right)));
            var (axle, other) = (car.At(at), like?.At(at));
            var widthMm = vehicle.At(at).Tyre is { } tyre ? TreadWidth.Mm(tyre).Value : UsualTreadWidthMm;
            return new(at, Wheel(left, axle.LeftCamberDeg, axle.LeftToeDeg, axle.LeftLoadN, other?.Left), Wheel(right, axle.RightCamberDeg, axle.RightToeDeg, axle.RightLoadN, other?.Right))
            {
                AreBendsTold = use.LateralG is not null,
            };

            WheelUse Wheel(WheelPosition position, double camberDeg, double toeDeg, double loadN, WheelUse? like) => new()
            {
                Corners = Bends(position, work, like),
                CamberDeg = camberDeg,
                ToeDeg = toeDeg,
                LoadN = loadN,
                TyreRateNPerMm = axle.TyreRateNPerMm,
                TreadWidthMm = widthMm,
                RadiusMm = axle.LoadedRadiusMm,
            };
        }

        BendLoad[] Bends(WheelPosition position, double work, WheelUse? like)
        {
            var bends = new BendLoad[now.Length];
            for (var i = 0; i < bends.Length; i++)
            {
                var wheel = now[i].At(position);
                var perCamber = like?.Corners[i].PerCamber ?? ((leaned![i].At(position).InclinationAngleDeg - wheel.InclinationAngleDeg) / CamberStepDeg);
                bends[i] = new(2 * turns[i].Share * Work(wheel) / work, wheel.LoadN, wheel.InclinationAngleDeg, perCamber, wheel.IsOuter);
            }

            return bends;
        }
    }

    private const double UsualTreadWidthMm = 185;

    private static double Work(in WheelAttitude wheel) => Math.Abs(wheel.SideForceN * wheel.SlipDeg);
}
