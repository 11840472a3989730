using CsCheck;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Tests.Suspension.Sweep;

/// <summary>
/// Ackermann geometry as ISO 8855 defines it: the spin axes of the steered wheels meet at the centre of the turn, on the line of the
/// rear axle. The percentage is the field's convention, from memory; its ends follow from the definition.
/// </summary>
public sealed class SteeringPairTests
{
    private const double WheelbaseMm = 2600;
    private const double AxisTrackMm = 1460;

    private static readonly Gen<double> Lock = Gen.Double[5.01, 45];

    // The turn's centre on the rear axle's line, both front wheels square to it: worked from the centre, not from the cotangents.
    [Fact]
    public void Wheels_whose_axes_meet_on_the_rear_axles_line_have_100_percent() =>
        Gen.Select(Lock, Gen.Bool).Sample((innerDeg, isLeft) =>
        {
            var centreMm = WheelbaseMm / Math.Tan(double.DegreesToRadians(innerDeg));
            var outerDeg = double.RadiansToDegrees(Math.Atan2(WheelbaseMm, centreMm + AxisTrackMm));
            var pair = Pair(innerDeg, outerDeg, isLeft);

            Assert.Equal(100, pair.AckermannPct!.Value, 1e-8);

            // The outer contact goes round that centre; its distance from it by Pythagoras.
            var radiusM = Math.Sqrt((WheelbaseMm * WheelbaseMm) + ((centreMm + AxisTrackMm) * (centreMm + AxisTrackMm))) / 1000;
            Assert.Equal(2 * radiusM, pair.TurningCircleM!.Value, 1e-9);
        });

    [Fact]
    public void Parallel_wheels_have_0_percent() =>
        Gen.Select(Lock, Gen.Bool).Sample((angleDeg, isLeft) => Assert.Equal(0, Pair(angleDeg, angleDeg, isLeft).AckermannPct!.Value, 1e-9));

    [Fact]
    public void Wheels_that_toe_in_in_the_turn_have_less_than_none() =>
        Gen.Select(Lock, Gen.Bool).Sample((angleDeg, isLeft) => Assert.True(Pair(angleDeg, angleDeg + 1, isLeft).AckermannPct < 0));

    // Turned to the other side the pair is its mirror.
    [Fact]
    public void The_mirrored_turn_has_the_same_figures() =>
        Gen.Select(Lock, Gen.Double[0, 5]).Sample((innerDeg, lessDeg) =>
        {
            var (left, right) = (Pair(innerDeg, innerDeg - lessDeg, isLeft: true), Pair(innerDeg, innerDeg - lessDeg, isLeft: false));

            Assert.Equal(left.AckermannPct!.Value, right.AckermannPct!.Value, 1e-12);
            Assert.Equal(left.TurningCircleM ?? 0, right.TurningCircleM ?? 0, 1e-12);
        });

    [Fact]
    public void Below_5_degrees_and_without_a_wheelbase_nothing_is_told()
    {
        Assert.Null(Pair(4.99, 4.9, isLeft: true).AckermannPct);
        Assert.Null(Pair(4.99, 4.9, isLeft: true).TurningCircleM);
        Assert.NotNull(Pair(5.01, 4.9, isLeft: true).AckermannPct);
        var withoutWheelbase = SteeringPair.Compute(Wheel(-20), Wheel(18), AxisTrackMm, null);
        Assert.Equal((18, null, null), (withoutWheelbase.OtherSteerDeg, withoutWheelbase.AckermannPct, withoutWheelbase.TurningCircleM));
        Assert.Null(SteeringPair.Compute(Wheel(-20), Wheel(18), null, WheelbaseMm).AckermannPct);
    }

    // A wheel past square has no turn's centre; the tangents there would give any number.
    [Fact]
    public void A_wheel_steered_square_or_beyond_has_no_figures() =>
        Gen.Select(Gen.Double[90, 170], Gen.Double[-170, 170]).Sample((innerDeg, outerDeg) =>
        {
            var pair = SteeringPair.Compute(Wheel(-innerDeg), Wheel(Math.Min(outerDeg, innerDeg)), AxisTrackMm, WheelbaseMm);

            Assert.Null(pair.AckermannPct);
            Assert.Null(pair.TurningCircleM);
        });

    private static SteeringPair Pair(double innerDeg, double outerDeg, bool isLeft) => isLeft
        ? SteeringPair.Compute(Wheel(-innerDeg), Wheel(outerDeg), AxisTrackMm, WheelbaseMm)
        : SteeringPair.Compute(Wheel(outerDeg), Wheel(-innerDeg), AxisTrackMm, WheelbaseMm);

    private static (double ToeDeg, double? ContactForwardMm) Wheel(double toeDeg) => (toeDeg, 0);
}
