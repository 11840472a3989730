using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// Finds the static camber with which the outer wheel's inclination to the road, weighted by load times slip times time over a mix of corners,
/// averages a target. Method page: docs/methods/camber-target.
/// </summary>
public sealed class CamberTargetSearch
{
    /// <summary>Largest static camber searched, degrees, either sign.</summary>
    public const double LargestDeg = 15;

    private const double AgreedDeg = 1e-9;
    private const int MostTries = 20;
    internal const double SlopeStepDeg = 0.02;

    // Differences of camber below this, degrees, are rounding and give no slope.
    private const double LeastLearntDeg = 1e-4;

    private readonly ResolvedHandlingCar _reading;
    private readonly CamberDemand _demand;
    private readonly BendSeries _series;
    private readonly WorkBudget? _budget;

    private CamberTargetSearch(ResolvedHandlingCar reading, CamberDemand demand, WorkBudget? budget)
    {
        (_reading, _demand, _budget) = (reading, demand, budget);
        _series = new BendSeries(demand, budget);
    }

    /// <summary>Solves only the camber of both wheels, degrees; null with the failure where there is none.</summary>
    public static double? CamberDeg(HandlingCar car, CamberDemand demand, out CamberTargetFailure? failure, WorkBudget? budget = null)
    {
        var search = new CamberTargetSearch(new(car, [], []), demand, budget);
        return search.Find(car, null, out failure)?.CamberDeg;
    }

