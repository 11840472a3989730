using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>The line a spring or damper acts along, from its end on the body to the one on a moving part.</summary>
internal sealed class ForceLine
{
    private readonly Vector3 _chassis;
    private readonly Vector3 _onUpright;
    private readonly SwingArm? _onArm;

    private ForceLine(Vector3 chassis, Vector3 onUpright, SwingArm? onArm)
    {
        _chassis = chassis;
        _onUpright = onUpright;
        _onArm = onArm;
    }

    /// <summary>The line of a spring whose moving end is on the upright, beam or trailing arm, or on <paramref name="arm"/> where there is one.</summary>
    public static ForceLine Create(SpringLine line, ControlArm? arm, in Vector3 wheelCentre) => new(
        line.Chassis, line.Moving - wheelCentre, arm is null ? null : new SwingArm(arm, line.Moving, wheelCentre));

    /// <summary>The line of a strut: from its top mount to the point of its axis that is fixed to the upright.</summary>
    public static ForceLine ForStrut(MacPhersonStrut strut) => new(strut.StrutTop, strut.StrutLower - strut.WheelCentre, null);

    /// <summary>Length, mm, and motion ratio: how much shorter it becomes per unit of the motion (mm of bump, or of rack).</summary>
    public (double LengthMm, double MotionRatio) At(in UprightPose pose, in RotationMatrix turn, in UprightMotion motion)
    {
        Vector3 place;
        Vector3 velocity;
        if (_onArm is { } arm)
        {
            (place, velocity) = arm.At(pose, turn, motion);
        }
        else
        {
            var fromCentre = turn.Apply(_onUpright);
            place = pose.Centre + fromCentre;
            velocity = motion.At(fromCentre);
        }

        var line = place - _chassis;
        var lengthMm = line.Length;
        return (lengthMm, -line.Dot(velocity) / lengthMm);
    }
}
