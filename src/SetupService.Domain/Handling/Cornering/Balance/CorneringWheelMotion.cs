using SetupService.Domain.Suspension;

namespace SetupService.Domain.Handling.Cornering.Balance;

/// <summary>How the suspension moves the wheel: its pose at a travel and steer, how that goes on, and how far it reaches.</summary>
internal sealed partial class CorneringWheel
{
    /// <summary>
    /// What carries the wheel, a bit each: the road, the spring, the bump stop, the droop stop, and the bump stop once it is pressed solid. Where it changes, the equilibrium has a kink.
    /// </summary>
    public int Contacts => (LoadN > 0 ? 1 : 0) | (_springForcePerTravelNPerMm > 0 ? 2 : 0) | Stops(TravelMm);

    /// <summary>What of <see cref="Contacts"/> but the road would carry the wheel this much further in bump, mm; of the spring to first order.</summary>
    public int CarriedBy(double moreMm)
    {
        var springN = _springForceAtRestN + (_axle.SpringRateNPerMm * (Pose.SpringTravelMm + (Pose.SpringMotionRatio * moreMm)));
        return (springN > 0 ? 2 : 0) | Stops(TravelMm + moreMm);
    }

    private int Stops(double travelMm)
    {
        var pressedMm = travelMm - _axle.BumpLeftMm;
        return (pressedMm > 0 ? WheelSpring.IsSolid(_axle, Pose.DamperMotionRatio * pressedMm.Value) ? 20 : 4 : 0) | (travelMm < -_axle.DroopLeftMm ? 8 : 0);
    }

    // Differences over a shorter travel than this, mm, are rounding and give no slope.
    private const double LeastLearntMm = 1e-3;

    // How closely the end of a suspension is told, mm.
    private const double ReachAgreedMm = 0.05;

    /// <summary>Updates the wheel's pose from the suspension; false where it cannot reach it.</summary>
    public bool TryUpdatePose(double steer)
    {
        if (_isPlaced && TravelMm == _guidedAtMm && steer == _guidedSteer) return true;
        var reached = _state;
        if (!_motion.TryAt(TravelMm, -Sign * steer, ref reached, out var pose, _budget))
        {
            Missed = (TravelMm, steer);
            return false;
        }

        _state = reached;
        Learn(pose, steer);
        (Pose, _isPlaced) = (pose, true);
        return true;
    }

    /// <summary>Updates the derivatives of motion ratio, rise and contact path by travel from the last two poses, where they differ mostly by travel.</summary>
    private void Learn(in WheelPose next, double steer)
    {
        var wayMm = TravelMm - _guidedAtMm;
        if (Math.Abs(wayMm) > Math.Max(LeastLearntMm, Math.Abs(steer - _guidedSteer)))
        {
            _ratioPerTravel = (next.SpringMotionRatio - Pose.SpringMotionRatio) / wayMm;
            _riseBendPerMm = (next.RisePerTravel - Pose.RisePerTravel) / wayMm;
            _slopePerTravel = (next.OutboardSlope - Pose.OutboardSlope) / wayMm;
            _contactForwardBend = (next.ContactForwardPerTravel - Pose.ContactForwardPerTravel) / wayMm;
            _centreForwardBend = (next.CentreForwardPerTravel - Pose.CentreForwardPerTravel) / wayMm;
        }

        (_guidedAtMm, _guidedSteer) = (TravelMm, steer);
    }

    /// <summary>The same wheel where it is, its motion taken about there.</summary>
    public CorneringWheel Nearby()
    {
        var nearby = (CorneringWheel)MemberwiseClone();
        if (_isPlaced) nearby._motion = _motion.Near(_guidedAtMm, -Sign * _guidedSteer, _state);
        return nearby;
    }

    /// <summary>Travel, mm from ride height, and steer at which the search last wanted it and its suspension did not have it; null where there was none.</summary>
    public (double TravelMm, double Steer)? Missed { get; set; }

    /// <summary>True where its suspension reaches a travel, mm from ride height, at a steer, and tells of it.</summary>
    public bool Reaches(double travelMm, double steer)
    {
        var state = _motion.Origin;
        return _motion.TryAt(travelMm, -Sign * steer, ref state, out var pose) && !pose.IsBeyondReadings;
    }

    /// <summary>How far it comes on the way to a travel it does not reach, mm from ride height; null where the steer alone is beyond it.</summary>
    public double? ReachMm(double travelMm, double steer)
    {
        // From where its suspension is stated, which it reaches whatever its ride height is now.
        if (!Reaches(_axle.RideHeightChangeMm, steer)) return null;
        var (reached, missed) = (_axle.RideHeightChangeMm, travelMm);
        while (Math.Abs(missed - reached) > ReachAgreedMm)
        {
            var middle = (reached + missed) / 2;
            if (Reaches(middle, steer)) reached = middle;
            else missed = middle;
        }

        return reached;
    }

    /// <summary>Heading that steer alone gives the wheel, degrees, positive = into the turn; NaN where it cannot be steered so far at rest height.</summary>
    public double SteeredByDeg(double steer)
    {
        var state = _motion.Origin;
        return _motion.TryAt(0, -Sign * steer, ref state, out var steered) ? -Sign * (steered.HeadingDeg - RestPose.HeadingDeg) : double.NaN;
    }

    /// <summary>The parts of the inclination; evaluates the suspension once more, without steer.</summary>
    public CamberContributions Contributions(double steer)
    {
        var steered = Pose.CamberDeg;
        var unsteered = steered;
        if (steer != 0)
        {
            var state = _state;
            if (_motion.TryAt(TravelMm, 0, ref state, out var ahead)) unsteered = ahead.CamberDeg;
        }

        return new(
            CamberSetDeg, unsteered - CamberSetDeg, InclinationAngleDeg - (steered + CamberComplianceDeg), steered - unsteered, CamberComplianceDeg);
    }
}
