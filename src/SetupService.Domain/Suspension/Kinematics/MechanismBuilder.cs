using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>Turns a suspension's points into the five constraints that hold its upright.</summary>
public static class MechanismBuilder
{
    /// <summary>The corner made ready; its points must not contradict each other.</summary>
    public static CornerMechanism Build(CornerSetting setting) => setting.Suspension switch
    {
        MacPhersonStrut strut => Build(setting, strut),
        DoubleWishbone wishbone => Build(setting, wishbone),
        FiveLink links => Build(setting, links),
        TrailingArm arm => Build(setting, arm),
        TwistBeam beam => Build(setting, beam.ArmIn(setting.Motion)),
        _ => throw new ArgumentOutOfRangeException(nameof(setting), "This kind of suspension has no constraints."),
    };

    private static CornerMechanism Build(CornerSetting setting, MacPhersonStrut strut)
    {
        var centre = strut.WheelCentre;
        var (first, second) = SquareTo(strut.StrutAxis);
        Constraint[] constraints =
        [
            .. Links(strut.LowerArm, centre, ConstraintRole.LowerArmFront, ConstraintRole.LowerArmRear),
            Constraint.UprightPlane(ConstraintRole.Strut, strut.StrutTop, strut.StrutLower - centre, first),
            Constraint.UprightPlane(ConstraintRole.Strut, strut.StrutTop, strut.StrutLower - centre, second),
            Rod(ConstraintRole.TieRod, strut.TieRod, centre),
        ];
        return new CornerMechanism(setting, constraints)
        {
            AxisSource = AxisSource.JointToBody,
            LowerJoint = strut.LowerArm.Joint - centre,
            UpperPoint = strut.StrutTop,
            Spring = Line(strut.Spring, strut.LowerArm, null, centre) ?? ForceLine.ForStrut(strut),
            Damper = Line(strut.Damper, strut.LowerArm, null, centre) ?? ForceLine.ForStrut(strut),
        };
    }

    private static CornerMechanism Build(CornerSetting setting, DoubleWishbone wishbone)
    {
        var centre = wishbone.WheelCentre;
        Constraint[] constraints =
        [
            .. Links(wishbone.LowerArm, centre, ConstraintRole.LowerArmFront, ConstraintRole.LowerArmRear),
            .. Links(wishbone.UpperArm, centre, ConstraintRole.UpperArmFront, ConstraintRole.UpperArmRear),
            Rod(ConstraintRole.TieRod, wishbone.TieRod, centre),
        ];
        return new CornerMechanism(setting, constraints)
        {
            AxisSource = AxisSource.JointToJoint,
            LowerJoint = wishbone.LowerArm.Joint - centre,
            UpperPoint = wishbone.UpperArm.Joint - centre,
            Spring = Line(wishbone.Spring, wishbone.LowerArm, wishbone.UpperArm, centre),
            Damper = Line(wishbone.Damper, wishbone.LowerArm, wishbone.UpperArm, centre),
        };
    }

    private static CornerMechanism Build(CornerSetting setting, FiveLink suspension)
    {
        var centre = suspension.WheelCentre;
        var constraints = new Constraint[FiveEquations.Count];
        for (var i = 0; i < constraints.Length; i++)
        {
            var link = suspension.Links[i];
            constraints[i] = Constraint.Link(
                ConstraintRole.Link1 + i, link.Inner, link.Outer - centre, link.LengthMm, movesWithRack: i == constraints.Length - 1);
        }

        return new CornerMechanism(setting, constraints)
        {
            AxisSource = AxisSource.Screw,
            Spring = Line(suspension.Spring, null, null, centre),
            Damper = Line(suspension.Damper, null, null, centre),
        };
    }

    private static CornerMechanism Build(CornerSetting setting, TrailingArm arm)
    {
        var centre = arm.WheelCentre;
        var inner = arm.ArmInner - centre;
        var outer = arm.ArmOuter - centre;
        var (first, second) = SquareTo((arm.Outer - arm.Inner).Unit());
        Constraint[] constraints =
        [
            Constraint.BodyPlane(ConstraintRole.ArmPivot, arm.Inner, inner, Vector3.Forward),
            Constraint.BodyPlane(ConstraintRole.ArmPivot, arm.Inner, inner, Vector3.Left),
            Constraint.BodyPlane(ConstraintRole.ArmPivot, arm.Inner, inner, Vector3.Up),
            Constraint.BodyPlane(ConstraintRole.ArmPivot, arm.Outer, outer, first),
            Constraint.BodyPlane(ConstraintRole.ArmPivot, arm.Outer, outer, second),
        ];
        return new CornerMechanism(setting, constraints)
        {
            Spring = Line(arm.Spring, null, null, centre),
            Damper = Line(arm.Damper, null, null, centre),
        };
    }

    private static ReadOnlySpan<Constraint> Links(ControlArm arm, in Vector3 centre, ConstraintRole front, ConstraintRole rear) => new[]
    {
        Constraint.Link(front, arm.Front, arm.Joint - centre, (arm.Seat - arm.Front).Length),
        Constraint.Link(rear, arm.Rear, arm.Joint - centre, (arm.Seat - arm.Rear).Length),
    };

    private static Constraint Rod(ConstraintRole role, Link rod, in Vector3 centre) =>
        Constraint.Link(role, rod.Inner, rod.Outer - centre, rod.LengthMm, movesWithRack: true);

    private static ForceLine? Line(SpringLine? line, ControlArm? lower, ControlArm? upper, in Vector3 centre) => line is null
        ? null
        : ForceLine.Create(line, line.On switch { SuspensionMember.LowerArm => lower, SuspensionMember.UpperArm => upper, _ => null }, centre);

    /// <summary>Two directions square to the given one and to each other.</summary>
    private static (Vector3 First, Vector3 Second) SquareTo(in Vector3 unit)
    {
        var away = Math.Abs(unit.X) < 0.5 ? Vector3.Forward : Vector3.Left;
        var first = unit.Cross(away).Unit();
        return (first, unit.Cross(first));
    }
}
