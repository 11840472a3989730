using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Domain.Tests.Handling.Ride;

/// <summary>A body pushed down and let go: the closed form against a numerical solution of the motion, and against the logarithmic decrement.</summary>
public sealed class ReleasedBodyTests
{
    [Theory]
    [InlineData(0.2, 0.45)]
    [InlineData(0.5, 0.1)]
    [InlineData(0.3, 1.4)]
    [InlineData(1.2, 0.3)]
    [InlineData(1, 1)]
    public void The_motion_is_that_of_the_differential_equation(double bumpRatio, double reboundRatio)
    {
        var axle = Axle(bumpRatio, reboundRatio);
        var body = ReleasedBody.From(axle)!.Value;
        var omega = Math.Sqrt(1000 * axle.WheelRateNPerMm / axle.SprungMassKg);
        const int Steps = 20001;
        var path = RungeKutta.FourthOrder(Vector<double>.Build.DenseOfArray([-1, 0]), 0, 2, Steps, (_, state) =>
            Vector<double>.Build.DenseOfArray([state[1], (-omega * omega * state[0]) - (2 * (state[1] > 0 ? reboundRatio : bumpRatio) * omega * state[1])]));

        for (var i = 0; i < Steps; i += 500) Assert.Equal(path[i][0], body.Height(2.0 * i / (Steps - 1)), 3e-6);
    }

    // Logarithmic decrement: half a swing leaves exp(-pi zeta / sqrt(1 - zeta^2)) of it; 0.5 leaves 0.163 (any book on vibrations).
    [Fact]
    public void It_rises_past_its_height_by_what_rebound_damping_leaves()
    {
        Assert.Equal(0.163, ReleasedBody.From(Axle(0.1, 0.5))!.Value.Overshoot, 5e-4);
        Assert.Equal(0, ReleasedBody.From(Axle(0.1, 1))!.Value.Overshoot);
    }

    [Fact]
    public void More_rebound_damping_never_lets_it_rise_further()
    {
        var last = double.PositiveInfinity;
        for (var ratio = 0.05; ratio < 1.5; ratio += 0.05)
        {
            var now = ReleasedBody.From(Axle(0.3, ratio))!.Value.Overshoot;
            Assert.True(now < last || now == 0);
            last = now;
        }
    }

    [Fact]
    public void Without_a_damper_figure_nothing_is_told()
    {
        Assert.Null(ReleasedBody.From(Axle(0.3, 0.4) with { ReboundDampingNsPerM = null }));
        Assert.Null(ReleasedBody.From(Axle(0.3, 0.4) with { BumpDampingNsPerM = null }));
    }

    [Fact]
    public void The_sentence_goes_by_the_way_up_which_rebound_brakes()
    {
        Assert.StartsWith("Pushed down and let go, the body rises past its height by 16 % of the push.", RideWords.Feel(Axle(0.1, 0.5)), StringComparison.Ordinal);
        Assert.StartsWith("Pushed down and let go, the body comes back without rising past its height.", RideWords.Feel(Axle(0.2, 1.1)), StringComparison.Ordinal);
    }

    private static RideAxle Axle(double bumpRatio, double reboundRatio)
    {
        var bare = new RideAxle
        {
            SprungMassKg = 310,
            MotionRatio = 0.95,
            SpringForceN = 3200,
            WheelRateNPerMm = 25,
            TyreRateNPerMm = 220,
            WheelHopFrequencyHz = 13,
            BumpDampingNsPerM = null,
            ReboundDampingNsPerM = null,
            SpringLengthMm = null,
            BumpLeftMm = null,
            DroopLeftMm = null,
            CoilClearanceMm = null,
            SeatedAtDroopMm = null,
        };
        return bare with { BumpDampingNsPerM = bumpRatio * bare.CriticalDampingNsPerM, ReboundDampingNsPerM = reboundRatio * bare.CriticalDampingNsPerM };
    }
}
