using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering.Balance;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Solves the equilibrium of a car in a steady turn: body roll, heave at both axles, travel of the four wheels, slip and steer, so that
/// loads, side forces and angles agree. Where an axle needs more grip than its tyres have it is given it, so that there is an equilibrium beyond the limit too; what it needs of what they have is told. Created once per car and direction of turn; each solution is the initial guess of the next, and
/// solving allocates nothing. Not thread-safe. Model, derivation and limits: docs/methods/cornering.
/// </summary>
public sealed partial class CorneringSolver
{
    /// <summary>Largest residual of a converged solution, as a share of the weight.</summary>
    internal const double Tolerance = 1e-10;

    /// <summary>The same where a turn is only passed on the way to the one sought: good for a slope by a secant.</summary>
    internal const double RoughTolerance = 1e-6;

    // Largest residual, as a share of the weight, at which tyre forces are predicted along a step; beyond it the step is too long.
    private const double PredictionTolerance = 0.5;
    private const int MostSteps = 120;
    private const int SmoothSteps = 20;
    private const int MostHalvings = 10;
    private const int ContinuationSteps = 16;

    // Longest step: about what a softly sprung car rolls at 1 g. Longer steps jump over stops and lifting wheels.
    private const double LongestRollSine = 0.1;
    private const double LongestTravelMm = 60;
    private const double FurthestRollRad = 0.7;
    private const double LongestSteerDeg = 12;

    // Bound on the turn's centre ahead of or behind the car, as a share of the radius: no slip angle a tyre can have puts it further.
    private const double FurthestCentre = 0.9;

    private HandlingCar _car;
    private SprungBody _body;
    private readonly CorneringAxle _front;
    private readonly CorneringAxle _rear;
    private readonly TurnDirection _turn;
    private readonly WorkBudget? _budget;
    private double _rollRad;
    private double _steer;
    private double _centreStationMm;
    private double _centreMm;
    private bool _needsPoses = true;
    private bool _isHeldBack;

    private CorneringSolver(HandlingCar car, CorneringAxle front, CorneringAxle rear, TurnDirection turn, WorkBudget? budget) =>
        (_car, _body, _front, _rear, _turn, _budget) = (car, SprungBody.From(car), front, rear, turn, budget);

    /// <summary>The outer wheel that the turn last solved takes beyond what was read of its suspension, and its travel from where that was read; null where none is.</summary>
    public WheelReach? BeyondReadings { get; private set; }

    /// <summary>Creates a solver; null where the hardpoints do not close at ride height. The car must have a wheelbase.</summary>
    /// <param name="car">The car.</param>
    /// <param name="turn">Which way it turns.</param>
    /// <param name="budget">Work allowed for all turns together; null = any.</param>
    public static CorneringSolver? Create(HandlingCar car, TurnDirection turn, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        return CorneringAxle.Create(car, CarAxle.Front, turn, budget) is { } front && CorneringAxle.Create(car, CarAxle.Rear, turn, budget) is { } rear
            ? new(car, front, rear, turn, budget)
            : null;
    }

    /// <summary>A solver for a similar car in the same direction of turn, which begins at this one's solution and shares what does not differ; null where the hardpoints do not close at ride height.</summary>
    public CorneringSolver? With(HandlingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        if (_front.With(car, CarAxle.Front, _turn, _budget) is not { } front || _rear.With(car, CarAxle.Rear, _turn, _budget) is not { } rear) return null;
        return new CorneringSolver(car, front, rear, _turn, _budget) { _rollRad = _rollRad, _steer = _steer, _centreStationMm = _centreStationMm };
    }

    /// <summary>Becomes the solver of a similar car, in the state another is in, from which it takes what does not differ; false, and of no further use but for this, where the hardpoints do not close at ride height. Allocates nothing where wheels move as the other's.</summary>
    /// <param name="car">The car.</param>
    /// <param name="like">The other, of the same direction of turn.</param>
    internal bool TryTake(HandlingCar car, CorneringSolver like)
    {
        if (!_front.TryTake(car, CarAxle.Front, like._front) || !_rear.TryTake(car, CarAxle.Rear, like._rear)) return false;
        (_car, _body, _rollRad, _steer, _centreStationMm, _needsPoses) = (car, SprungBody.From(car), like._rollRad, like._steer, like._centreStationMm, true);
        return true;
    }

    /// <summary>A solver of the same car in the state this one is in, quicker about there: wheels are moved to second order from where they are.</summary>
    internal CorneringSolver Nearby()
    {
        var nearby = new CorneringSolver(_car, _front.Nearby(), _rear.Nearby(), _turn, _budget);
        (nearby._rollRad, nearby._steer, nearby._centreStationMm, nearby._centreMm, nearby._needsPoses) = (_rollRad, _steer, _centreStationMm, _centreMm, _needsPoses);
        return nearby;
    }

    /// <summary>Solves one turn from the last solution; where that does not converge, by continuation over lateral acceleration from rest.</summary>
    /// <param name="lateralG">Lateral acceleration, g, not negative.</param>
    /// <param name="radiusM">Radius, m.</param>
    /// <returns>Null when solved, else the reason.</returns>
    public CorneringFailure? Solve(double lateralG, double radiusM) => Solve(new CorneringDemand(lateralG, radiusM, _turn));

