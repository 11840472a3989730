using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>What struts and wishbones share: arms with an axis, a wheel outboard of its joint, a tie rod with a lever.</summary>
internal static class JointContradictions
{
    /// <summary>An arm needs two pivots, and its joint away from the line through them.</summary>
    public static void AddArm(List<Contradiction> found, string name, ControlArm arm)
    {
        var before = found.Count;
        Contradictions.AddLength(found, name + "ArmRear", arm.Rear, name + "ArmFront", arm.Front);
        Contradictions.AddLength(found, name + "BallJoint", arm.Joint, name + "ArmFront", arm.Front);
        Contradictions.AddLength(found, name + "BallJoint", arm.Joint, name + "ArmRear", arm.Rear);
        if (found.Count > before) return;
        var radius = Contradictions.Distance(arm.Joint, arm.Front, arm.Rear);
        if (radius >= Contradictions.SamePointMm) return;
        found.Add(new(name + "BallJoint", Prose.Write(
            UnitSystem.Metric,
            $"{name}BallJoint stands {radius:mm} from the line through {name}ArmFront and {name}ArmRear: the arm turns about that line and cannot guide its joint.")));
    }

    /// <summary>The wheel of a left corner stands outboard of the joint that carries it.</summary>
    public static void AddWheel(List<Contradiction> found, in Vector3 wheelCentre, in Vector3 joint)
    {
        if (wheelCentre.Y > joint.Y) return;
        found.Add(new("wheelCentre", Prose.Write(
            UnitSystem.Metric, $"the wheel centre stands {joint.Y - wheelCentre.Y:mm} inboard of lowerBallJoint; it must be outboard of it.")));
    }

    /// <summary>The axis' upper point must be above its lower one, and the tie rod's end off the axis.</summary>
    public static void AddAxis(List<Contradiction> found, in Vector3 lower, string upperName, in Vector3 upper, Link tieRod)
    {
        Contradictions.AddLength(found, "tieRodOuter", tieRod.Outer, "tieRodInner", tieRod.Inner);
        if (upper.Z - lower.Z < Contradictions.SamePointMm)
        {
            found.Add(new(upperName, Prose.Write(
                UnitSystem.Metric, $"{upperName} stands {lower.Z - upper.Z:mm} below lowerBallJoint; the steering axis needs it at least {Contradictions.SamePointMm:mm} above.")));
            return;
        }

        var lever = Contradictions.Distance(tieRod.Outer, lower, upper);
        if (lever >= Contradictions.SamePointMm) return;
        found.Add(new("tieRodOuter", Prose.Write(
            UnitSystem.Metric, $"tieRodOuter stands {lever:mm} from the steering axis: the tie rod has no lever to hold the wheel with.")));
    }
}
