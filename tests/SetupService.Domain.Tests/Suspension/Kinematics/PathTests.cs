using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

public sealed class PathTests
{
    private const double Same = 1e-9;

    [Fact]
    public void A_sweep_there_and_back_agrees_with_itself() =>
        Gen.Select(PlausibleCorners.Any, Gen.Int[5, 40]).Sample((setting, steps) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, -PlausibleCorners.TravelMm, 0);
            var there = new SuspensionPose[steps + 1];
            for (var i = 0; i <= steps; i++) there[i] = state = Walked.Onward(corner, state, Travel(i, steps), 0);
            for (var i = steps; i >= 0; i--)
            {
                state = Walked.Onward(corner, state, Travel(i, steps), 0);
                Assert.InRange(StateGap.Between(there[i], state), 0, Same);
            }
        });

    [Fact]
    public void A_position_is_the_same_with_the_rack_moved_first_the_wheel_moved_first_and_straight() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var straight = Walked.To(corner, place.TravelMm, place.RackMm);
            var rackFirst = Walked.Onward(corner, Walked.To(corner, 0, place.RackMm), place.TravelMm, place.RackMm);
            var wheelFirst = Walked.Onward(corner, Walked.To(corner, place.TravelMm, 0), place.TravelMm, place.RackMm);

            Assert.InRange(StateGap.Between(straight, rackFirst), 0, Same);
            Assert.InRange(StateGap.Between(straight, wheelFirst), 0, Same);
        });

    [Fact]
    public void A_position_is_the_same_after_a_way_round_by_other_positions() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places.Array[1, 6], PlausibleCorners.Places).Sample((setting, others, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, 0, 0);
            foreach (var other in others) state = Walked.Onward(corner, state, other.TravelMm, other.RackMm);
            state = Walked.Onward(corner, state, place.TravelMm, place.RackMm);

            Assert.InRange(StateGap.Between(Walked.To(corner, place.TravelMm, place.RackMm), state), 0, Same);
        });

    private static double Travel(int index, int steps) => PlausibleCorners.TravelMm * ((2.0 * index / steps) - 1);
}
