using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// The outer wheel of an axle in every corner of a demand, for similar cars: each is solved from the last one's solution in the same
/// corner. Not safe for several threads.
/// </summary>
internal sealed class BendSeries
{
    private readonly CamberDemand _demand;
    private readonly WorkBudget? _budget;
    private readonly BendShare[] _corners;
    private readonly CorneringSolver?[] _stands;
    private CorneringSolver? _left;
    private CorneringSolver? _right;

    public BendSeries(CamberDemand demand, WorkBudget? budget)
    {
        (_demand, _budget) = (demand, budget);

        // The hardest first: what its tyres must hold they hold in all.
        _corners = [.. demand.Corners.OrderByDescending(corner => corner.Demand.LateralG)];
        _stands = new CorneringSolver?[_corners.Length];
    }

    public CorneringFailure? Failure { get; private set; }

    /// <summary>The corner that has no equilibrium; set where <see cref="Failure"/> is.</summary>
    public CorneringDemand Failed { get; private set; }

    /// <summary>How far the tyres' peak was scaled in the last series.</summary>
    public double PeakScale { get; private set; }

    /// <summary>The wheel in every corner with a car's own camber; null where a corner has no equilibrium. Later series start from this one's solutions.</summary>
    public BendWork[]? Works(HandlingCar car)
    {
        ForgetSolvers();
        return Works(car, keeps: true);
    }

    /// <summary>The mean inclination, degrees, weighted by the work, of a car a little different; null where a corner has no equilibrium.</summary>
    public double? VariedMeanDeg(HandlingCar car, TurnDirection? only = null)
    {
        ForgetSolvers();
        return Works(car, keeps: false) is { } works ? MeanDeg(works, only) : null;
    }

    /// <summary>The mean inclination of a series, degrees; null where none of the turns asked for does work.</summary>
    public static double? MeanDeg(BendWork[] works, TurnDirection? only)
    {
        var (mean, sum) = (0.0, 0.0);
        foreach (var one in works)
        {
            if (only is { } turn && one.Turn != turn) continue;
            mean += one.Work * one.InclinationAngleDeg;
            sum += one.Work;
        }

        return sum > 0 ? mean / sum : null;
    }

    private void ForgetSolvers() => (_left, _right) = (null, null);

    private BendWork[]? Works(HandlingCar car, bool keeps)
    {
        var works = new BendWork[_corners.Length];
        var sum = 0.0;
        if (PeakOf(car) is not { } leastPeakScale) return null;
        PeakScale = leastPeakScale;
        for (var i = 0; i < works.Length; i++)
        {
            var demand = _corners[i].Demand;
            if (Solver(car, i, keeps) is not { } solver) return null;
            Failure = solver.Solve(demand.LateralG, demand.RadiusM, PeakScale);
            Failed = demand;
            if (Failure is not null) return null;
            if (keeps) _stands[i] = solver;
            var attitude = solver.Attitude(demand);
            if (i == 0) PeakScale = attitude.PeakScale;
            var wheel = attitude.Outer(_demand.Axle);
            var work = _corners[i].Share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
            works[i] = new(_corners[i], wheel.InclinationAngleDeg, wheel.LoadN, wheel.SlipDeg, work);
            sum += work;
        }

        for (var i = 0; i < works.Length; i++) works[i] = works[i] with { Work = works[i].Work / sum };
        return works;
    }

    private double? PeakOf(HandlingCar car)
    {
        var hardest = _corners[0].Demand;
        if (!(_demand.HeldLateralG > hardest.LateralG)) return 1;
        if (Solver(car, 0, keeps: false) is not { } solver) return null;
        Failure = solver.Solve(_demand.HeldLateralG.Value, hardest.RadiusM);
        Failed = hardest with { LateralG = _demand.HeldLateralG.Value };
        return Failure is null ? solver.Attitude(hardest).PeakScale : null;
    }

    private CorneringSolver? Solver(HandlingCar car, int index, bool keeps)
    {
        var turn = _corners[index].Demand.Turn;
        var solver = keeps
            ? CorneringSolver.Create(car, turn, _budget)
            : turn == TurnDirection.Left ? _left ??= CorneringSolver.Create(car, turn, _budget) : _right ??= CorneringSolver.Create(car, turn, _budget);
        if (solver is null) Failure = CorneringFailure.TravelNotReached;
        if (_stands[index] is { } stand) solver?.StartFrom(stand);
        return solver;
    }
}

/// <summary>What the outer wheel does in one kind of corner.</summary>
/// <param name="Corner">The corner.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees.</param>
/// <param name="LoadN">Load, N.</param>
/// <param name="SlipDeg">Slip angle, degrees.</param>
/// <param name="Work">Share of the whole work, load times slip times time, 0 to 1.</param>
public readonly record struct BendWork(BendShare Corner, double InclinationAngleDeg, double LoadN, double SlipDeg, double Work)
{
    /// <summary>The direction of turn.</summary>
    public TurnDirection Turn => Corner.Demand.Turn;
}

/// <summary>
/// Slope of the mean inclination by static camber, to either side of the solution: at zero inclination the example tyre's stiffness has a kink, so the two
/// need not be alike.
/// </summary>
/// <param name="Below">Degrees of mean inclination per degree of camber towards more negative.</param>
/// <param name="Above">The same towards less negative.</param>
internal readonly record struct CamberSlopes(double Below, double Above)
{
    /// <summary>The change of camber, degrees, that cancels a change of the mean, degrees; the slope is that of the side the mean moved to.</summary>
    public double TakingBack(double meanDeg) => -meanDeg / (meanDeg > 0 ? Above : Below);
}
