using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>
/// A left corner in the mirror of the car's centre plane: the right one, as a mechanism in the same right-handed frame. The domain's
/// angles are a left wheel's, whose spin axis points left; a spin axis that points right is one of 180° less the toe.
/// </summary>
internal static class MirroredCorner
{
    public static CornerSetting Of(CornerSetting setting) => setting with
    {
        Suspension = Mirrored(setting.Suspension) with
        {
            WheelCentre = setting.Suspension.WheelCentre.Mirrored,
            Spring = Mirrored(setting.Suspension.Spring),
            Damper = Mirrored(setting.Suspension.Damper),
        },
        ToeDeg = 180 - setting.ToeDeg,
    };

    private static Hardpoints Mirrored(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut strut => strut with
        {
            LowerArm = Mirrored(strut.LowerArm),
            StrutTop = strut.StrutTop.Mirrored,
            StrutLower = strut.StrutLower.Mirrored,
            StrutAxis = strut.StrutAxis.Mirrored,
            TieRod = Mirrored(strut.TieRod),
        },
        DoubleWishbone wishbone => wishbone with
        {
            LowerArm = Mirrored(wishbone.LowerArm),
            UpperArm = Mirrored(wishbone.UpperArm),
            TieRod = Mirrored(wishbone.TieRod),
        },
        FiveLink links => links with { Links = [.. links.Links.Select(Mirrored)] },
        TrailingArm arm => arm with
        {
            Inner = arm.Inner.Mirrored,
            Outer = arm.Outer.Mirrored,
            ArmInner = arm.ArmInner.Mirrored,
            ArmOuter = arm.ArmOuter.Mirrored,
        },
        TwistBeam beam => beam with { PivotLeft = beam.PivotLeft.Mirrored, BeamShearCentre = beam.BeamShearCentre.Mirrored },
        _ => throw new InvalidOperationException("No mirror is known of this kind."),
    };

    private static ControlArm Mirrored(ControlArm arm) => new(arm.Front.Mirrored, arm.Rear.Mirrored, arm.Joint.Mirrored, arm.Seat.Mirrored);

    private static Link Mirrored(Link link) => new(link.Inner.Mirrored, link.Outer.Mirrored, link.LengthMm);

    private static SpringLine? Mirrored(SpringLine? line) => line is null ? null : line with { Chassis = line.Chassis.Mirrored, Moving = line.Moving.Mirrored };
}
