using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension;

/// <summary>A wheel moved by the hardpoints of its suspension, exactly.</summary>
internal sealed class HardpointMotion : WheelMotion
{
    // Half-width of the difference, mm: of the third order it leaves a share of some 1e-13.
    private const double BendStepMm = 0.05;

    // Who is refused a position here tries one nearer: no sense in creeping up to a dead point for each of them.
    private const double ShortestShare = 1.0 / 64;

    private readonly CornerMechanism _corner;
    private readonly double _rideTravelMm;
    private readonly double _motionRatio;
    private readonly double _damperMotionRatio;
    private readonly double _addedCasterDeg;
    private readonly SuspensionPose _origin;
    private readonly double _rideContactHeightMm;
    private readonly double _rideSpringLengthMm;

    private HardpointMotion(CornerMechanism corner, WheelSetup setup, SuspensionPose origin, in WheelFigures atRide)
    {
        _corner = corner;
        _origin = origin;
        _rideTravelMm = -setup.RideHeightChangeMm;
        _motionRatio = setup.SpringMotionRatio;
        _damperMotionRatio = setup.DamperMotionRatio;
        _addedCasterDeg = setup.AddedCasterDeg;
        _rideContactHeightMm = atRide.ContactHeightMm;
        _rideSpringLengthMm = atRide.SpringLengthMm ?? 0;
    }

    /// <inheritdoc />
    public override SuspensionPose Origin => _origin;

    /// <summary>Makes the motion; null where the points do not close at ride height.</summary>
    public static HardpointMotion? From(CornerMechanism corner, WheelSetup setup)
    {
        if (!PoseContinuation.TryStart(corner, out var pose)) return null;
        return setup.RideHeightChangeMm == 0 || PoseContinuation.TryMove(corner, -setup.RideHeightChangeMm, 0, ref pose)
            ? new HardpointMotion(corner, setup, pose, WheelKinematics.Compute(corner, pose))
            : null;
    }

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose pose, out WheelPose wheel, WorkBudget? budget = null)
    {
        var rackMm = _corner.HasRack ? steer : 0;
        if (!PoseContinuation.TryMove(_corner, _rideTravelMm + travelMm, rackMm, ref pose, budget, ShortestShare))
        {
            wheel = default;
            return false;
        }

        wheel = Read(pose, travelMm, steer);
        return true;
    }

    /// <inheritdoc />
    public override double? SpringRatioPerTravel(in SuspensionPose pose)
    {
        if (_corner.Spring is not { } spring) return 0;
        if (!PoseSolver.TryBend(_corner, pose, out var bend)) return null;
        return (Ratio(pose, BendStepMm) - Ratio(pose, -BendStepMm)) / (2 * BendStepMm);

        // So near, the place is known to second order and the movement to first, which is all a slope asks for.
        double Ratio(in SuspensionPose at, double mm)
        {
            var moved = at.Pose.MovedBy((mm * at.PerTravel.Velocity) + (0.5 * mm * mm * bend.Velocity), (mm * at.PerTravel.Spin) + (0.5 * mm * mm * bend.Spin));
            return spring.At(moved, moved.Turn.ToMatrix(), new UprightMotion(at.PerTravel.Velocity + (mm * bend.Velocity), at.PerTravel.Spin + (mm * bend.Spin))).MotionRatio;
        }
    }

    /// <inheritdoc />
    internal override WheelMotion Near(double travelMm, double steer, in SuspensionPose pose) => NearbyMotion.Create(this, travelMm, steer, pose);

    // What WheelKinematics computes, without the figures that no equilibrium asks for.
    private WheelPose Read(in SuspensionPose pose, double travelMm, double steer)
    {
        var turn = pose.Pose.Turn.ToMatrix();
        var plane = new WheelPlane(pose.Pose.Centre, turn.Apply(_corner.Stated.Spin));
        var contact = plane.Contact(_corner.Setting.LoadedRadiusMm);
        var byTravel = pose.PerTravel.At(contact - plane.Centre);
        var spinByTravel = pose.PerTravel.RateOf(plane.Spin);
        var spinBySteer = pose.PerRack.RateOf(plane.Spin);
        var bySteer = pose.PerRack.Velocity + plane.ContactChange(_corner.Setting.LoadedRadiusMm, spinBySteer);
        var spring = _corner.Spring?.At(pose.Pose, turn, pose.PerTravel);
        var damper = ReferenceEquals(_corner.Damper, _corner.Spring) ? spring : _corner.Damper?.At(pose.Pose, turn, pose.PerTravel);
        return new WheelPose
        {
            CamberDeg = plane.CamberDeg + AddedCasterCamberDeg(pose, plane),
            CamberPerTravel = plane.CamberChangeDeg(spinByTravel),
            CamberPerSteer = plane.CamberChangeDeg(spinBySteer),
            HeadingDeg = _corner.HasRack ? plane.SteerDeg : plane.SteerDeg + steer,
            HeadingPerTravel = -plane.ToeChangeDeg(spinByTravel),
            HeadingPerSteer = _corner.HasRack ? -plane.ToeChangeDeg(spinBySteer) : 1,
            ContactRiseMm = contact.Z - _rideContactHeightMm,
            HalfTrackMm = contact.Y,
            OutboardSlope = Math.Abs(byTravel.Z) > WheelKinematics.LeastRise ? byTravel.Y / byTravel.Z : 0,
            RisePerTravel = byTravel.Z,
            ContactForwardPerTravel = byTravel.X,
            CentreForwardPerTravel = pose.PerTravel.Velocity.X,
            RisePerSteer = bySteer.Z,
            OutboardPerSteer = bySteer.Y,
            SpringMotionRatio = spring?.MotionRatio ?? _motionRatio,
            SpringTravelMm = spring is { } sprung ? _rideSpringLengthMm - sprung.LengthMm : _motionRatio * travelMm,
            SpringTravelPerSteer = _corner.HasRack && _corner.Spring is { } line ? line.At(pose.Pose, turn, pose.PerRack).MotionRatio : 0,
            DamperMotionRatio = damper?.MotionRatio ?? _damperMotionRatio,
            HoldsInRoll = false,
        };
    }

    /// <summary>What a steering axis with more caster would add at the same heading: exact rotation about both, the points left where they are.</summary>
    private double AddedCasterCamberDeg(in SuspensionPose pose, in WheelPlane plane)
    {
        if (_addedCasterDeg == 0 || WheelKinematics.Axis(_corner, pose) is not { } axis) return 0;
        var inclinationDeg = axis.SteeringAxisInclinationDeg;
        var steerDeg = plane.SteerDeg + _corner.Setting.ToeDeg;
        return Turned(axis.CasterDeg + _addedCasterDeg) - Turned(axis.CasterDeg);

        double Turned(double caster) => SteerSweep.Create(new SteeredWheel
        {
            CasterDeg = caster,
            SteeringAxisInclinationDeg = inclinationDeg,
            CamberDeg = _corner.Setting.CamberDeg,
            ToeDeg = 0,
        }).At(steerDeg)?.CamberDeg ?? _corner.Setting.CamberDeg;
    }
}
