using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

public sealed class HeldPartsTests
{
    private const double HeldMm = 1e-9;

    // Rigid parts keep their lengths: the definition of the mechanism, measured on the answered pose.
    [Fact]
    public void Every_part_is_held_at_every_position() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);

            Assert.InRange(HeldParts.WorstMm(setting, state), 0, HeldMm);
            Assert.InRange(state.ResidualMm, 0, HeldMm);
        });

    // Otherwise a corner that never moved would hold all its parts.
    [Fact]
    public void A_pose_turned_by_a_millionth_of_a_degree_does_not_hold_them() =>
        PlausibleCorners.Any.Sample(setting =>
        {
            var state = Walked.To(MechanismBuilder.Build(setting), 20, 0);
            var turned = state with { Pose = state.Pose.MovedBy(default, new(1e-8, 2e-8, 3e-8)) };

            Assert.True(HeldParts.WorstMm(setting, turned) > HeldMm);
        });
}
