using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Finds how a car stands in a steady turn: body roll, the heave of its two ends, the travel of its four wheels, its slip and steer, so
/// that loads, side forces and angles agree. Made once for a car and a direction of turn; each turn goes on from the last, and costs no
/// memory. Not safe for several threads. Model, derivation and limits: docs/methods/cornering.
/// </summary>
public sealed class CorneringSolver
{
    /// <summary>What the tyres must be able to give more than the turn takes.</summary>
    public const double Spare = 1.05;

    private const double Closed = 1e-10;

    // Of the weight: with more out of balance a step is too long to tell ahead what it does to the tyres.
    private const double NearlyClosed = 0.2;

    private const int MostSteps = 120;
    private const int SmoothSteps = 20;
    private const int MostHalvings = 10;
    private const int Stages = 16;
    private const double LongestRollSine = 0.06;
    private const double LongestTravelMm = 40;
    private const double FurthestRollRad = 0.7;
    private const double LongestSteerDeg = 12;

    // Of the radius: further ahead or behind the turn's centre does not lie for any slip a tyre can have.
    private const double FurthestCentre = 0.9;

    private readonly HandlingCar _car;
    private readonly CorneringAxle _front;
    private readonly CorneringAxle _rear;
    private readonly TurnDirection _turn;
    private readonly double _rollArmMm;
    private double _rollRad;
    private double _steer;
    private double _centreStationMm;
    private double _centreMm;
    private double _peakScale = 1;
    private double _steerPerHeading;
    private bool _isFresh = true;

    private CorneringSolver(HandlingCar car, CorneringAxle front, CorneringAxle rear, TurnDirection turn)
    {
        (_car, _front, _rear, _turn) = (car, front, rear, turn);
        var share = car.SprungShareFront;
        _rollArmMm = car.SprungHeightMm - ((share * front.RollCentreHeightMm) + ((1 - share) * rear.RollCentreHeightMm));
    }

    /// <summary>Height of the sprung centre of gravity above the roll axis at rest, mm.</summary>
    public double RollArmMm => _rollArmMm;

    /// <summary>Makes a solver; null where points do not close at ride height. The car has a wheelbase.</summary>
    public static CorneringSolver? Of(HandlingCar car, TurnDirection turn)
    {
        ArgumentNullException.ThrowIfNull(car);
        return CorneringAxle.Of(car, CarAxle.Front, turn) is { } front && CorneringAxle.Of(car, CarAxle.Rear, turn) is { } rear
            ? new(car, front, rear, turn)
            : null;
    }