    /// <summary>Solves one turn, braked or driven, from the last solution; where that does not converge, by continuation from rest over all that the turn asks.</summary>
    /// <param name="demand">The turn; its direction is the solver's.</param>
    /// <returns>Null when solved, else the reason.</returns>
    public CorneringFailure? Solve(in CorneringDemand demand) => Solve(demand, Tolerance);

    /// <summary>The same to a tolerance: the largest residual, as a share of the weight.</summary>
    internal CorneringFailure? Solve(in CorneringDemand demand, double tolerance)
    {
        var failure = SolveNear(demand, tolerance);
        if (IsTooTight(demand) || failure is null or CorneringFailure.AxleUnloaded || BeyondReadings is not null) return failure;

        // Continuation in lateral acceleration gets past stops and lifting wheels.
        Reset();
        failure = null;
        var forces = LongitudinalForces.Compute(_car, demand);
        for (var stage = 1; stage <= ContinuationSteps && failure is null; stage++)
        {
            var share = (double)stage / ContinuationSteps;
            failure = SolveFromCurrent(demand with { LateralG = demand.LateralG * stage / ContinuationSteps }, stage == ContinuationSteps ? forces : forces.Scaled(share), tolerance);
        }

        if (failure is null) return Reached();
        Reset();
        if (_budget is { IsSpent: true }) return CorneringFailure.WorkSpent;

        // In so small a turn more than the last no step leads a wheel astray: where one had to be shortened, it is the suspension that ends.
        return failure is CorneringFailure.RollsOver && _isHeldBack ? CorneringFailure.TravelNotReached : failure;
    }

    /// <summary>Solves a turn near the last solution and from it only: where a car followed so does not stand, none nearby is found either, and the solution is lost.</summary>
    internal CorneringFailure? SolveNear(in CorneringDemand demand, double tolerance)
    {
        BeyondReadings = null;
        if (IsTooTight(demand)) return CorneringFailure.TravelNotReached;
        var forces = LongitudinalForces.Compute(_car, demand);
        if (_front.StaticLoadN + forces.FrontLoadN <= 0 || _rear.StaticLoadN + forces.RearLoadN <= 0) return CorneringFailure.AxleUnloaded;
        return SolveFromCurrent(demand, forces, tolerance) ?? Reached();
    }

    // A path round a point nearer than the axles are to each other asks for some half a right angle of steer and more: no car takes it.
    private bool IsTooTight(in CorneringDemand demand) => demand.RadiusM * 1000 < _car.WheelbaseMm;

    // On the way to the equilibrium, and of an inner wheel, what was read is carried on; an outer wheel beyond it would be a guess.
    private CorneringFailure? Reached()
    {
        BeyondReadings = _front.BeyondReadings(CarAxle.Front) ?? _rear.BeyondReadings(CarAxle.Rear);
        return BeyondReadings is null ? null : CorneringFailure.TravelNotReached;
    }

    /// <summary>The wheel that the search last wanted where its suspension does not have it; null where there is none.</summary>
    internal WheelReach? Missed => _front.Missed(CarAxle.Front) ?? _rear.Missed(CarAxle.Rear);

    /// <summary>The wheel of an axle whose suspension does not reach the travel another car's wheels have in a turn; null where both do.</summary>
    internal WheelReach? NotReached(CarAxle at, in CorneringAttitude wanted)
    {
        var (left, right) = at == CarAxle.Front ? (wanted.FrontLeft, wanted.FrontRight) : (wanted.RearLeft, wanted.RearRight);
        var (outer, inner) = _turn == TurnDirection.Left ? (right, left) : (left, right);
        return (at == CarAxle.Front ? _front : _rear).NotReached(at, outer.TravelMm, inner.TravelMm);
    }

    /// <summary>The turn last solved.</summary>
    public CorneringAttitude Attitude(in CorneringDemand demand)
    {
        var leftIsOuter = _turn == TurnDirection.Right;
        var outerFront = _front.Attitude(_front.Outer, _steer);
        var innerFront = _front.Attitude(_front.Inner, _steer);
        var outerRear = _rear.Attitude(_rear.Outer, 0);
        var innerRear = _rear.Attitude(_rear.Inner, 0);
        return new CorneringAttitude
        {
            Demand = demand,
            RollDeg = RollDeg,
            PitchDeg = _car.WheelbaseMm is { } wheelbaseMm ? double.RadiansToDegrees(Math.Atan((_rear.HeaveMm - _front.HeaveMm) / wheelbaseMm)) : 0,
            SteerDeg = _front.HeadingDeg,
            SteeredDeg = _front.SteeredByDeg(_steer),
            Front = _front.Attitude(GripUsed(CarAxle.Front)),
            Rear = _rear.Attitude(GripUsed(CarAxle.Rear)),
            FrontLeft = leftIsOuter ? outerFront : innerFront,
            FrontRight = leftIsOuter ? innerFront : outerFront,
            RearLeft = leftIsOuter ? outerRear : innerRear,
            RearRight = leftIsOuter ? innerRear : outerRear,
        };
    }

