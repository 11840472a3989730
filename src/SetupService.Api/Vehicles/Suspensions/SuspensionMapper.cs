using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Api.Vehicles.Suspensions;

/// <summary>Reads a suspension's points into the domain's; a measured suspension has none.</summary>
internal static class SuspensionMapper
{
    /// <summary>The suspension; null where it is measured, or where a point could not be bound and its fault is known already.</summary>
    public static Hardpoints? Read(SuspensionDocument? document) => document switch
    {
        MacPhersonStrutDocument { Points: { } points } when AreThere(points) => WithSprings(Read(points), points),
        DoubleWishboneDocument { Points: { } points } when AreThere(points) => WithSprings(Read(points), points),
        FiveLinkDocument { Points: { } points } when AreThere(points) => WithSprings(Read(points), points),
        SemiTrailingArmDocument { Points: { } points } when AreThere(points) => WithSprings(Read(points), points),
        TwistBeamDocument { Points: { } points } when AreThere(points) => WithSprings(Read(points), points),
        _ => null,
    };

    /// <summary>The suspension by its points; refused where it has none.</summary>
    public static MapResult<Hardpoints> Map(SuspensionDocument? document) => Read(document) is { } points
        ? points
        : new Refusal(Fault.At("/points", FaultCodes.Required, "points is missing; the suspension's points are needed here."));

    /// <summary>What is known of how the axle's wheels move; of nothing described, the few figures alone.</summary>
    public static SuspensionModel Model(SuspensionDocument? document, AlignmentAnglesDocument? alignment) => document switch
    {
        MeasuredSuspensionDocument measured => SuspensionModel.From(MeasuredMapper.Readings(measured, alignment)),
        _ when Read(document) is { } points => SuspensionModel.From(points, SpringDamper(document)?.PointErrorMm ?? 0),
        _ => SuspensionModel.FromFigures,
    };

    /// <summary>Where spring and damper stand; null where the suspension is measured or has no points.</summary>
    public static SpringDamperPointsDocument? SpringDamper(SuspensionDocument? document) => document switch
    {
        MacPhersonStrutDocument strut => strut.Points,
        DoubleWishboneDocument wishbone => wishbone.Points,
        FiveLinkDocument links => links.Points,
        SemiTrailingArmDocument arm => arm.Points,
        TwistBeamDocument beam => beam.Points,
        _ => null,
    };

    /// <summary>A point, mm.</summary>
    public static Vector3 Read(PointDocument point) => new(point.XMm, point.YMm, point.ZMm);

    private static MacPhersonStrut Read(MacPhersonStrutPointsDocument points) => new()
    {
        LowerArm = new ControlArm(Read(points.LowerArmFront), Read(points.LowerArmRear), Read(points.LowerBallJoint)),
        StrutTop = Read(points.StrutTop),
        StrutLower = Read(points.StrutLower),
        StrutAxis = (Read(points.StrutTop) - Read(points.StrutLower)).Unit(),
        TieRod = new Link(Read(points.TieRodInner), Read(points.TieRodOuter)),
        WheelCentre = Read(points.WheelCentre),
    };

    private static DoubleWishbone Read(DoubleWishbonePointsDocument points) => new()
    {
        LowerArm = new ControlArm(Read(points.LowerArmFront), Read(points.LowerArmRear), Read(points.LowerBallJoint)),
        UpperArm = new ControlArm(Read(points.UpperArmFront), Read(points.UpperArmRear), Read(points.UpperBallJoint)),
        TieRod = new Link(Read(points.TieRodInner), Read(points.TieRodOuter)),
        WheelCentre = Read(points.WheelCentre),
    };

    private static FiveLink Read(FiveLinkPointsDocument points) => new()
    {
        Links = [.. points.Links.Select(link => new Link(Read(link.Chassis), Read(link.Upright)))],
        WheelCentre = Read(points.WheelCentre),
    };

    private static TrailingArm Read(SemiTrailingArmPointsDocument points) =>
        TrailingArm.About(Read(points.PivotInner), Read(points.PivotOuter), Read(points.WheelCentre));

    private static TwistBeam Read(TwistBeamPointsDocument points) => new()
    {
        PivotLeft = Read(points.PivotLeft),
        BeamShearCentre = Read(points.BeamShearCentre),
        WheelCentre = Read(points.WheelCentre),
    };

    /// <summary>Adds what every kind may: where spring and damper stand.</summary>
    private static Hardpoints WithSprings(Hardpoints suspension, SpringDamperPointsDocument points) => suspension with
    {
        Spring = Line(points.SpringChassis, points.SpringMoving, points.SpringOn, suspension.UsualCarrier),
        Damper = Line(points.DamperChassis, points.DamperMoving, points.DamperOn, suspension.UsualCarrier),
    };

    private static SpringLine? Line(PointDocument? chassis, PointDocument? moving, SuspensionMember? on, SuspensionMember usual) =>
        chassis is null || moving is null ? null : new(Read(chassis), Read(moving), on ?? usual) { IsCarrierAssumed = on is null };

    private static bool AreThere(MacPhersonStrutPointsDocument points) => AreThere(
        points.LowerArmFront, points.LowerArmRear, points.LowerBallJoint, points.StrutTop, points.StrutLower,
        points.TieRodInner, points.TieRodOuter, points.WheelCentre);

    private static bool AreThere(DoubleWishbonePointsDocument points) => AreThere(
        points.LowerArmFront, points.LowerArmRear, points.LowerBallJoint, points.UpperArmFront, points.UpperArmRear, points.UpperBallJoint,
        points.TieRodInner, points.TieRodOuter, points.WheelCentre);

    private static bool AreThere(FiveLinkPointsDocument points) => AreThere(points.WheelCentre)
        && points.Links is { Length: 5 } links && Array.TrueForAll(links, link => link is not null && AreThere(link.Chassis, link.Upright));

    private static bool AreThere(SemiTrailingArmPointsDocument points) => AreThere(points.PivotInner, points.PivotOuter, points.WheelCentre);

    private static bool AreThere(TwistBeamPointsDocument points) => AreThere(points.PivotLeft, points.BeamShearCentre, points.WheelCentre);

    private static bool AreThere(params ReadOnlySpan<PointDocument?> points)
    {
        foreach (var point in points)
        {
            if (point is null) return false;
        }

        return true;
    }
}
