using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering.Effects;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Solves steady turns of one car along one path (fixed radius or fixed speed) at any lateral acceleration. Not thread-safe.
/// </summary>
public sealed class CorneringRun
{
    // As a share of the car's weight.
    private const double HardlyAnything = 0.02;

    // Just below the limit, g, where the iteration converges from any start.
    private const double JustShortG = 0.005;

    // From so hard a turn, g, what crosses the car is told on to harder ones, as growing at most so many times as fast as so far.
    private const double LeastGForInner = 0.3;
    private const double MostGrowth = 2;

    private readonly CorneringSolver _solver;
    private readonly HandlingCar _car;
    private readonly TurnPath _path;
    private readonly Dictionary<CorneringFailure, (double G, bool IsUnloaded)> _limits = [];
    private double _rollsOverAtG = double.PositiveInfinity;
    private double _standsToG;
    private (double G, double LoadN) _inner;

    private CorneringRun(CorneringSolver solver, HandlingCar car, TurnPath path) => (_solver, _car, _path) = (solver, car, path);

    /// <summary>Creates a run; null where the hardpoints do not close at ride height. The car must have a wheelbase.</summary>
    /// <param name="car">The car, on its scale of grip.</param>
    /// <param name="path">Which way, and at which radius or speed.</param>
    /// <param name="budget">Work allowed for all turns together; null = any.</param>
    public static CorneringRun? Create(HandlingCar car, in TurnPath path, WorkBudget? budget = null) =>
        CorneringSolver.Create(car, path.Turn, budget) is { } solver ? new(solver, car, path) : null;

    /// <summary>The car in the turn at a lateral acceleration, g, not negative; null where there is no equilibrium.</summary>
    /// <param name="lateralG">Lateral acceleration.</param>
    /// <param name="obstacle">Why there is none; null where there is.</param>
    public SteadyTurn? At(double lateralG, out CorneringObstacle? obstacle)
    {
        obstacle = Known(lateralG);
        if (obstacle is not null) return null;
        if (SteadyTurn.Solve(_solver, _path.At(lateralG), out var failure) is { } turn)
        {
            _standsToG = Math.Max(_standsToG, lateralG);
            _inner = (lateralG, _solver.InnerLoadN);
            return turn;
        }

        obstacle = Met(failure!.Value, lateralG);
        return null;
    }

    /// <summary>Lateral acceleration at which the car rolls over, g, where that is within <paramref name="moreG"/> of <paramref name="lateralG"/>; else null.</summary>
    public double? RollOverWithin(double lateralG, double moreG)
    {
        var failedG = lateralG + moreG;
        if (failedG <= _standsToG || KeepsInnerLoad(failedG)) return null;
        return _solver.Solve(_path.At(failedG)) is CorneringFailure.RollsOver ? RollOver.LimitG(_solver, _path, failedG) : null;
    }

    // What crosses the car grows in proportion to lateral acceleration, and a little more as the body leans out: where the inner wheels would keep load if it grew so much faster than so far, nothing rolls over.
    private bool KeepsInnerLoad(double lateralG) =>
        _inner.G >= LeastGForInner && _inner.LoadN > MostGrowth * (_solver.InnerStaticLoadN - _inner.LoadN) * (lateralG - _inner.G) / _inner.G;

    /// <summary>What every assumed input does to the car in a turn of this lateral acceleration, g.</summary>
    /// <param name="reading">The car with what was assumed of it.</param>
    /// <param name="lateralG">Lateral acceleration.</param>
    public IReadOnlyList<CorneringEffect> Effects(ResolvedHandlingCar reading, double lateralG) => CorneringEffect.Compute(reading, _solver, _path, lateralG);

    /// <summary>Both limits along the path, with what the inputs leave open.</summary>
    /// <param name="reading">The car with what was assumed of it.</param>
    /// <param name="guessG">Where to begin, g, above 0.</param>
    /// <param name="heldLateralG">What the car was measured to hold, g; null = not known.</param>
    public LimitStudy Limits(ResolvedHandlingCar reading, double guessG, double? heldLateralG)
    {
        // By a solver of its own, so that this one stays at the turn last asked for.
        var study = LimitStudy.Compute(reading, _solver.With(_car) ?? _solver, _path, guessG, heldLateralG);
        _standsToG = Math.Max(_standsToG, Math.Max(study.Limits.Front.StandsToG, study.Limits.Rear.StandsToG));
        return study;
    }

    /// <summary>What earlier turns already decide: a car that rolled over does so in every harder turn.</summary>
    private CorneringObstacle? Known(double lateralG) => lateralG >= _rollsOverAtG ? Obstacle(CorneringFailure.RollsOver, lateralG, null) : null;

    private CorneringObstacle Met(CorneringFailure failure, double lateralG)
    {
        var beyond = _solver.BeyondReadings;
        if (failure == CorneringFailure.RollsOver) _rollsOverAtG = Math.Min(_rollsOverAtG, lateralG);
        return Obstacle(failure, lateralG, beyond);
    }

    private CorneringObstacle Obstacle(CorneringFailure failure, double failedG, WheelReach? beyond)
    {
        if (!_limits.TryGetValue(failure, out var limit) || limit.G >= failedG)
        {
            var limitG = RollOver.LimitG(_solver, _path, failedG);
            _limits[failure] = limit = (limitG, IsUnloadedAt(limitG));
        }

        return new(failure, failedG, limit.G, limit.IsUnloaded) { Reach = failure == CorneringFailure.TravelNotReached ? beyond ?? SuspensionReach.Find(_car, _path, failedG) : null };
    }

    private bool IsUnloadedAt(double limitG)
    {
        var demand = _path.At(Math.Max(0, limitG - JustShortG));
        if (_solver.Solve(demand) is not null) return false;
        var turn = _solver.Attitude(demand);
        WheelAttitude[] wheels = [turn.FrontLeft, turn.FrontRight, turn.RearLeft, turn.RearRight];
        return wheels.Where(wheel => !wheel.IsOuter).Sum(wheel => wheel.LoadN) < HardlyAnything * wheels.Sum(wheel => wheel.LoadN);
    }
}

/// <summary>Why there is no equilibrium.</summary>
public enum CorneringFailure
{
    /// <summary>The inner side is without load: the car would roll over.</summary>
    RollsOver,

    /// <summary>The suspension, or its readings, do not reach the travel or steer the turn asks for.</summary>
    TravelNotReached,

    /// <summary>Braking or driving so hard, an axle would carry nothing.</summary>
    AxleUnloaded,

    /// <summary>The work allowed was spent, or the caller has gone.</summary>
    WorkSpent,
}

/// <summary>Why a car has no equilibrium in a turn, and how far it would have one.</summary>
/// <param name="Failure">Why.</param>
/// <param name="LateralG">At which lateral acceleration, g.</param>
/// <param name="LimitG">Up to which lateral acceleration along the same path there is an equilibrium, g.</param>
/// <param name="IsUnloadedThere">True when the inner wheels carry hardly any load at that limit; else the iteration itself ends there.</param>
public readonly record struct CorneringObstacle(CorneringFailure Failure, double LateralG, double LimitG, bool IsUnloadedThere)
{
    /// <summary>The wheel that would have to travel further than its points close, or an outer one further than was read of it; null where that is not why.</summary>
    public WheelReach? Reach { get; init; }
}
