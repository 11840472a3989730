using SetupService.Domain.Handling.Tyres;

namespace SetupService.Domain.Tests.Handling.Tyres;

/// <summary>
/// The example tyre against the Magic Formula worked by hand (a separate calculation in Python) from the coefficients of Bakker, Nyborg, Pacejka, SAE 870421
/// (1987), the camber terms from memory.
/// </summary>
public sealed class ExampleTyreTests
{
    [Theory]
    [InlineData(2000, 1933.6, 708.78, 676.25, 1197.06, 1722.54, 1885.92, 1928.73)]
    [InlineData(4000, 3690.4, 1027.33, 1009.38, 1911.06, 3096.61, 3553.50, 3676.79)]
    [InlineData(6000, 5270.4, 1076.15, 1071.95, 2110.43, 3833.10, 4794.42, 5166.09)]
    [InlineData(8000, 6673.6, 1028.83, 1029.93, 2061.02, 4011.22, 5464.51, 6253.25)]
    public void Gives_the_worked_side_forces(double loadN, double mostN, double slope, double at1, double at2, double at4, double at6, double at8)
    {
        var curve = ExampleTyre.At(loadN, 0, TyreScale.None);

        Assert.Equal(mostN, curve.MostN, 0.05);
        Assert.Equal(slope, ExampleTyre.SlopeNPerDeg(loadN, 1), 0.005);
        Assert.Equal([at1, at2, at4, at6, at8], new[] { 1.0, 2, 4, 6, 8 }.Select(slip => Math.Round(curve.ForceN(slip), 2)));
    }

    [Theory]
    [InlineData(-5, 2555.66)]
    [InlineData(-3, 2778.26)]
    [InlineData(-2, 2886.47)]
    [InlineData(0, 3096.61)]
    [InlineData(2, 3167.35)]
    [InlineData(3, 3200.85)]
    [InlineData(5, 3263.84)]
    public void Gives_the_worked_side_forces_of_a_leaning_wheel(double inclinationDeg, double forceN) =>
        Assert.Equal(forceN, ExampleTyre.At(4000, inclinationDeg, TyreScale.None).ForceN(4), 0.005);

    [Fact]
    public void The_slope_told_is_the_change_of_the_force()
    {
        var curve = ExampleTyre.At(4300, 1.5, new(1.1, 1.2, 1));
        foreach (var slip in new[] { -3.0, 0, 2, 7, 12 })
        {
            curve.ForceN(slip, out var slope);
            Assert.Equal((curve.ForceN(slip + 1e-5) - curve.ForceN(slip - 1e-5)) / 2e-5, slope, 1e-4);
        }
    }

    [Fact]
    public void The_bend_told_is_the_change_of_the_slope()
    {
        var curve = ExampleTyre.At(4300, 1.5, new(1.1, 1.2, 1));
        foreach (var slip in new[] { -3.0, 0, 2, 7, 12 })
        {
            curve.ForceN(slip, out _, out var bend);
            curve.ForceN(slip + 1e-5, out var above);
            curve.ForceN(slip - 1e-5, out var below);
            Assert.Equal((above - below) / 2e-5, bend, 1e-4);
        }
    }

    [Fact]
    public void A_curve_whose_peak_is_scaled_is_that_of_the_tyre_scaled_so()
    {
        var (scaled, made) = (ExampleTyre.At(4300, 1.5, new(1.1, 1, 1)).WithPeak(1.4), ExampleTyre.At(4300, 1.5, new(1.1, 1.4, 1)));

        foreach (var slip in new[] { -3.0, 0, 2, 7, 12 }) Assert.Equal(made.ForceN(slip), scaled.ForceN(slip), 1e-9);
        Assert.Equal(made.MostN, scaled.MostN, 1e-9);
    }

    [Fact]
    public void A_lifted_wheel_gives_nothing() => Assert.Equal(0, ExampleTyre.At(0, 3, TyreScale.None).ForceN(5));

    [Fact]
    public void A_given_cornering_stiffness_is_met_at_the_static_load()
    {
        var curve = ExampleTyre.At(3400, 0, ExampleTyre.Scale(3400, 1250));

        curve.ForceN(0, out var slope);

        Assert.Equal(1250, slope, 1e-9);
        Assert.Equal(ExampleTyre.At(3400, 0, TyreScale.None).MostN, curve.MostN, 1e-9);
    }

    [Fact]
    public void The_peak_of_a_pair_is_where_its_force_rises_no_more()
    {
        TyrePair pair = new(ExampleTyre.At(6100, 0, TyreScale.None), ExampleTyre.At(900, 0, TyreScale.None), 0.2, -0.2);
        var slip = 3.0;

        var peak = pair.PeakN(ref slip);

        var most = Enumerable.Range(0, 4000).Max(i => pair.ForceN(0.01 * i, out _));
        Assert.Equal(most, peak, 0.01);
        Assert.True(peak >= most);
    }

    [Fact]
    public void The_slip_found_gives_the_force_asked()
    {
        TyrePair pair = new(ExampleTyre.At(5000, -1, TyreScale.None), ExampleTyre.At(2000, 1, TyreScale.None), 0.1, -0.3);
        foreach (var force in new[] { -500.0, 0, 2500, 5500 })
            Assert.Equal(force, pair.ForceN(pair.SlipFor(force, 15)!.Value.SlipDeg, out _), 1e-6);
        Assert.Null(pair.SlipFor(9000, 5));
    }

    // The peak at half a newton, by the same coefficients: −22.1 · 0.0005² + 1011 · 0.0005 = 0.50549 N; without load none.
    [Theory]
    [InlineData(0.5, 0.50549)]
    [InlineData(0, 0)]
    [InlineData(-100, 0)]
    public void A_tyre_grips_by_any_load(double loadN, double mostN) => Assert.Equal(mostN, ExampleTyre.At(loadN, 0, TyreScale.None).MostN, 1e-5);
}