    /// <summary>Solves one turn.</summary>
    /// <param name="lateralG">Lateral acceleration, g, not negative.</param>
    /// <param name="radiusM">Radius, m.</param>
    /// <param name="leastPeakScale">The tyres' peak is scaled by at least this.</param>
    /// <param name="isPeakHeld">The peak is scaled by exactly that, enough or not.</param>
    /// <returns>Null where it is solved, else why not.</returns>
    public CorneringFailure? Solve(double lateralG, double radiusM, double leastPeakScale = 1, bool isPeakHeld = false)
    {
        var grip = new PeakRule(leastPeakScale, isPeakHeld);
        if (Settle(lateralG, radiusM, grip) is null) return null;

        // Through a stop or a lifted wheel the way leads by smaller turns.
        Reset();
        CorneringFailure? failure = null;
        for (var stage = 1; stage <= Stages && failure is null; stage++) failure = Settle(lateralG * stage / Stages, radiusM, grip);
        if (failure is not null) Reset();
        return failure;
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
            SteerDeg = _front.HeadingDeg,
            PeakScale = _peakScale,
            Front = _front.Attitude(),
            Rear = _rear.Attitude(),
            FrontLeft = leftIsOuter ? outerFront : innerFront,
            FrontRight = leftIsOuter ? innerFront : outerFront,
            RearLeft = leftIsOuter ? outerRear : innerRear,
            RearRight = leftIsOuter ? innerRear : outerRear,
        };
    }

    /// <summary>
    /// Steer by the driver in the turn last solved, less what the turn's own geometry takes, degrees, positive = into the turn: the mean heading the
    /// rack gives the front wheels at rest height, toe off, less the difference of the directions both axles' middles move in.
    /// </summary>
    public double SteerBeyondTurnDeg => _front.SteeredByDeg(_steer) - (PathDeg(_front, _centreMm) - PathDeg(_rear, _centreMm));

    /// <summary>Roll of the body in the turn last solved, degrees; positive = out of the turn.</summary>
    public double RollDeg => double.RadiansToDegrees(_rollRad);

    /// <summary>Starts the next turn from where another solver of a like car stands.</summary>
    public void StartFrom(CorneringSolver other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _front.StartFrom(other._front);
        _rear.StartFrom(other._rear);
        (_rollRad, _steer, _centreStationMm, _peakScale) = (other._rollRad, other._steer, other._centreStationMm, other._peakScale);
        _isFresh = true;
    }

    private void Reset()
    {
        _front.Reset();
        _rear.Reset();
        (_rollRad, _steer, _centreStationMm, _peakScale, _isFresh) = (0, 0, 0, 1, true);
    }

    private CorneringFailure? Settle(double lateralG, double radiusM, in PeakRule grip)
    {
        var acceleration = lateralG * HandlingCar.StandardGravity;
        _front.Demand(acceleration);
        _rear.Demand(acceleration);
        _peakScale = grip.IsHeld ? grip.Least : Math.Max(_peakScale, grip.Least);
        _centreStationMm = Math.Clamp(_centreStationMm, -FurthestCentre * radiusM * 1000, FurthestCentre * radiusM * 1000);
        if (_isFresh)
        {
            if (!Guide()) return CorneringFailure.TravelNotReached;
            _isFresh = false;
        }

        var weight = _front.StaticLoadN + _rear.StaticLoadN;
        for (var step = 0; step < MostSteps; step++)
        {
            var (sin, cos) = Math.SinCos(_rollRad);
            _front.Stand(_rollRad, sin, cos);
            _rear.Stand(_rollRad, sin, cos);
            if (!TrySlip(radiusM * 1000, grip, out var front, out var rear, out var turned)) return CorneringFailure.GripExceeded;
            var moved = turned + _rear.Pull(rear, acceleration) + _front.Pull(front, acceleration);
            var rest = Balance(acceleration, sin, cos, out var change);
            if (rest <= Closed && moved <= 10 * Closed * weight && step > 0) return IsStanding() ? null : CorneringFailure.RollsOver;
            if (!double.IsFinite(change.RollSine)) return CorneringFailure.RollsOver;
            if (rest <= NearlyClosed && step < SmoothSteps) SteerAhead(change, cos, radiusM * 1000, grip);
            if (!Step(change, Patience(step))) return CorneringFailure.TravelNotReached;
            if (Math.Abs(_rollRad) > FurthestRollRad) return CorneringFailure.RollsOver;
        }

        return CorneringFailure.RollsOver;
    }

    /// <summary>How much of a step is taken: all of it, until that is seen to jump to and fro over the kink of a stop or a lifting wheel.</summary>
    private static double Patience(int step) => step < SmoothSteps ? 1 : step % SmoothSteps < SmoothSteps / 2 ? 0.5 : 0.2;

    private bool IsStanding() => _front.Inner.LoadN + _rear.Inner.LoadN > 0;

    private bool Guide() => _front.TryGuide(_steer) && _rear.TryGuide(0);

    /// <summary>
    /// Finds the slip of both axles at the present loads, where the turn's centre lies and how far the wheels must be steered; false where
    /// the tyres cannot hold.
    /// </summary>
    /// <param name="radiusMm">Radius.</param>
    /// <param name="grip">How far the peak may be scaled.</param>
    /// <param name="front">The front tyres.</param>
    /// <param name="rear">The rear tyres.</param>
    /// <param name="turnedN">What of steer, centre and peak was still to come, each as a share of the weight, N.</param>
    private bool TrySlip(double radiusMm, in PeakRule grip, out TyrePair front, out TyrePair rear, out double turnedN)
    {
        var centreMm = CentreMm(radiusMm);
        rear = _rear.Tyres(_peakScale, _centreStationMm, centreMm, PathDeg(_rear, centreMm));
        front = _front.Tyres(_peakScale, _centreStationMm, centreMm, PathDeg(_front, centreMm));
        var before = _peakScale;
        if (!grip.IsHeld)
        {
            var need = Math.Max(_front.PeakNeed(front, _peakScale, Spare), _rear.PeakNeed(rear, _peakScale, Spare));
            _peakScale = Math.Max(grip.Least, double.IsFinite(need) ? need : 2 * _peakScale);
            if (_peakScale != before) (front, rear) = (front.WithPeak(_peakScale / before), rear.WithPeak(_peakScale / before));
        }

        turnedN = 0;
        if (!_rear.TrySlip(rear) || !_front.TrySlip(front)) return false;

        // The rear wheels' path gives the turn's centre; kept within the turn for any slip a tyre can have.
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(_rear.HeadingDeg - _rear.SlipDeg));
        var station = Math.Clamp(_rear.StationMm - (centreMm * sin / cos), -FurthestCentre * radiusMm, FurthestCentre * radiusMm);
        var centreMoved = Math.Abs(station - _centreStationMm) / radiusMm;
        _centreStationMm = station;
        _centreMm = CentreMm(radiusMm);
        _steerPerHeading = _front.SlipDeg + PathDeg(_front, _centreMm) - _front.HeadingDeg;
        turnedN = (Math.Abs(_steerPerHeading) + centreMoved + Math.Abs((_peakScale / before) - 1)) * (_front.StaticLoadN + _rear.StaticLoadN);
        return true;
    }

    /// <summary>
    /// Finds the steer for the loads a step leads to, so that the two do not run after each other; else that for the present loads stays.
    /// </summary>
    private void SteerAhead(in BodyChange change, double cos, double radiusMm, in PeakRule grip)
    {
        var rollRad = change.RollSine / cos;
        if (!_front.TryLead(change.Front, change.FrontHeaveMm, change.RollSine, rollRad)
            || !_rear.TryLead(change.Rear, change.RearHeaveMm, change.RollSine, rollRad)) return;
        var peakScale = _peakScale;
        if (!TrySlip(radiusMm, grip, out _, out _, out _)) _peakScale = peakScale;
    }

    /// <summary>How far the turn's centre lies to the side of the car.</summary>
    private double CentreMm(double radiusMm) => Math.Sqrt((radiusMm * radiusMm) - (_centreStationMm * _centreStationMm));

    private double PathDeg(CorneringAxle axle, double centreMm) =>
        double.RadiansToDegrees(Math.Atan2(axle.StationMm - _centreStationMm, centreMm));

    /// <summary>What is out of balance, as a share of the weight, and the change of roll, heave and travels that Newton's method takes from it.</summary>
    private double Balance(double acceleration, double sin, double cos, out BodyChange change)
    {
        var mass = _car.SprungMassKg;
        var share = _car.SprungShareFront;
        var weight = mass * HandlingCar.StandardGravity;
        var height = _car.SprungHeightMm + (share * _front.HeaveMm) + ((1 - share) * _rear.HeaveMm) - (_rollArmMm * (1 - cos));
        var moment = (mass * acceleration * height) + (weight * _rollArmMm * sin) + _front.UnsprungMomentNmm + _rear.UnsprungMomentNmm;
        var perRoll = (-mass * acceleration * _rollArmMm * sin / cos) + (weight * _rollArmMm);

        var front = AxleBalance.Of(_front);
        var rear = AxleBalance.Of(_rear);
        var frontOff = _front.LoadN - _front.StaticLoadN;
        var rearOff = _rear.LoadN - _rear.StaticLoadN;
        var momentOff = (2 * _front.MovedN * _front.HalfTrackMm) + (2 * _rear.MovedN * _rear.HalfTrackMm) - moment;

        // Each axle's load gives its heave by the roll; what is left is one equation for the roll.
        var frontHeave = front.HeaveFor(-frontOff);
        var rearHeave = rear.HeaveFor(-rearOff);
        var frontMoment = front.Moment(frontHeave, _front.HalfTrackMm);
        var rearMoment = rear.Moment(rearHeave, _rear.HalfTrackMm);
        var byFrontHeave = mass * acceleration * share;
        var byRearHeave = mass * acceleration * (1 - share);
        var fixedPart = momentOff + frontMoment.Fixed + rearMoment.Fixed - (byFrontHeave * frontHeave.Fixed) - (byRearHeave * rearHeave.Fixed);
        var rollPart = frontMoment.PerRoll + rearMoment.PerRoll - perRoll - (byFrontHeave * frontHeave.PerRoll) - (byRearHeave * rearHeave.PerRoll);

        // With nothing left that resists roll the car falls over.
        var roll = rollPart > 1e-9 * weight ? -fixedPart / rollPart : double.NaN;
        var (frontRise, rearRise) = (frontHeave.Fixed + (frontHeave.PerRoll * roll), rearHeave.Fixed + (rearHeave.PerRoll * roll));
        change = new(roll, frontRise, rearRise, front.Travels(frontRise, roll), rear.Travels(rearRise, roll));
        var whole = _front.StaticLoadN + _rear.StaticLoadN;
        return Math.Max(
            Math.Max(Math.Max(front.Largest, rear.Largest), Math.Max(Math.Abs(frontOff), Math.Abs(rearOff))) / whole,
            Math.Abs(momentOff) / (whole * (_front.HalfTrackMm + _rear.HalfTrackMm)));
    }

    /// <summary>Takes a step, shortened where it is long or leads where a wheel cannot be; false where even a short one does.</summary>
    private bool Step(in BodyChange change, double longest)
    {
        var steer = Math.Clamp(_steerPerHeading, -LongestSteerDeg, LongestSteerDeg) / HeadingPerSteer();
        var share = Math.Min(longest, Math.Min(LongestRollSine / Math.Abs(change.RollSine), LongestTravelMm / change.LargestTravelMm));
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            Move(change, share, steer * share);
            if (Guide()) return true;
            Move(change, -share, -steer * share);
            share /= 2;
        }

        return false;
    }

    private void Move(in BodyChange change, double share, double steer)
    {
        _rollRad = Math.Asin(Math.Clamp(Math.Sin(_rollRad) + (share * change.RollSine), -1, 1));
        _steer += steer;
        _front.HeaveMm += share * change.FrontHeaveMm;
        _rear.HeaveMm += share * change.RearHeaveMm;
        _front.Outer.TravelMm += share * change.Front.Outer;
        _front.Inner.TravelMm += share * change.Front.Inner;
        _rear.Outer.TravelMm += share * change.Rear.Outer;
        _rear.Inner.TravelMm += share * change.Rear.Inner;
    }

    // A rack that turns the wheels hardly at all cannot steer; the least keeps the step finite and the guide refuses it.
    private double HeadingPerSteer()
    {
        var per = (_front.Outer.Guided.HeadingPerSteer + _front.Inner.Guided.HeadingPerSteer) / 2;
        return Math.Abs(per) > 1e-3 ? per : 1e-3;
    }
}
