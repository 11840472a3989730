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
    /// <param name="slopes">What wears the same car set, or fitted, otherwise: the change of an inclination by a degree of camber is taken from it; null = worked out.</param>
    public static TrackUse? Solve(HandlingCar car, Vehicle vehicle, in WearUse use, WorkBudget? budget = null, TrackUse? slopes = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(vehicle);
        var turns = Turns(use);
        if (Attitudes(car, turns, budget) is not { } now) return null;
        var leaned = slopes is null ? Attitudes(Leaned(car), turns, budget) : null;
        if (slopes is null && leaned is null) return null;
        var areTold = use.LateralG is not null;
        return new(At(CarAxle.Front), At(CarAxle.Rear));

        AxleUse At(CarAxle at) => Axle(car, vehicle, at, now, leaned, slopes?.At(at)) with { AreBendsTold = areTold };
    }

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

    private static (CorneringAttitude At, double Share)[]? Attitudes(HandlingCar car, (CorneringDemand Demand, double Share)[] turns, WorkBudget? budget)
    {
        var list = new (CorneringAttitude, double)[turns.Length];
        CorneringSolver? solver = null;
        for (var i = 0; i < turns.Length; i++)
        {
            var demand = turns[i].Demand;
            var isFirst = i == 0 || turns[i - 1].Demand.Turn != demand.Turn;
            solver = isFirst ? CorneringSolver.Create(car, demand.Turn, budget) : solver;
            if (solver?.Solve(demand.LateralG, demand.RadiusM) is not null || solver is null) return null;
            list[i] = (solver.Attitude(demand), turns[i].Share);
        }

        return list;
    }

    private static HandlingCar Leaned(HandlingCar car) => car with { Front = Leaned(car.Front), Rear = Leaned(car.Rear) };

    private static HandlingAxle Leaned(HandlingAxle axle) =>
        axle with { LeftCamberDeg = axle.LeftCamberDeg + CamberStepDeg, RightCamberDeg = axle.RightCamberDeg + CamberStepDeg };

    private static AxleUse Axle(
        HandlingCar car, Vehicle vehicle, CarAxle at, (CorneringAttitude At, double Share)[] now, (CorneringAttitude At, double Share)[]? leaned, AxleUse? slopes)
    {
        var (left, right) = at == CarAxle.Front ? (WheelPosition.FrontLeft, WheelPosition.FrontRight) : (WheelPosition.RearLeft, WheelPosition.RearRight);
        var work = 0.0;
        foreach (var (turn, share) in now) work += share * (Work(turn.At(left)) + Work(turn.At(right)));
        var axle = car.At(at);
        var widthMm = vehicle.At(at).Tyre is { } tyre ? TreadWidth.Mm(tyre).Value : UsualTreadWidthMm;
        return new(at, Wheel(left, axle.LeftCamberDeg, axle.LeftToeDeg, axle.LeftLoadN), Wheel(right, axle.RightCamberDeg, axle.RightToeDeg, axle.RightLoadN));

        WheelUse Wheel(WheelPosition position, double camberDeg, double toeDeg, double loadN) => new()
        {
            Corners = Corners(position, position == left ? slopes?.Left : slopes?.Right),
            CamberDeg = camberDeg,
            ToeDeg = toeDeg,
            LoadN = loadN,
            TyreRateNPerMm = axle.TyreRateNPerMm,
            TreadWidthMm = widthMm,
            RadiusMm = axle.LoadedRadiusMm,
        };

        BendLoad[] Corners(WheelPosition position, WheelUse? slopes)
        {
            var corners = new BendLoad[now.Length];
            for (var i = 0; i < corners.Length; i++)
            {
                var wheel = now[i].At.At(position);
                var perCamber = leaned is null ? slopes!.Corners[i].PerCamber : (leaned[i].At.At(position).InclinationAngleDeg - wheel.InclinationAngleDeg) / CamberStepDeg;
                corners[i] = new(2 * now[i].Share * Work(wheel) / work, wheel.LoadN, wheel.InclinationAngleDeg, perCamber, wheel.IsOuter);
            }

            return corners;
        }
    }

    private const double UsualTreadWidthMm = 185;

    private static double Work(in WheelAttitude wheel) => Math.Abs(wheel.SideForceN * wheel.SlipDeg);
}
