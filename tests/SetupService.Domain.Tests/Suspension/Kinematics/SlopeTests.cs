using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>
/// Slopes come from the constraints' derivatives; here they are taken from neighbouring positions: central differences of fourth order
/// over steps of half a millimetre, good to some 1e-10 of what is differentiated.
/// </summary>
public sealed class SlopeTests
{
    private const double StepMm = 0.5;
    private const double Slope = 1e-8;

    [Fact]
    public void The_gains_of_camber_and_toe_and_the_motion_ratios_are_the_slopes_of_their_curves() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);
            var figures = WheelKinematics.Compute(corner, state);

            Assert.Equal(OfFigure(near => near.CamberDeg), figures.CamberGainDegPerMm, Slope);
            Assert.Equal(OfFigure(near => near.ToeDeg), figures.ToeGainDegPerMm, Slope);
            if (figures.SpringMotionRatio is { } spring) Assert.Equal(-OfFigure(near => near.SpringLengthMm!.Value), spring, Slope);
            if (figures.DamperMotionRatio is { } damper) Assert.Equal(-OfFigure(near => near.DamperLengthMm!.Value), damper, Slope);
            Assert.Equal(figures.SpringLengthMm is null, figures.SpringMotionRatio is null);
            Assert.Equal(figures.DamperLengthMm is null, figures.DamperMotionRatio is null);

            double OfFigure(Func<WheelFigures, double> of) => PerTravel(corner, state, near => of(WheelKinematics.Compute(corner, near)));
        });

    // The points of the upright at the contact and at the wheel centre, followed: what instant centres, roll centre and the slopes
    // of the side view are made of.
    [Fact]
    public void Instant_centres_roll_centre_and_side_view_slopes_follow_from_the_path_of_the_point_at_the_contact() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);
            var figures = WheelKinematics.Compute(corner, state);
            var wheel = WheelKinematics.Wheel(corner, state);
            var contact = wheel.Contact(setting.LoadedRadiusMm);
            var moved = PathOf(corner, state, contact);
            var centreMoved = PathOf(corner, state, wheel.Centre);

            // Half a metre above the contact the upright moves otherwise by the turn alone.
            var turning = PathOf(corner, state, contact + (500 * Vector3.Up)) - moved;
            Assert.Equal(contact.Y * moved.Y / moved.Z, figures.RollCentreHeightMm ?? (figures.IsBeamInHeave ? contact.Y * moved.Y / moved.Z : double.NaN), 1000 * Slope);
            Assert.Equal(moved.X / moved.Z, figures.ContactForwardSlope!.Value, Slope);
            Assert.Equal(centreMoved.X, figures.CentreForwardSlope, Slope);
            Assert.Equal(1, centreMoved.Z, Slope);

            // Compared as the spin that each distance stands for, for the distance itself may be beyond all bounds.
            Assert.Equal(-turning.Y / 500, moved.Z / figures.SwingArmMm ?? 0, Slope);
            Assert.Equal(turning.X / 500, -moved.Z / (contact.X - figures.SideInstantCentreXMm) ?? 0, Slope);
        });

    // The tie rod's end of a five-link corner moved a little either way turns the upright about the axis that is answered.
    [Fact]
    public void The_steering_axis_of_five_links_is_the_one_a_small_movement_of_the_rack_turns_the_upright_about() =>
        Gen.Select(PlausibleCorners.FiveLinks, PlausibleCorners.Places).Sample((setting, place) =>
        {
            const double RackStepMm = 0.01;
            var corner = MechanismBuilder.Build(setting);
            var state = Walked.To(corner, place.TravelMm, place.RackMm);
            var figures = WheelKinematics.Compute(corner, state);
            var a = Walked.Onward(corner, state, place.TravelMm, place.RackMm - RackStepMm).Pose.Turn;
            var b = Walked.Onward(corner, state, place.TravelMm, place.RackMm + RackStepMm).Pose.Turn;
            var (p, q) = (new Vector3(a.X, a.Y, a.Z), new Vector3(b.X, b.Y, b.Z));
            var along = (a.W * q) - (b.W * p) - q.Cross(p);
            var axis = new SteeringAxis(default, along.Z < 0 ? -along : along);

            Assert.Equal(axis.CasterDeg, figures.CasterDeg!.Value, 1e-4);
            Assert.Equal(axis.SteeringAxisInclinationDeg, figures.SteeringAxisInclinationDeg!.Value, 1e-4);
        });

    private static Vector3 PathOf(CornerMechanism corner, SuspensionPose state, Vector3 place)
    {
        var turn = state.Pose.Turn;
        var inUpright = HeldParts.Turned(new Rotation(turn.W, -turn.X, -turn.Y, -turn.Z), place - state.Pose.Centre);
        return new(
            PerTravel(corner, state, near => Place(near).X),
            PerTravel(corner, state, near => Place(near).Y),
            PerTravel(corner, state, near => Place(near).Z));

        Vector3 Place(in SuspensionPose near) => near.Pose.Centre + HeldParts.Turned(near.Pose.Turn, inUpright);
    }

    private static double PerTravel(CornerMechanism corner, SuspensionPose state, Func<SuspensionPose, double> of)
    {
        return ((8 * Difference(1)) - Difference(2)) / (12 * StepMm);

        double Difference(int steps) => At(steps) - At(-steps);

        double At(int steps) => of(Walked.Onward(corner, state, state.TravelMm + (steps * StepMm), state.RackMm));
    }
}
