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

        // The hardest first.
        _corners = [.. demand.Corners.OrderByDescending(corner => corner.Demand.LateralG)];
        _stands = new CorneringSolver?[_corners.Length];
    }

    /// <summary>The same corners taken otherwise, in the same order, solved from where another series stands.</summary>
    public BendSeries(CamberDemand demand, BendSeries like)
        : this(demand, like._budget) => _stands = (CorneringSolver?[])like._stands.Clone();

    public CorneringFailure? Failure { get; private set; }

    /// <summary>The corner that has no equilibrium; set where <see cref="Failure"/> is.</summary>
    public CorneringDemand Failed { get; private set; }

    /// <summary>The wheel in every corner with a car's own camber; null where a corner has no equilibrium. Later series start from this one's solutions.</summary>
    public BendWork[]? Works(HandlingCar car)
    {
        var works = new BendWork[_corners.Length];
        var sum = 0.0;
        for (var i = 0; i < works.Length; i++)
        {
            var demand = _corners[i].Demand;
            var solver = Nearest(i) is { } stand ? stand.With(car) : CorneringSolver.Create(car, demand.Turn, _budget);
            Failed = demand;
            Failure = solver is null ? CorneringFailure.TravelNotReached : solver.Solve(demand);
            if (Failure is not null) return null;
            _stands[i] = solver;
            var attitude = solver!.Attitude(demand);
            var wheel = attitude.Outer(_demand.Axle);
            var work = _corners[i].Share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
            works[i] = new(_corners[i], attitude, wheel.InclinationAngleDeg, wheel.LoadN, wheel.SlipDeg, work);
            sum += work;
        }

        for (var i = 0; i < works.Length; i++) works[i] = works[i] with { Work = works[i].Work / sum };
        return works;
    }

    /// <summary>The mean inclination, degrees, weighted by the work, of a car a little different from the one last solved; null where a corner has no equilibrium.</summary>
    /// <param name="car">The car.</param>
    /// <param name="only">One corner alone; null = all.</param>
    public double? VariedMeanDeg(HandlingCar car, CorneringDemand? only = null)
    {
        ForgetSolvers();
        var (mean, sum) = (0.0, 0.0);
        for (var i = 0; i < _corners.Length; i++)
        {
            var demand = _corners[i].Demand;
            if (only is { } one && one != demand) continue;
            if (Varied(car, i) is not { } solver) return null;
            Failure = solver.Solve(demand);
            Failed = demand;
            if (Failure is not null) return null;
            var (inclinationDeg, slipDeg, loadN) = solver.OuterWheel(_demand.Axle);
            var work = _corners[i].Share * loadN * Math.Abs(slipDeg);
            mean += work * inclinationDeg;
            sum += work;
        }

        return sum > 0 ? mean / sum : null;
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

    // The same corner of the car solved before, else the last corner solved in the same direction.
    private CorneringSolver? Nearest(int index)
    {
        if (_stands[index] is { } same) return same;
        for (var i = index - 1; i >= 0; i--)
        {
            if (_corners[i].Demand.Turn == _corners[index].Demand.Turn) return _stands[i];
        }

        return null;
    }

    private void ForgetSolvers() => (_left, _right) = (null, null);

    // One solver serves all corners of a direction: what does not differ from the car last solved is shared.
    private CorneringSolver? Varied(HandlingCar car, int index)
    {
        var turn = _corners[index].Demand.Turn;
        var stand = _stands[index];
        ref var solver = ref turn == TurnDirection.Left ? ref _left : ref _right;
        solver ??= stand is not null ? stand.With(car) : CorneringSolver.Create(car, turn, _budget);
        if (solver is null) Failure = CorneringFailure.TravelNotReached;
        if (stand is not null) solver?.StartFrom(stand);
        return solver;
    }
}
