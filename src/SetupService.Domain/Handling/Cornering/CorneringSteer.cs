using SetupService.Domain.Handling.Cornering.Balance;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>What the tyres do in a step of the solver: how longitudinal forces are shared, slip and side forces of both axles, the turn's centre and the steer needed; and what they use of their grip.</summary>
public sealed partial class CorneringSolver
{
    /// <summary>
    /// Solves slip angles and side forces of both axles at the predicted tyre positions, the turn's centre and the steer needed; null where
    /// an axle has left the road, and side forces then stay as they were.
    /// </summary>
    /// <param name="acceleration">Lateral acceleration, m/s².</param>
    /// <param name="radiusMm">Radius, mm.</param>
    /// <param name="predictedSteer">Steer already included in the predicted tyre positions, in units of the input.</param>
    private SteerSolution? Steer(double acceleration, double radiusMm, double predictedSteer)
    {
        var centreMm = CentreMm(radiusMm);
        if (_heldByTurn is not null) PutGrip();
        var forwardMovedN = ShareLongitudinal();
        var rear = _rear.Tyres(_centreStationMm, centreMm);
        var front = _front.Tyres(_centreStationMm, centreMm);
        if (_heldByTurn is { } heldByTurn)
        {
            // Two tyres turned apart peak together at a slip that goes with their friction, and hold a longitudinal force by it: what they use on the last scale tells how far that was off.
            var off = heldByTurn * Math.Max(_front.GripUsed(front), _rear.GripUsed(rear));
            if (!(off > 0 && double.IsFinite(off))) return null;
            if (predictedSteer == 0) _scales = (_gripScale, _scales.Last);
            _gripScale *= off;
            (front, rear) = (front.WithPeak(off), rear.WithPeak(off));
        }

        if (!_rear.TryHold(ref rear) || !_front.TryHold(ref front)) return null;
        if (_rear.SlipFor(rear) is not { } rearShared || _front.SlipFor(front) is not { } frontShared) return null;
        var movedN = forwardMovedN + _rear.ApplySideForce(rearShared, rear, acceleration) + _front.ApplySideForce(frontShared, front, acceleration);

        // The turn's centre follows from the path of the rear wheels; bounded as for any slip angle a tyre can have.
        var station = Math.Clamp(CentreStationMm(centreMm), -FurthestCentre * radiusMm, FurthestCentre * radiusMm);
        var centreMoved = Math.Abs(station - _centreStationMm) / radiusMm;
        _centreStationMm = station;
        _centreMm = CentreMm(radiusMm);
        var headingDeg = _front.SlipDeg + PathDeg(_front, _centreMm) - _front.TyreHeadingDeg;
        var perSteer = HeadingPerSteer();
        return new(
            Math.Clamp((predictedSteer * perSteer) + headingDeg, -LongestSteerDeg, LongestSteerDeg) / perSteer,
            movedN + ((Math.Abs(headingDeg) + centreMoved) * (_front.StaticLoadN + _rear.StaticLoadN)));
    }

    private void PutGrip()
    {
        _front.PutFriction(_gripScale * _car.GripFactor);
        _rear.PutFriction(_gripScale * _car.GripFactor);
    }

    private void Demand(double acceleration, in LongitudinalForces forces)
    {
        _front.Demand(acceleration, forces.FrontN, forces.FrontLoadN, forces.AccelerationMs2);
        _rear.Demand(acceleration, forces.RearN, forces.RearLoadN, forces.AccelerationMs2);
    }

    /// <summary>Shares longitudinal forces between the wheels of each axle; what they turn the car by, the axles' side forces hold.</summary>
    private double ShareLongitudinal()
    {
        var movedN = _front.ShareLongitudinal() + _rear.ShareLongitudinal();
        var yawNmm = _front.YawMomentNmm + _rear.YawMomentNmm;
        var byYawN = yawNmm == 0 ? 0 : yawNmm / (_front.StationMm - _rear.StationMm);
        _front.HoldYaw(-byYawN);
        _rear.HoldYaw(byYawN);
        return movedN;
    }

    /// <summary>
    /// Predicts steer and side forces at the end of a step, so that they do not lag behind it; null where that is not possible, and the
    /// present ones then stay.
    /// </summary>
    private SteerSolution? SteerAhead(in BodyChange change, double cos, double acceleration, double radiusMm)
    {
        var rollRad = change.RollSine / cos;
        if (!_front.TryPredict(change.Front, change.FrontHeaveMm, change.RollSine, rollRad, change.Steer)
            || !_rear.TryPredict(change.Rear, change.RearHeaveMm, change.RollSine, rollRad, 0)) return null;
        return Steer(acceleration, radiusMm, change.Steer);
    }

    /// <summary>How far the turn's centre lies to the side of the car.</summary>
    private double CentreMm(double radiusMm) => Math.Sqrt((radiusMm * radiusMm) - (_centreStationMm * _centreStationMm));

    private double PathDeg(CorneringAxle axle, double centreMm) =>
        double.RadiansToDegrees(Math.Atan2(axle.StationMm - _centreStationMm, centreMm));

    // Bounded away from zero so that the step stays finite for a rack that hardly turns the wheels; the suspension then refuses the pose.
    private double HeadingPerSteer()
    {
        var per = (_front.Outer.Pose.HeadingPerSteer + _front.Inner.Pose.HeadingPerSteer) / 2;
        return Math.Abs(per) > 1e-3 ? per : 1e-3;
    }

    /// <summary>Share of the most an axle's two tyres can give at one slip angle that the turn last solved takes; above 1 they cannot hold it.</summary>
    public double GripUsed(CarAxle at) => (at == CarAxle.Front ? _front : _rear).GripUsed(_centreStationMm, _centreMm);

    /// <summary>An axle's longitudinal force in the turn last solved by the most its tyres could give as brakes or differential share it; above 1 they cannot.</summary>
    public double LongitudinalUsed(CarAxle at) => (at == CarAxle.Front ? _front : _rear).LongitudinalUsed;

    /// <summary>The same if both tyres were others, the attitude as it is.</summary>
    public double GripUsed(CarAxle at, in AxleTyre tyre)
    {
        var slipDeg = PeakSlipDeg(at);
        return GripUsed(at, tyre, ref slipDeg);
    }

    /// <summary>Slip angle at which an axle's tyres were last found to give the most, degrees.</summary>
    internal double PeakSlipDeg(CarAxle at) => (at == CarAxle.Front ? _front : _rear).PeakSlipDeg;

    /// <summary>Share of its grip an axle would use if both tyres were others, the attitude as it is.</summary>
    /// <param name="at">The axle.</param>
    /// <param name="tyre">The tyres.</param>
    /// <param name="slipDeg">The slip angle at which they give the most, degrees: a guess first, then what was found.</param>
    internal double GripUsed(CarAxle at, in AxleTyre tyre, ref double slipDeg)
    {
        var axle = at == CarAxle.Front ? _front : _rear;
        var peak = axle.PeakN(tyre, ref slipDeg, _centreStationMm, _centreMm);
        return peak > 0 ? axle.SideForceN / peak : double.PositiveInfinity;
    }

    /// <summary>What the outer wheel of an axle does in the turn last solved: inclination to the road and slip angle, degrees, and load, N. Allocates nothing.</summary>
    public (double InclinationAngleDeg, double SlipDeg, double LoadN) OuterWheel(CarAxle at)
    {
        var wheel = (at == CarAxle.Front ? _front : _rear).Outer;
        return (wheel.InclinationAngleDeg, wheel.SlipDeg, wheel.LoadN);
    }
}