    /// <summary>
    /// The driver's steer in the turn last solved less the turn's own geometry (the Ackermann angle), degrees at the road wheels, positive = into the
    /// turn: the mean heading the rack gives the front wheels at rest height, without toe, less the difference between the path directions of the axles' centres.
    /// </summary>
    public double SteerBeyondTurnDeg => _front.SteeredByDeg(_steer) - (PathDeg(_front, _centreMm) - PathDeg(_rear, _centreMm));

    /// <summary>Roll of the body in the turn last solved, degrees; positive = out of the turn.</summary>
    public double RollDeg => double.RadiansToDegrees(_rollRad);

    /// <summary>Takes another solver's solution, of a similar car, as the initial guess of the next turn.</summary>
    public void StartFrom(CorneringSolver other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _front.StartFrom(other._front);
        _rear.StartFrom(other._rear);
        (_rollRad, _steer, _centreStationMm) = (other._rollRad, other._steer, other._centreStationMm);
        _needsPoses = true;
    }

    private void Reset()
    {
        _front.Reset();
        _rear.Reset();
        (_rollRad, _steer, _centreStationMm, _needsPoses) = (0, 0, 0, true);
    }

    private CorneringFailure? SolveFromCurrent(in CorneringDemand demand, in LongitudinalForces forces, double tolerance)
    {
        var (acceleration, radiusM) = (demand.LateralG * HandlingCar.StandardGravity, demand.RadiusM);
        Demand(acceleration, forces);
        _centreStationMm = Math.Clamp(_centreStationMm, -FurthestCentre * radiusM * 1000, FurthestCentre * radiusM * 1000);
        if (_needsPoses)
        {
            if (!TryUpdatePoses()) return CorneringFailure.TravelNotReached;
            _needsPoses = false;
        }

        _isHeldBack = false;
        _front.Outer.Missed = _front.Inner.Missed = _rear.Outer.Missed = _rear.Inner.Missed = null;
        var weight = _front.StaticLoadN + _rear.StaticLoadN;
        for (var step = 0; step < MostSteps; step++)
        {
            if (_budget is not null && !_budget.TrySpend()) return CorneringFailure.WorkSpent;
            var (sin, cos) = Math.SinCos(_rollRad);
            _front.ApplyBody(sin, cos);
            _rear.ApplyBody(sin, cos);
            if (Steer(acceleration, radiusM * 1000, 0) is not { } found) return CorneringFailure.RollsOver;
            var (residual, change) = BodyBalance.Compute(_body, _front, _rear, acceleration, sin, cos, 0);
            if (residual <= tolerance && found.MovedN <= 10 * tolerance * weight && step > 0) return change.IsHeld && IsStanding() ? null : CorneringFailure.RollsOver;
            change = change with { Steer = found.Steer };
            if (residual <= PredictionTolerance && step < SmoothSteps && SteerAhead(change, cos, acceleration, radiusM * 1000) is { } ahead)
            {
                change = BodyBalance.Compute(_body, _front, _rear, acceleration, sin, cos, ahead.Steer).Change;
            }

            if (!double.IsFinite(change.RollSine)) return CorneringFailure.RollsOver;
            if (!Step(change, DampingFactor(step))) return CorneringFailure.TravelNotReached;
            if (Math.Abs(_rollRad) > FurthestRollRad) return CorneringFailure.RollsOver;
        }

        return CorneringFailure.RollsOver;
    }

    /// <summary>Share of a Newton step that is taken: all of it at first, less once the iteration oscillates over the kink of a stop or a lifting wheel.</summary>
    private static double DampingFactor(int step) => step < SmoothSteps ? 1 : step % SmoothSteps < SmoothSteps / 2 ? 0.5 : 0.2;

    private bool IsStanding() => InnerLoadN > 0;

    private bool TryUpdatePoses() => _front.TryUpdatePose(_steer) && _rear.TryUpdatePose(0);

    /// <summary>Line search: takes a step, halved until every wheel can be where it leads; false where even the shortest leads nowhere.</summary>
    private bool Step(in BodyChange change, double longest)
    {
        var share = Math.Min(longest, Math.Min(LongestRollSine / Math.Abs(change.RollSine), LongestTravelMm / change.LargestTravelMm));
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            Move(change, share);
            if (TryUpdatePoses()) return true;
            _isHeldBack = true;
            Move(change, -share);
            share /= 2;
        }

        return false;
    }

    private void Move(in BodyChange change, double share)
    {
        _rollRad = Math.Asin(Math.Clamp(Math.Sin(_rollRad) + (share * change.RollSine), -1, 1));
        _steer += share * change.Steer;
        _front.HeaveMm += share * change.FrontHeaveMm;
        _rear.HeaveMm += share * change.RearHeaveMm;
        _front.Outer.TravelMm += share * change.Front.Outer;
        _front.Inner.TravelMm += share * change.Front.Inner;
        _rear.Outer.TravelMm += share * change.Rear.Outer;
        _rear.Inner.TravelMm += share * change.Rear.Inner;
    }
}
