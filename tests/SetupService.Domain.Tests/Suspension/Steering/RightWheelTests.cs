using CsCheck;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

/// <summary>A right wheel stated like a left one, turned by itself: mirrored vectors, another rotation, no use of the left wheel's rows.</summary>
public sealed class RightWheelTests
{
    private static readonly Gen<SteeredWheel> AnyWheel = Gen.Select(
        Gen.Double[-5, 20], Gen.Double[-10, 40], Gen.Double[-15, 15], Gen.Double[-5, 5],
        (casterDeg, inclinationDeg, camberDeg, toeDeg) => new SteeredWheel { CasterDeg = casterDeg, SteeringAxisInclinationDeg = inclinationDeg, CamberDeg = camberDeg, ToeDeg = toeDeg });

    [Fact]
    public void Its_row_is_where_its_own_turn_heads_it() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
        {
            if (SteerSweep.Create(wheel).At(steerDeg, WheelSide.Right) is not { } row) return;
            var axis = SteeringAxis.DirectionOf(wheel.CasterDeg, wheel.SteeringAxisInclinationDeg).Mirrored;
            var spin = Rotations.About(axis, row.RotationDeg, WheelPlane.SpinOf(wheel.CamberDeg, wheel.ToeDeg).Mirrored);

            Assert.Equal(row.CamberDeg, -double.RadiansToDegrees(Math.Asin(spin.Z)), 1e-9);
            Assert.Equal(steerDeg, double.RadiansToDegrees(Math.Atan2(spin.X, -spin.Y)), 1e-9);
            Assert.Equal(steerDeg, row.SteerDeg);
        });

    [Fact]
    public void Straight_ahead_stays_a_plain_zero()
    {
        var row = SteerSweep.Create(new() { CasterDeg = 6, SteeringAxisInclinationDeg = 13, CamberDeg = -1, ToeDeg = 0 }).At(0, WheelSide.Right)!.Value;

        Assert.False(double.IsNegative(row.SteerDeg));
        Assert.False(double.IsNegative(row.RotationDeg));
    }

    [Fact]
    public void The_left_wheels_row_is_the_same_with_and_without_its_side() =>
        Gen.Select(AnyWheel, Gen.Double[-45, 45]).Sample((wheel, steerDeg) =>
            Assert.Equal(SteerSweep.Create(wheel).At(steerDeg), SteerSweep.Create(wheel).At(steerDeg, WheelSide.Left)));
}
