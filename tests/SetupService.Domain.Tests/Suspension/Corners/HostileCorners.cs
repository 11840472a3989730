using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>
/// Corners no car has: points anywhere within the ±5 m that a request may name, ordered only so far that nothing contradicts.
/// </summary>
internal static class HostileCorners
{
    private const double FurthestMm = 5000;

    private static readonly Gen<Vector3> Point = Gen.Select(
        Gen.Double[-FurthestMm, FurthestMm], Gen.Double[-FurthestMm, FurthestMm], Gen.Double[-FurthestMm, FurthestMm], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<Link> Rod = Gen.Select(Point, Point, (inner, outer) => new Link(inner, outer));

    /// <summary>A joint and one above it.</summary>
    private static readonly Gen<(Vector3 Lower, Vector3 Upper)> Joints = Gen.Select(Point, Point, (a, b) => a.Z < b.Z ? (a, b) : (b, a));

    private static readonly Gen<Hardpoints> Struts = Gen.Select(
        Point, Point, Joints, Point, Rod, Point, (front, rear, joints, strutLower, rod, centre) =>
        {
            var lower = strutLower.Z < joints.Upper.Z ? strutLower : joints.Lower;
            return (Hardpoints)new MacPhersonStrut
            {
                LowerArm = new(front, rear, joints.Lower),
                StrutTop = joints.Upper,
                StrutLower = lower,
                StrutAxis = (joints.Upper - lower).Unit(),
                TieRod = rod,
                WheelCentre = Outboard(centre, joints.Lower),
            };
        });

    private static readonly Gen<Hardpoints> Wishbones = Gen.Select(
        Point, Point, Point, Point, Joints, Rod, Point, (front, rear, upperFront, upperRear, joints, rod, centre) => (Hardpoints)new DoubleWishbone
        {
            LowerArm = new(front, rear, joints.Lower),
            UpperArm = new(upperFront, upperRear, joints.Upper),
            TieRod = rod,
            WheelCentre = Outboard(centre, joints.Lower),
        });

    private static readonly Gen<Hardpoints> FiveLinks = Gen.Select(Rod.Array[5], Point, (links, centre) =>
        (Hardpoints)new FiveLink { Links = [.. links], WheelCentre = Outboard(centre, [.. links.Select(link => link.Outer)]) });

    private static readonly Gen<Hardpoints> Arms = Gen.Select(Point, Point, Point, (inner, outer, centre) =>
        (Hardpoints)TrailingArm.About(inner, outer, Outboard(centre)));

    private static readonly Gen<Hardpoints> Beams = Gen.Select(Point, Point, Point, (pivot, shear, centre) => (Hardpoints)new TwistBeam
    {
        PivotLeft = Outboard(pivot),
        BeamShearCentre = shear with { Y = 0 },
        WheelCentre = Outboard(centre),
    });

    public static Gen<CornerSetting> Any { get; } = Gen.Select(
        Gen.OneOf(Struts, Wishbones, FiveLinks, Arms, Beams),
        Gen.Select(Point, Point),
        Gen.Double[-15, 15],
        Gen.Double[-5, 5],
        Gen.Double[100, 600],
        Gen.Enum<AxleMotion>(),
        (suspension, spring, camberDeg, toeDeg, radiusMm, motion) => new CornerSetting
        {
            Suspension = suspension with { Spring = new(spring.Item1, spring.Item2, PartOf(suspension)) },
            CamberDeg = camberDeg,
            ToeDeg = toeDeg,
            LoadedRadiusMm = radiusMm,
            Motion = motion,
        }).Where(setting => Contradictions.Find(setting.Suspension).Count == 0);

    private static SuspensionMember PartOf(Hardpoints suspension) =>
        suspension is MacPhersonStrut or DoubleWishbone ? SuspensionMember.LowerArm : SuspensionMember.Upright;

    /// <summary>The point, drawn to the left until it is outboard of the centre plane and of the joints.</summary>
    private static Vector3 Outboard(in Vector3 point, params ReadOnlySpan<Vector3> joints)
    {
        var least = 2.0;
        foreach (var joint in joints) least = Math.Max(least, joint.Y + 2);
        return point with { Y = Math.Max(least, Math.Abs(point.Y)) };
    }
}
