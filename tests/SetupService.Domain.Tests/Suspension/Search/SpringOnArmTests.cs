using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Search;

public sealed class SpringOnArmTests
{
    // An arm is a rigid triangle of its two pivots and the seat of its joint; the spring's foot keeps its place in it, whatever was
    // adjusted, and the seat lies on the upright's joint. Coordinates in the triangle: another way than the domain's, by the arm's axis.
    [Fact]
    public void A_spring_on_an_arm_keeps_its_place_on_the_arm_when_the_joint_is_moved() =>
        Gen.Select(
            PlausibleCorners.Wishbones,
            Gen.Bool,
            Gen.Double[-8, 8].Array[5],
            Gen.Double[-40, 40]).Sample((drawn, isUpper, amounts, travelMm) =>
        {
            var foot = isUpper ? new Vector3(20, 590, 460) : new Vector3(10, 600, 215);
            var line = new SpringLine(new(15, 510, 620), foot, isUpper ? SuspensionMember.UpperArm : SuspensionMember.LowerArm);
            var after = AdjustedCorner.AsStated(drawn with { Suspension = drawn.Suspension with { Spring = line } })!.With(
                [
                    new(Adjuster.LowerJointOutboard, amounts[0]), new(Adjuster.LowerJointForward, amounts[1]), new(Adjuster.LowerJointSpacer, amounts[2]),
                    new(Adjuster.UpperJointOutboard, amounts[3]), new(Adjuster.UpperJointForward, amounts[4]), new(Adjuster.RideHeight, -travelMm),
                ],
                resetToe: false)!;
            var wishbone = (DoubleWishbone)after.Mechanism.Setting.Suspension;
            var arm = isUpper ? wishbone.UpperArm : wishbone.LowerArm;
            var joint = HeldParts.PlaceOf(after.Mechanism.Setting, after.State.Pose, arm.Joint);
            var now = Carried(arm, joint, foot);

            Assert.Equal((now - line.Chassis).Length, after.Figures.SpringLengthMm!.Value, 1e-8);
            Assert.Equal((arm.Seat - foot).Length, (joint - now).Length, 1e-8);
        });

    /// <summary>Where a point of the arm is once its seat lies on the joint.</summary>
    private static Vector3 Carried(ControlArm arm, in Vector3 joint, in Vector3 point)
    {
        var (a, b) = (Frame(arm, arm.Seat), Frame(arm, joint));
        var from = point - arm.Front;
        return arm.Front + (from.Dot(a.X) * b.X) + (from.Dot(a.Y) * b.Y) + (from.Dot(a.Z) * b.Z);
    }

    private static (Vector3 X, Vector3 Y, Vector3 Z) Frame(ControlArm arm, in Vector3 outer)
    {
        var along = (arm.Rear - arm.Front).Unit();
        var square = along.Cross(outer - arm.Front).Unit();
        return (along, square, along.Cross(square));
    }
}