    /// <summary>Solves the camber with everything it depends on; null with the failure where there is none.</summary>
    /// <param name="reading">The car.</param>
    /// <param name="demand">What is asked.</param>
    /// <param name="castersDeg">Other casters to answer for; the present one is answered too.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <param name="failure">Why there is none.</param>
    public static CamberTargetResult? Solve(ResolvedHandlingCar reading, CamberDemand demand, IReadOnlyList<double> castersDeg, WorkBudget? budget, out CamberTargetFailure? failure)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(castersDeg);
        return new CamberTargetSearch(reading, demand, budget).Whole(castersDeg, out failure);
    }

    private CamberTargetResult? Whole(IReadOnlyList<double> castersDeg, out CamberTargetFailure? failure)
    {
        var car = _reading.Car;
        if (_series.Works(car) is not { } worksNow)
        {
            failure = new(_series.Failure, _series.Failed);
            return null;
        }

        var now = BendSeries.MeanDeg(worksNow, null)!.Value;
        if (Find(car, null, out failure) is not { } found) return null;
        var set = With(car, found.CamberDeg);
        if (_series.Works(set) is not { } works) return Spent(out failure);
        if (_budget is { IsSpent: true }) return Spent(out failure);
        var nearest = _demand.Adjustable is { } reach ? Math.Clamp(found.CamberDeg, reach.MinimumDeg, reach.MaximumDeg) : found.CamberDeg;
        var meanAtNearest = nearest == found.CamberDeg ? _demand.TargetInclinationDeg : MeanDeg(car, nearest);
        var perCamber = MeanDeg(car, found.CamberDeg - SlopeStepDeg) is { } below ? (_demand.TargetInclinationDeg - below) / SlopeStepDeg : found.PerCamber;
        var sensitivities = new CamberSensitivities(_reading, _demand, _series, _budget).At(set);
        if (_budget is { IsSpent: true }) return Spent(out failure);
        var steers = _demand.Axle == CarAxle.Front;
        var caster = HandlingInputs.For(_demand.Axle).Caster;
        return new CamberTargetResult
        {
            StaticCamberDeg = new(found.CamberDeg, Math.Sqrt(sensitivities.Sum(one => one.LeavesOpenDeg * one.LeavesOpenDeg))),
            LeftDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Right),
            RightDeg = OneSide(works, found.CamberDeg, perCamber, TurnDirection.Left),
            MeanInclinationNowDeg = now,
            NearestCamberDeg = nearest,
            MeanInclinationAtNearestDeg = meanAtNearest,
            Corners = works,
            Sensitivities = sensitivities,
            SavedPerCasterDeg = steers ? sensitivities.FirstOrDefault(one => one.Place == "/vehicle" + caster.Place)?.DegPerUnit : null,
            SavedPerCasterInTightestDeg = steers ? CamberSensitivities.SavedInTightest(_demand, set, _budget) : null,
            WithCaster = steers ? [.. castersDeg.Select(deg => new CamberForCaster(deg, CamberFor(car, deg, found, caster)))] : [],
        };
    }

    private CamberTargetResult? Spent(out CamberTargetFailure? failure)
    {
        failure = new(_series.Failure ?? CorneringFailure.WorkSpent, _demand.Hardest.Demand);
        return null;
    }

    /// <summary>The camber and the slope of the mean inclination there.</summary>
    private (double CamberDeg, double PerCamber)? Find(HandlingCar car, double? startDeg, out CamberTargetFailure? failure)
    {
        failure = null;
        var input = HandlingInputs.For(_demand.Axle).Camber;
        var (camber, perCamber) = (startDeg ?? input.Read(car), 1.0);
        (double CamberDeg, double OffDeg)? before = null;
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (_series.Works(With(car, camber)) is not { } works)
            {
                failure = new(_series.Failure, _series.Failed);
                return null;
            }

            var off = BendSeries.MeanDeg(works, null)!.Value - _demand.TargetInclinationDeg;
            if (before is { } last && Math.Abs(camber - last.CamberDeg) > LeastLearntDeg) perCamber = (off - last.OffDeg) / (camber - last.CamberDeg);
            if (Math.Abs(off) <= AgreedDeg) return (camber, perCamber);
            before = (camber, off);

            // A wheel leans nearly as much as its camber is set; another slope is a stop or a lifted wheel on the way.
            camber = Math.Clamp(camber - (off / Math.Clamp(perCamber, 0.3, 3)), -2 * LargestDeg, 2 * LargestDeg);
        }

        failure = new(null, _demand.Hardest.Demand);
        return null;
    }

    private double? MeanDeg(HandlingCar car, double camberDeg) =>
        _series.Works(With(car, camberDeg)) is { } works ? BendSeries.MeanDeg(works, null) : null;

    private double? OneSide(BendWork[] works, double camberDeg, double perCamber, TurnDirection turn) =>
        BendSeries.MeanDeg(works, turn) is { } mean ? camberDeg - ((mean - _demand.TargetInclinationDeg) / perCamber) : null;

    private double? CamberFor(HandlingCar car, double casterDeg, (double CamberDeg, double PerCamber) found, HandlingInput caster) =>
        Find(caster.Put(car, casterDeg), found.CamberDeg, out _)?.CamberDeg;

    private HandlingCar With(HandlingCar car, double camberDeg) => _demand.Set(car, camberDeg);
}

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

    public CorneringFailure? Failure { get; private set; }

    /// <summary>The corner that has no equilibrium; set where <see cref="Failure"/> is.</summary>
    public CorneringDemand Failed { get; private set; }

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
        for (var i = 0; i < works.Length; i++)
        {
            var demand = _corners[i].Demand;
            if (Solver(car, i, keeps) is not { } solver) return null;
            Failure = solver.Solve(demand.LateralG, demand.RadiusM);
            Failed = demand;
            if (Failure is not null) return null;
            if (keeps) _stands[i] = solver;
            var attitude = solver.Attitude(demand);
            var wheel = attitude.Outer(_demand.Axle);
            var work = _corners[i].Share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
            works[i] = new(_corners[i], attitude, wheel.InclinationAngleDeg, wheel.LoadN, wheel.SlipDeg, work);
            sum += work;
        }

        for (var i = 0; i < works.Length; i++) works[i] = works[i] with { Work = works[i].Work / sum };
        return works;
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
