using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// Reads the figures off a closed corner. Instant centres, roll centre and slopes come from the upright's velocity field (derivation
/// in docs/methods/travel-sweep).
/// </summary>
public static class WheelKinematics
{
    /// <summary>A contact that rises less than this per mm of wheel travel runs level: what is measured against its rise is not there.</summary>
    public const double LeastRise = 1e-6;

    // A field that turns less than this per mm has its instant centre more than 1000 km away.
    private const double LeastSpinRadPerMm = 1e-9;

    // A steering axis nearer to level than this, rad, meets the ground some hundred kilometres away.
    private const double LeastUprightRad = 1e-6;

    /// <summary>The wheel of a closed corner.</summary>
    public static WheelPlane Wheel(CornerMechanism corner, in SuspensionPose state)
    {
        ArgumentNullException.ThrowIfNull(corner);
        return new(state.Pose.Centre, state.Pose.Turn.Apply(corner.Stated.Spin));
    }

    /// <summary>The steering axis of a closed corner; null where it has none, or one that lies level.</summary>
    public static SteeringAxis? Axis(CornerMechanism corner, in SuspensionPose state)
    {
        ArgumentNullException.ThrowIfNull(corner);
        return Axis(corner, state, state.Pose.Turn.ToMatrix());
    }

    /// <summary>Every figure of a closed corner. Allocates nothing.</summary>
    public static WheelFigures Compute(CornerMechanism corner, in SuspensionPose state)
    {
        ArgumentNullException.ThrowIfNull(corner);
        var turn = state.Pose.Turn.ToMatrix();
        var wheel = new WheelPlane(state.Pose.Centre, turn.Apply(corner.Stated.Spin));
        var contact = wheel.Contact(corner.Setting.LoadedRadiusMm);
        var motion = state.PerTravel;
        var atContact = motion.At(contact - wheel.Centre);
        var spinChange = motion.RateOf(wheel.Spin);
        var axis = Axis(corner, state, turn);
        var offsets = axis?.Offsets(wheel, contact);
        var front = InstantCentre(contact.Y, contact.Z, atContact.Y, atContact.Z, motion.Spin.X);
        var side = InstantCentre(contact.X, contact.Z, atContact.X, atContact.Z, -motion.Spin.Y);
        var spring = corner.Spring?.At(state.Pose, turn, motion);
        var damper = ReferenceEquals(corner.Damper, corner.Spring) ? spring : corner.Damper?.At(state.Pose, turn, motion);
        var rises = Math.Abs(atContact.Z) > LeastRise;
        return new WheelFigures
        {
            TravelMm = state.TravelMm,
            RackMm = state.RackMm,
            CamberDeg = wheel.CamberDeg,
            ToeDeg = wheel.ToeDeg,
            CasterDeg = axis?.CasterDeg,
            SteeringAxisInclinationDeg = axis?.SteeringAxisInclinationDeg,
            ScrubRadiusMm = offsets?.ScrubRadiusMm,
            MechanicalTrailMm = offsets?.MechanicalTrailMm,
            HalfTrackChangeMm = contact.Y - corner.StatedContact.Y,
            ContactForwardMm = contact.X - corner.StatedContact.X,
            ContactHeightMm = contact.Z,
            HalfTrackMm = contact.Y,
            InstantCentreYMm = front?.Along,
            InstantCentreZMm = front?.Height,
            SwingArmMm = contact.Y - front?.Along,
            RollCentreHeightMm = rises && !corner.IsBeamInHeave ? contact.Y * atContact.Y / atContact.Z : null,
            SideInstantCentreXMm = side?.Along,
            SideInstantCentreZMm = side?.Height,
            ContactForwardSlope = rises ? atContact.X / atContact.Z : null,
            CentreForwardSlope = motion.Velocity.X,
            CamberGainDegPerMm = wheel.CamberChangeDeg(spinChange),
            IsBeamInHeave = corner.IsBeamInHeave,
            ToeGainDegPerMm = wheel.ToeChangeDeg(spinChange),
            SpringLengthMm = spring?.LengthMm,
            SpringMotionRatio = spring?.MotionRatio,
            DamperLengthMm = damper?.LengthMm,
            DamperMotionRatio = damper?.MotionRatio,
        };
    }

    private static SteeringAxis? Axis(CornerMechanism corner, in SuspensionPose state, in RotationMatrix turn)
    {
        switch (corner.AxisSource)
        {
            case AxisSource.JointToBody:
                return Upright(SteeringAxis.Through(state.Pose.Centre + turn.Apply(corner.LowerJoint), corner.UpperPoint));
            case AxisSource.JointToJoint:
                return Upright(SteeringAxis.Through(
                    state.Pose.Centre + turn.Apply(corner.LowerJoint), state.Pose.Centre + turn.Apply(corner.UpperPoint)));
            case AxisSource.Screw:
                // The point of the screw axis nearest to the wheel centre.
                var screw = state.PerRack;
                var square = screw.Spin.Dot(screw.Spin);
                if (!(square > LeastSpinRadPerMm * LeastSpinRadPerMm)) return null;
                var point = state.Pose.Centre + (screw.Spin.Cross(screw.Velocity) / square);
                return Upright(new SteeringAxis(point, screw.Spin.Z < 0 ? -screw.Spin : screw.Spin));
            default:
                return null;
        }
    }

    private static SteeringAxis? Upright(in SteeringAxis axis) =>
        Math.Abs(axis.Direction.Z) > LeastUprightRad * axis.Direction.Length ? axis : null;

    /// <summary>
    /// The point of a view's plane that stands still: with u the velocity across (or along) and w upward at the contact, and the
    /// rate that raises what lies further along, along = contact − w/rate, height = contact + u/rate.
    /// </summary>
    private static (double Along, double Height)? InstantCentre(double alongMm, double heightMm, double along, double upward, double spin) =>
        Math.Abs(spin) < LeastSpinRadPerMm ? null : (alongMm - (upward / spin), heightMm + (along / spin));
}
