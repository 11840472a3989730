using System.Collections.Immutable;
using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>Invented points of every kind of suspension, within ranges as cars have them, mm.</summary>
internal static class PlausibleSuspensions
{
    public static Gen<Hardpoints> Struts { get; } =
        Gen.Select(
            LowerArm((5, 60), (-320, -240), (0, 20), (700, 730)),
            Point((-75, -15), (540, 600), (800, 880)),
            Point((-15, 5), (615, 650), (380, 440)),
            TieRod((310, 360), (675, 705), (215, 260)),
            WheelCentre((735, 770)),
            SpringAndDamper(SuspensionMember.LowerArm, SuspensionMember.Upright),
            (arm, top, lower, rod, centre, lines) => (Hardpoints)new MacPhersonStrut
            {
                LowerArm = arm,
                StrutTop = top,
                StrutLower = lower,
                StrutAxis = (top - lower).Unit(),
                TieRod = rod,
                WheelCentre = centre,
                Spring = lines.Spring,
                Damper = lines.Damper,
            });

    public static Gen<Hardpoints> Wishbones { get; } =
        Gen.Select(
            LowerArm((110, 190), (-210, -130), (0, 15), (690, 725)),
            Arm((60, 110), (-150, -90), (430, 490), (415, 470), Point((-45, -12), (650, 690), (460, 500))),
            TieRod((355, 400), (670, 705), (200, 225)),
            WheelCentre((745, 780)),
            SpringAndDamper(SuspensionMember.LowerArm, SuspensionMember.UpperArm, SuspensionMember.Upright),
            (lower, upper, rod, centre, lines) => (Hardpoints)new DoubleWishbone
            {
                LowerArm = lower,
                UpperArm = upper,
                TieRod = rod,
                WheelCentre = centre,
                Spring = lines.Spring,
                Damper = lines.Damper,
            });

    public static Gen<Hardpoints> FiveLinks { get; } =
        Gen.Select(
            Gen.Select(
                Link(Point((120, 200), (420, 480), (415, 470)), Point((15, 55), (640, 675), (430, 475))),
                Link(Point((-120, -60), (400, 460), (410, 455)), Point((-40, -10), (640, 675), (440, 480))),
                Link(Point((220, 340), (440, 510), (195, 245)), Point((25, 65), (665, 700), (190, 215))),
                Link(Point((-80, -20), (260, 340), (195, 220)), Point((-30, 0), (680, 710), (180, 210))),
                Link(Point((-200, -140), (310, 370), (255, 285)), Point((-160, -115), (665, 700), (255, 285))),
                (first, second, third, fourth, fifth) => ImmutableArray.Create(first, second, third, fourth, fifth)),
            WheelCentre((745, 775)),
            SpringAndDamper(SuspensionMember.Upright),
            (links, centre, lines) =>
                (Hardpoints)new FiveLink { Links = links, WheelCentre = centre, Spring = lines.Spring, Damper = lines.Damper });

    public static Gen<Hardpoints> Arms { get; } =
        Gen.Select(
            Point((260, 400), (200, 340), (280, 350)),
            Point((340, 450), (540, 640), (290, 350)),
            Gen.Bool,
            WheelCentre((720, 760)),
            SpringAndDamper(SuspensionMember.Beam, SuspensionMember.Upright),
            (inner, outer, isAcross, centre, lines) =>
                (Hardpoints)TrailingArm.About(inner, isAcross ? inner with { Y = outer.Y } : outer, centre)
                    with
                { Spring = lines.Spring, Damper = lines.Damper });

    public static Gen<Hardpoints> Beams { get; } =
        Gen.Select(
            Point((390, 470), (520, 600), (300, 370)),
            Point((180, 320), (0, 0), (280, 360)),
            WheelCentre((715, 750)),
            SpringAndDamper(SuspensionMember.Beam),
            (pivot, shear, centre, lines) => (Hardpoints)new TwistBeam
            {
                PivotLeft = pivot,
                BeamShearCentre = shear,
                WheelCentre = centre,
                Spring = lines.Spring,
                Damper = lines.Damper,
            });

    private static Gen<Vector3> Point((double From, double To) x, (double From, double To) y, (double From, double To) z) =>
        Gen.Select(Gen.Double[x.From, x.To], Gen.Double[y.From, y.To], Gen.Double[z.From, z.To], (px, py, pz) => new Vector3(px, py, pz));

    private static Gen<Vector3> WheelCentre((double From, double To) y) => Point((-4, 4), y, (295, 325));

    private static Gen<ControlArm> LowerArm(
        (double From, double To) frontX, (double From, double To) rearX, (double From, double To) jointX, (double From, double To) jointY) =>
        Arm(frontX, rearX, (340, 400), (175, 210), Point(jointX, jointY, (165, 200)));

    private static Gen<ControlArm> Arm(
        (double From, double To) frontX, (double From, double To) rearX, (double From, double To) y, (double From, double To) z, Gen<Vector3> joint) =>
        Gen.Select(Point(frontX, y, z), Point(rearX, y, z), joint, (front, rear, outer) => new ControlArm(front, rear, outer));

    private static Gen<Link> Link(Gen<Vector3> inner, Gen<Vector3> outer) => Gen.Select(inner, outer, (a, b) => new Link(a, b));

    /// <summary>Ahead of or behind the wheel, nearly level.</summary>
    private static Gen<Link> TieRod((double From, double To) innerY, (double From, double To) outerY, (double From, double To) z) => Link(
        Gen.Bool.Select(isAhead => isAhead ? 125 : -140).SelectMany(x => Point((x - 10, x + 10), innerY, z)),
        Point((-10, 10), outerY, (-10, 4))).Select(link => new Link(
            link.Inner, new Vector3(link.Inner.X + link.Outer.X, link.Outer.Y, link.Inner.Z + link.Outer.Z)));

    private static Gen<(SpringLine? Spring, SpringLine? Damper)> SpringAndDamper(params SuspensionMember[] parts) =>
        Gen.Select(Line(parts).Null(), Line(parts).Null());

    private static Gen<SpringLine> Line(SuspensionMember[] parts) => Gen.Int[0, parts.Length - 1].Select(index => parts[index]).SelectMany(part => Gen.Select(
        Point((-30, 90), (480, 540), (560, 640)),
        Point((-30, 90), (560, 640), part == SuspensionMember.UpperArm ? (440, 480) : (190, 290)),
        (chassis, moving) => new SpringLine(chassis, moving, part)));
}
