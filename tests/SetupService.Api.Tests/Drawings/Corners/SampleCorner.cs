using SetupService.Api.Drawings.Corners;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Tests.Drawings.Corners;

/// <summary>An invented corner with two arms and round figures: wheel upright, contact at 750 mm, ground at 0.</summary>
internal static class SampleCorner
{
    public const double RadiusMm = 300;

    public static readonly Vector3 WheelCentre = new(0, 750, RadiusMm);

    private static readonly CornerPoint LowerFront = new("lower arm, front pivot", new(160, 380, 180), IsOnBody: true);
    private static readonly CornerPoint LowerRear = new("lower arm, rear pivot", new(-170, 390, 190), IsOnBody: true);
    private static readonly CornerPoint LowerJoint = new("lower ball joint", new(20, 712, 150), IsOnBody: false);
    private static readonly CornerPoint UpperFront = new("upper arm, front pivot", new(100, 470, 430), IsOnBody: true);
    private static readonly CornerPoint UpperRear = new("upper arm, rear pivot", new(-120, 480, 420), IsOnBody: true);
    private static readonly CornerPoint UpperJoint = new("upper ball joint", new(-16, 688, 450), IsOnBody: false);
    private static readonly CornerPoint RodInner = new("tie rod, rack end", new(-140, 360, 215), IsOnBody: true);
    private static readonly CornerPoint RodOuter = new("tie rod, outer end", new(-130, 700, 200), IsOnBody: false);

    public static readonly CornerViews Views = new()
    {
        Heading = "Front left corner",
        Lines = ["double wishbone, stated position"],
        Points = [LowerFront, LowerRear, LowerJoint, UpperFront, UpperRear, UpperJoint, RodInner, RodOuter],
        Links =
        [
            new(LowerFront, LowerJoint, CornerLinkKind.Arm),
            new(LowerRear, LowerJoint, CornerLinkKind.Arm),
            new(UpperFront, UpperJoint, CornerLinkKind.Arm),
            new(UpperRear, UpperJoint, CornerLinkKind.Arm),
            new(LowerJoint, UpperJoint, CornerLinkKind.Upright),
            new(RodInner, RodOuter, CornerLinkKind.TieRod),
        ],
        Wheel = WheelPlane.At(WheelCentre, 0, 0),
        LoadedRadiusMm = RadiusMm,
        TyreWidthMm = 220,

        // Through both joints: 700 mm out and 38 mm ahead at the ground.
        Axis = SteeringAxis.Through(LowerJoint.Position, UpperJoint.Position),

        // 1000 mm inboard of the contact and 100 mm up: by similar triangles the line meets the centre plane 75 mm up.
        FrontInstantCentre = new(-250, 100),
        RollCentreHeightMm = 75,
        SideInstantCentre = new(-2400, 240),
    };

    public static SvgPicture Draw(CornerViews? views = null, UnitSystem units = UnitSystem.Metric) =>
        new(CornerViewsDrawing.Draw(views ?? Views, units));
}
