using CsCheck;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class SteerLimitsTests
{
    private static readonly Gen<SteeredWheel> AnyWheel = Gen.Select(
        Gen.Double[-60, 60], Gen.Double[-60, 60], Gen.Double[-15, 15], Gen.Double[-5, 5],
        (casterDeg, inclinationDeg, camberDeg, toeDeg) => new SteeredWheel { CasterDeg = casterDeg, SteeringAxisInclinationDeg = inclinationDeg, CamberDeg = camberDeg, ToeDeg = toeDeg });

    [Fact]
    public void A_heading_is_reached_up_to_the_limits_and_not_beyond()
    {
        var limited = 0;
        AnyWheel.Sample(wheel =>
        {
            if (SteerLimits.Find(wheel) is not { } limits) return;
            Interlocked.Increment(ref limited);
            var sweep = SteerSweep.Create(wheel);

            Assert.True(limits.RightDeg <= -wheel.ToeDeg + 1e-9 && -wheel.ToeDeg <= limits.LeftDeg + 1e-9, $"{limits} leaves out where the wheel stands");
            foreach (var (endDeg, beyond) in new[] { (limits.RightDeg, -1), (limits.LeftDeg, 1) })
            {
                Assert.NotNull(sweep.At(endDeg - (1e-6 * beyond)));
                Assert.Null(sweep.At(endDeg + (1e-6 * beyond)));
            }
        }, iter: 1000);

        Assert.True(limited > 10, $"only {limited} of the axes have limits");
    }

    [Fact]
    public void Without_limits_every_heading_is_reached() =>
        Gen.Select(AnyWheel, Gen.Double[-180, 180]).Sample((wheel, steerDeg) =>
        {
            if (SteerLimits.Find(wheel) is null) Assert.NotNull(SteerSweep.Create(wheel).At(steerDeg));
        });

    // What the contract lets in: under 35° of lean every heading is reached.
    [Fact]
    public void No_usual_axis_has_limits() =>
        Gen.Select(Gen.Double[-5, 20], Gen.Double[-10, 28], Gen.Double[-15, 15]).Sample((casterDeg, inclinationDeg, camberDeg) =>
            Assert.Null(SteerLimits.Find(new() { CasterDeg = casterDeg, SteeringAxisInclinationDeg = inclinationDeg, CamberDeg = camberDeg, ToeDeg = 0 })));

    [Fact]
    public void A_right_wheel_has_them_mirrored_and_a_reason_quotes_them()
    {
        var limits = SteerLimits.Find(new() { CasterDeg = 20, SteeringAxisInclinationDeg = 40, CamberDeg = 15, ToeDeg = 0 })!.Value;

        Assert.Equal(limits, limits.For(WheelSide.Left));
        Assert.Equal(new SteerLimits(-limits.LeftDeg, -limits.RightDeg), limits.For(WheelSide.Right));
        var reason = SteerWords.Unreachable(limits, 55);
        Assert.Contains("55.00°", reason, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{limits.LeftDeg:0.00}°"), reason, StringComparison.Ordinal);
    }
}
