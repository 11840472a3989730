using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Oracle;
using SetupService.Domain.Tests.Suspension.Corners;
using static SetupService.Domain.Tests.Suspension.Points.DrawnSuspensions;

namespace SetupService.Domain.Tests.Suspension.Points;

public sealed class ContradictionTests
{
    /// <summary>What is wrong, the suspension that has it, the point that is named, and what its message quotes.</summary>
    private static readonly (string Wrong, Hardpoints Suspension, string Member, string[] Quotes)[] Wrongs =
    [
        ("a strut's arm without an axis", Strut with { LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Front + Up(0.4), Strut.LowerArm.Joint) }, "lowerArmRear", ["lowerArmFront", "0.4 mm apart"]),
        ("a ball joint at the arm's front pivot", Strut with { LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Rear, Strut.LowerArm.Front) }, "lowerBallJoint", ["lowerArmFront", "0.0 mm apart"]),
        ("a ball joint at the arm's rear pivot", Strut with { LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Rear, Strut.LowerArm.Rear) }, "lowerBallJoint", ["lowerArmRear", "0.0 mm apart"]),
        ("a ball joint on the arm's axis", Strut with { LowerArm = Arms(new(100, 400, 200), new(-100, 400, 200), new(300, 400.5, 200)) }, "lowerBallJoint", ["0.5 mm from the line", "lowerArmFront", "lowerArmRear"]),
        ("a strut without length", Strut with { StrutLower = Strut.StrutTop }, "strutLower", ["strutTop", "0.0 mm apart"]),
        ("a strut upside down", Strut with { StrutLower = Strut.StrutTop + Up(30) }, "strutLower", ["30.0 mm above strutTop"]),
        ("a top mount below the ball joint", Strut with { StrutTop = Strut.LowerArm.Joint - Up(20), StrutLower = Strut.LowerArm.Joint - Up(90) }, "strutTop", ["20.0 mm below lowerBallJoint"]),
        ("a tie rod without length", Strut with { TieRod = new(Strut.TieRod.Inner, Strut.TieRod.Inner) }, "tieRodOuter", ["tieRodInner", "0.0 mm apart"]),
        ("a tie rod on the steering axis", Strut with { TieRod = new(Strut.TieRod.Inner, 0.5 * (Strut.StrutTop + Strut.LowerArm.Joint)) }, "tieRodOuter", ["0.0 mm from the steering axis"]),
        ("a wheel inboard of its ball joint", Strut with { WheelCentre = Strut.LowerArm.Joint - (12 * Vector3.Left) }, "wheelCentre", ["12.0 mm inboard of lowerBallJoint"]),
        ("a wheel on the right", Strut with { WheelCentre = Strut.WheelCentre.Mirrored }, "wheelCentre", ["y = −750.0 mm"]),
        ("a strut's tie rod end on the right", Strut with { TieRod = new(Strut.TieRod.Inner, Strut.TieRod.Outer.Mirrored) }, "tieRodOuter", ["right of the car's centre plane", "turn the sign"]),
        ("a strut's ball joint on the right", Strut with { LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Rear, Strut.LowerArm.Joint.Mirrored) }, "lowerBallJoint", ["right of the car's centre plane"]),
        ("a strut's lower point on the right", Strut with { StrutLower = Strut.StrutLower.Mirrored }, "strutLower", ["right of the car's centre plane"]),
        ("a top mount on the right", Strut with { StrutTop = Strut.StrutTop.Mirrored }, "strutTop", ["right of the car's centre plane"]),
        ("an arm's pivot on the right", Strut with { LowerArm = Arms(Strut.LowerArm.Front.Mirrored, Strut.LowerArm.Rear, Strut.LowerArm.Joint) }, "lowerArmFront", ["right of the car's centre plane"]),
        ("an upper ball joint on the right", Wishbone with { UpperArm = Arms(Wishbone.UpperArm.Front, Wishbone.UpperArm.Rear, Wishbone.UpperArm.Joint.Mirrored) }, "upperBallJoint", ["right of the car's centre plane"]),
        ("a link's end on the right", Five.WithLink(2, new(Five.Links[2].Inner, Five.Links[2].Outer.Mirrored)), "links[2].upright", ["right of the car's centre plane"]),
        ("a link's pivot on the right", Five.WithLink(1, new(Five.Links[1].Inner.Mirrored, Five.Links[1].Outer)), "links[1].chassis", ["right of the car's centre plane"]),
        ("an arm's outer pivot on the right", Arm with { Outer = Arm.Outer.Mirrored }, "pivotOuter", ["right of the car's centre plane"]),
        ("a spring on the right", Wishbone with { Spring = Wishbone.Spring! with { Chassis = Wishbone.Spring!.Chassis.Mirrored } }, "springChassis", ["right of the car's centre plane"]),
        ("an upper arm without an axis", Wishbone with { UpperArm = Arms(Wishbone.UpperArm.Front, Wishbone.UpperArm.Front, Wishbone.UpperArm.Joint) }, "upperArmRear", ["upperArmFront", "0.0 mm apart"]),
        ("an upper ball joint on its arm's axis", Wishbone with { UpperArm = Arms(new(100, 480, 440), new(-100, 480, 440), new(0, 480, 440.2)) }, "upperBallJoint", ["0.2 mm from the line", "upperArmFront", "upperArmRear"]),
        ("an upper ball joint at its arm's rear pivot", Wishbone with { UpperArm = Arms(Wishbone.UpperArm.Front, Wishbone.UpperArm.Rear, Wishbone.UpperArm.Rear) }, "upperBallJoint", ["upperArmRear", "0.0 mm apart"]),
        ("ball joints the wrong way up", Wishbone with { UpperArm = Arms(Wishbone.UpperArm.Front, Wishbone.UpperArm.Rear, Wishbone.LowerArm.Joint - Up(5)) }, "upperBallJoint", ["5.0 mm below lowerBallJoint"]),
        ("a wishbone's tie rod on the axis", Wishbone with { TieRod = new(Wishbone.TieRod.Inner, Wishbone.UpperArm.Joint) }, "tieRodOuter", ["0.0 mm from the steering axis"]),
        ("a link without length", Five.WithLink(3, new(Five.Links[3].Inner, Five.Links[3].Inner)), "links[3].upright", ["links[3].chassis", "0.0 mm apart"]),
        ("two links that are one", Five.WithLink(2, Five.Links[1]), "links[2]", ["links[2]", "links[1]"]),
        ("a link outboard of the wheel", Five.WithLink(0, new(Five.Links[0].Inner, Five.WheelCentre + (7.5 * Vector3.Left))), "wheelCentre", ["7.5 mm inboard of links[0].upright"]),
        ("an arm without an axis", Arm with { Outer = Arm.Inner }, "pivotOuter", ["pivotInner", "0.0 mm apart"]),
        ("a wheel on the arm's axis", Arm with { WheelCentre = (3 * Arm.Outer) - (2 * Arm.Inner) }, "wheelCentre", ["0.0 mm from the line", "pivotInner and pivotOuter"]),
        ("a wheel above the arm's axis", Arm with { WheelCentre = Arm.Outer + Up(200) }, "wheelCentre", ["pivotInner and pivotOuter", "0 mm in 100 mm"]),
        ("an arm's upright axis", Arm with { Inner = Arm.Outer + Up(200) + new Vector3(1, 0, 0) }, "wheelCentre", ["pivotInner and pivotOuter", "0.18 mm in 100 mm"]),
        ("a beam's pivot on the right", Beam with { PivotLeft = Beam.PivotLeft.Mirrored }, "pivotLeft", ["y = −560.0 mm"]),
        ("a shear centre beside the centre plane", Beam with { BeamShearCentre = Beam.BeamShearCentre + (15 * Vector3.Left) }, "beamShearCentre", ["y = 15.0 mm"]),
        ("a shear centre on the left pivot", Beam with { BeamShearCentre = Beam.PivotLeft }, "beamShearCentre", ["pivotLeft", "0.0 mm apart"]),
        ("a wheel above the beam's pivots", Beam with { WheelCentre = Beam.PivotLeft + Up(150) }, "wheelCentre", ["both pivots", "0 mm in 100 mm"]),
        ("a wheel on the line through both pivots", Beam with { WheelCentre = Beam.PivotLeft + (100 * Vector3.Left) }, "wheelCentre", ["0.0 mm from the line", "both pivots"]),
        ("a wheel on the line to the shear centre", Beam with { WheelCentre = (1.25 * Beam.PivotLeft) - (0.25 * Beam.BeamShearCentre) }, "wheelCentre", ["0.0 mm from the line", "pivotLeft and beamShearCentre"]),
        ("a spring without length", Wishbone with { Spring = Wishbone.Spring! with { Moving = Wishbone.Spring!.Chassis } }, "springMoving", ["springChassis", "0.0 mm apart"]),
        ("a damper without length", Arm with { Damper = new(Arm.WheelCentre, Arm.WheelCentre, SuspensionMember.Beam) }, "damperMoving", ["damperChassis", "0.0 mm apart"]),
        ("a strut's spring on an upper arm", Strut with { Spring = Line(SuspensionMember.UpperArm) }, "springOn", ["lowerArm", "upright"]),
        ("a wishbone's damper on a beam", Wishbone with { Damper = Line(SuspensionMember.Beam) }, "damperOn", ["lowerArm", "upperArm", "upright"]),
        ("five links' spring on an arm", Five with { Spring = Line(SuspensionMember.LowerArm) }, "springOn", ["upright"]),
        ("an arm's damper on a lower arm", Arm with { Damper = Line(SuspensionMember.LowerArm) }, "damperOn", ["beam"]),
        ("a beam's spring on an upper arm", Beam with { Spring = Line(SuspensionMember.UpperArm) }, "springOn", ["beam"]),
    ];

    public static TheoryData<string> WhatIsWrong() => [.. Wrongs.Select(one => one.Wrong)];

    [Theory]
    [MemberData(nameof(WhatIsWrong))]
    public void Points_that_cannot_be_meant_are_named_with_the_figures_of_the_case(string wrong)
    {
        var (_, suspension, member, quotes) = Wrongs.Single(one => one.Wrong == wrong);
        var found = Contradictions.Find(suspension);

        var named = Assert.Single(found, one => one.Member == member && quotes.All(quote => one.Message.Contains(quote, StringComparison.Ordinal)));
        Assert.EndsWith(".", named.Message, StringComparison.Ordinal);
        Assert.All(found, one => Assert.DoesNotContain("NaN", one.Message, StringComparison.Ordinal));
    }

    // A pivot on the body may lie 100 mm across the centre plane, a judgement; a lever needs 1 mm. Both limits are allowed themselves.
    [Theory]
    [InlineData(-100, true)]
    [InlineData(-100.001, false)]
    public void A_pivot_may_lie_a_little_across_the_centre_plane(double y, bool isAllowed)
    {
        var found = Contradictions.Find(Strut with { LowerArm = Arms(Strut.LowerArm.Front with { Y = y }, Strut.LowerArm.Rear, Strut.LowerArm.Joint) });

        Assert.Equal(isAllowed, found.All(one => one.Member != "lowerArmFront"));
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(0.999, false)]
    public void A_tie_rod_needs_a_lever(double leverMm, bool isAllowed)
    {
        var joint = new Vector3(0, 700, 200);
        var found = Contradictions.Find(Strut with
        {
            LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Rear, joint),
            StrutTop = joint + Up(400),
            TieRod = new(Strut.TieRod.Inner, new Vector3(-leverMm, 700, 250)),
        });

        Assert.Equal(isAllowed, found.All(one => one.Member != "tieRodOuter"));
    }

    // A millimetre to the left of the centre plane a wheel is on the left, and its other points are looked at for their side.
    [Theory]
    [InlineData(1, true)]
    [InlineData(0.999, false)]
    public void A_wheel_a_millimetre_left_of_the_centre_plane_is_on_the_left(double y, bool isLeft)
    {
        var found = Contradictions.Find(Strut with { WheelCentre = Strut.WheelCentre with { Y = y }, StrutTop = Strut.StrutTop.Mirrored });

        Assert.Equal(isLeft, found.Any(one => one.Member == "strutTop" && one.Message.Contains("turn the sign of its y", StringComparison.Ordinal)));
        Assert.Equal(!isLeft, found.Any(one => one.Member == "wheelCentre" && one.Message.Contains("the left corner's", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plausible_corners_have_none() => PlausibleCorners.Any.Sample(setting => Assert.Empty(Contradictions.Find(setting.Suspension)));

    [Fact]
    public void No_corner_of_the_second_working_has_any_however_hard() =>
        Assert.All(GeometryCases.All("corners"), corner => Assert.Empty(Contradictions.Find(OracleCorner.Setting(corner.GetProperty("request")).Suspension)));

    // Everything else would be told against the wrong side.
    [Fact]
    public void The_points_of_a_right_corner_are_refused_with_one_sentence() => PlausibleCorners.Any.Sample(setting =>
    {
        var one = Assert.Single(Contradictions.Find(MirroredCorner.Of(setting).Suspension));
        Assert.Equal("wheelCentre", one.Member);
        Assert.Contains("turn the sign of every y", one.Message, StringComparison.Ordinal);
    });

    // One fault does not hide another.
    [Fact]
    public void All_that_is_wrong_is_told_at_once()
    {
        var found = Contradictions.Find(Strut with
        {
            LowerArm = Arms(Strut.LowerArm.Front, Strut.LowerArm.Front, Strut.LowerArm.Joint),
            TieRod = new(Strut.TieRod.Inner, Strut.TieRod.Inner),
            WheelCentre = Strut.WheelCentre.Mirrored,
            Spring = Line(SuspensionMember.Beam),
        });

        Assert.Equal(["lowerArmRear", "tieRodOuter", "wheelCentre", "wheelCentre", "springOn"], found.Select(one => one.Member));
    }

    private static ControlArm Arms(Vector3 front, Vector3 rear, Vector3 joint) => new(front, rear, joint);

    private static Vector3 Up(double mm) => mm * Vector3.Up;

    private static SpringLine Line(SuspensionMember part) => new(new(0, 500, 600), new(0, 620, 250), part);
}
