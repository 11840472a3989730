using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

public sealed class MirrorTests
{
    private const double Same = 1e-9;

    [Fact]
    public void The_mirrored_corner_moves_in_the_mirror() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var (left, right) = (MechanismBuilder.Build(setting), MechanismBuilder.Build(MirroredCorner.Of(setting)));
            var leftState = Walked.To(left, place.TravelMm, place.RackMm);
            var rightState = Walked.To(right, place.TravelMm, -place.RackMm);
            var (leftWheel, rightWheel) = (WheelKinematics.Wheel(left, leftState), WheelKinematics.Wheel(right, rightState));

            Near(leftWheel.Centre.Mirrored, rightWheel.Centre);
            Near(leftWheel.Spin.Mirrored, rightWheel.Spin);
            Near(leftState.PerTravel.Velocity.Mirrored, rightState.PerTravel.Velocity);
            Near(-1 * leftState.PerTravel.Spin.Mirrored, rightState.PerTravel.Spin);
        });

    // What points outboard of a left wheel points inboard of its mirror: such figures change sign, the others stay.
    [Fact]
    public void The_mirrored_corner_has_the_same_figures() =>
        Gen.Select(PlausibleCorners.Any, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var left = FiguresAt(MechanismBuilder.Build(setting), place.TravelMm, place.RackMm);
            var right = FiguresAt(MechanismBuilder.Build(MirroredCorner.Of(setting)), place.TravelMm, -place.RackMm);
            foreach (var (name, value) in FigureTable.Of(left))
            {
                var mirrored = FigureTable.Value(right, name);
                var expected = name switch
                {
                    nameof(WheelFigures.ToeDeg) => 180 * Math.Sign(mirrored!.Value) - value,
                    nameof(WheelFigures.RackMm) or nameof(WheelFigures.SteeringAxisInclinationDeg) or nameof(WheelFigures.MechanicalTrailMm)
                        or nameof(WheelFigures.HalfTrackChangeMm) or nameof(WheelFigures.HalfTrackMm) or nameof(WheelFigures.InstantCentreYMm)
                        or nameof(WheelFigures.SwingArmMm) or nameof(WheelFigures.ToeGainDegPerMm) => -value,
                    _ => value,
                };
                FigureTable.AssertSame(name, expected, mirrored);
            }
        });

    // The other wheel of a pair is taken as the left corner at the opposite rack; here it is the right corner at the same rack.
    [Fact]
    public void The_other_wheels_steer_is_that_of_the_mirrored_corner() =>
        Gen.Select(PlausibleCorners.WithTieRod, PlausibleCorners.Places).Sample((setting, place) =>
        {
            var sweep = TravelSweep.Start(MechanismBuilder.Build(setting), SweepRange.Only(place.TravelMm), SweepRange.Only(place.RackMm), default)!;
            Assert.True(sweep.TryNext(out var row, out _));
            var right = MechanismBuilder.Build(MirroredCorner.Of(setting));
            var spin = WheelKinematics.Wheel(right, Walked.To(right, place.TravelMm, place.RackMm)).Spin;

            // A right wheel whose outboard spin axis points forward is steered to the left.
            Assert.Equal(double.RadiansToDegrees(Math.Atan2(spin.X, -spin.Y)), row!.Value.Pair!.Value.OtherSteerDeg, Same);
        });

    private static WheelFigures FiguresAt(CornerMechanism corner, double travelMm, double rackMm) =>
        WheelKinematics.Compute(corner, Walked.To(corner, travelMm, rackMm));

    private static void Near(in Vector3 expected, in Vector3 actual) => Assert.InRange((expected - actual).Length, 0, Same);
}
