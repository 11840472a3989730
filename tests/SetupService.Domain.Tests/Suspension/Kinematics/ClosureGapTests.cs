using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

public sealed class ClosureGapTests
{
    private static readonly Vector3 Centre = new(0, 760, 310);

    // By construction: the first link stands upright under the wheel centre, so nothing but its length can give way to travel; the
    // others' inner ends lie half the travel higher, so they close again when the wheel has risen by all of it.
    [Theory]
    [InlineData(50, "link 1 is 50.0 mm too short")]
    [InlineData(-50, "link 1 is 50.0 mm too long")]
    [InlineData(120, "link 1 is 120.0 mm too short")]
    [InlineData(0.5, "link 1 is 0.5 mm too short")]
    public void What_a_link_lacks_is_what_its_length_lacks(double travelMm, string said)
    {
        var gap = ClosureGap.Find(LackingTravel(travelMm), travelMm, 0, new SuspensionPose { Pose = new UprightPose(Centre, Rotation.None) });

        Assert.Equal(ConstraintRole.Link1, gap.Role);
        Assert.Equal(travelMm, gap.GapMm, 1e-9);
        Assert.Equal(Math.Abs(travelMm), gap.ResidualMm, 1e-9);
        Assert.Equal(said, ClosureWords.Part(gap));
    }

    // A link that is too short lacks least straight below its joint, so the search comes back there from wherever the wheel was last.
    [Fact]
    public void What_lacks_does_not_depend_on_where_the_wheel_was_last() =>
        Gen.Select(Gen.Double[5, 120], Gen.Double[-15, 15].Array[2], Gen.Double[-0.05, 0.05].Array[3]).Sample((travelMm, movedMm, turnedRad) =>
        {
            var corner = LackingTravel(travelMm);
            var last = new UprightPose(Centre, Rotation.None).MovedBy(new(movedMm[0], movedMm[1], 0), new(turnedRad[0], turnedRad[1], turnedRad[2]));

            var gap = ClosureGap.Find(corner, travelMm, 0, new SuspensionPose { Pose = last });

            Assert.Equal(ConstraintRole.Link1, gap.Role);
            Assert.Equal(travelMm, gap.GapMm, 1e-3);
            Assert.False(gap.IsNone);
        });

    // Where the parts do meet there is no gap, wherever the search begins.
    [Fact]
    public void Parts_that_meet_lack_nothing() =>
        Gen.Select(PlausibleCorners.Any, Gen.Double[-40, 40], Gen.Double[-5, 5].Array[2], Gen.Double[-0.02, 0.02].Array[3]).Sample((setting, travelMm, movedMm, turnedRad) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var there = Walked.To(corner, travelMm, 0);
            var gap = ClosureGap.Find(corner, travelMm, 0, there with { Pose = there.Pose.MovedBy(new(movedMm[0], movedMm[1], 0), new(turnedRad[0], turnedRad[1], turnedRad[2])) });

            Assert.True(gap.IsNone, $"{gap}");
        });

    private static CornerMechanism LackingTravel(double travelMm)
    {
        return MechanismBuilder.Build(new CornerSetting
        {
            Suspension = new FiveLink
            {
                Links =
                [
                    new(Centre - (200 * Vector3.Up), Centre), Across(150, 100, 40), Across(-90, 120, 45), Across(60, -130, 50), Across(-140, -90, -60),
                ],
                WheelCentre = Centre,
            },
            CamberDeg = -1,
            ToeDeg = 0.1,
            LoadedRadiusMm = 300,
        });

        Link Across(double alongMm, double upMm, double aheadMm)
        {
            var outer = Centre + new Vector3(alongMm, -80, upMm);
            return new(outer + new Vector3(aheadMm, -330, travelMm / 2), outer);
        }
    }
}
