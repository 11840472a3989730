using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// A point carried by a control arm: the arm turns about its axis so far that its ball joint stays with the upright's. The point
/// is kept along the axis, along the line from the axis to the joint, and square to both, so that no angle is needed.
/// </summary>
internal readonly record struct SwingArm
{
    private readonly Vector3 _pivot;
    private readonly Vector3 _axis;
    private readonly Vector3 _joint;
    private readonly Vector3 _point;

    public SwingArm(ControlArm arm, in Vector3 point, in Vector3 wheelCentre)
    {
        _pivot = arm.Rear;
        _axis = arm.Axis;
        _joint = arm.Joint - wheelCentre;
        var radial = Radial(arm.Seat).Unit();
        var fromPivot = point - _pivot;
        _point = new(fromPivot.Dot(_axis), fromPivot.Dot(radial), fromPivot.Dot(_axis.Cross(radial)));
    }

    /// <summary>Where the point is, mm, and how it moves per unit of the motion.</summary>
    public (Vector3 Place, Vector3 Velocity) At(in UprightPose pose, in RotationMatrix turn, in UprightMotion motion)
    {
        var toJoint = turn.Apply(_joint);
        var radial = Radial(pose.Centre + toJoint);
        var radius = radial.Length;
        radial /= radius;
        var across = _axis.Cross(radial);
        var fromAxis = (_point.Y * radial) + (_point.Z * across);
        var ratePerMm = motion.At(toJoint).Dot(across) / radius;
        return (_pivot + (_point.X * _axis) + fromAxis, ratePerMm * _axis.Cross(fromAxis));
    }

    /// <summary>From the axis square to the point, mm.</summary>
    private Vector3 Radial(in Vector3 point)
    {
        var fromPivot = point - _pivot;
        return fromPivot - (fromPivot.Dot(_axis) * _axis);
    }
}
