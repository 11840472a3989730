using CsCheck;
using SetupService.Domain.Handling.CamberTarget;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>A tread of springs on the straight against the integrals over its width, done by hand.</summary>
public sealed class StraightRunningTests
{
    private const double LoadN = 3400;
    private const double RateNPerMm = 210;
    private const double WidthMm = 190;
    private const double RadiusMm = 305;
    private const double DeflectionMm = LoadN / RateNPerMm;

    [Fact]
    public void Upright_every_third_carries_a_third_and_wears_alike()
    {
        var runs = At(0);

        Assert.Equal(100 / 3.0, runs.InnerShoulderLoadPct, 1e-9);
        Assert.Equal(100 / 3.0, runs.OuterShoulderLoadPct, 1e-9);
        Assert.Equal(0, runs.PressureSpread, 1e-9);
        Assert.Equal(1, runs.InnerShoulderWearRatio.Value, 1e-9);
    }

    // A linear pressure over the width: 1/3 + w s/(9 δ) on the low third, s the lean as height per width.
    [Theory]
    [InlineData(-0.5)]
    [InlineData(-2)]
    [InlineData(-5)]
    [InlineData(3)]
    public void While_both_shoulders_bear_the_low_third_carries_what_a_linear_pressure_puts_there(double camberDeg)
    {
        var share = (1 / 3.0) + (WidthMm * Math.Sin(double.DegreesToRadians(-camberDeg)) / (9 * DeflectionMm));

        Assert.Equal(100 * share, At(camberDeg).InnerShoulderLoadPct, 1e-9);
    }

    // Past s w/2 = δ the outer shoulder is off the road and pressure is a triangle b wide: b = √(2 δ w/s).
    [Theory]
    [InlineData(-11)]
    [InlineData(-15)]
    public void With_the_outer_shoulder_off_the_road_the_pressure_is_a_triangle(double camberDeg)
    {
        var lean = Math.Sin(double.DegreesToRadians(-camberDeg));
        Assert.True(lean * WidthMm / 2 > DeflectionMm);
        var bearingMm = Math.Sqrt(2 * DeflectionMm * WidthMm / lean);
        var share = 1 - Math.Pow(1 - (WidthMm / 3 / bearingMm), 2);

        Assert.Equal(100 * share, At(camberDeg).InnerShoulderLoadPct, 0.05);
    }

    // A linear pressure 1 + c u over −1 … 1, c = s w/(2 δ), differs from its mean by c²/3 in mean square.
    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(-4)]
    [InlineData(4)]
    public void Pressure_spreads_as_a_linear_one_does(double camberDeg)
    {
        var c = Math.Sin(double.DegreesToRadians(Math.Abs(camberDeg))) * WidthMm / (2 * DeflectionMm);

        Assert.Equal(c * c / 3, At(camberDeg).PressureSpread, 1e-4);
    }

    [Fact]
    public void Leaning_the_other_way_swaps_the_shoulders() =>
        Gen.Double[-15, 15].Sample(camberDeg =>
        {
            var (one, other) = (At(camberDeg), At(-camberDeg));
            Assert.Equal(one.InnerShoulderLoadPct, other.OuterShoulderLoadPct, 1e-9);
            Assert.Equal(one.PressureSpread, other.PressureSpread, 1e-9);
        });

    [Fact]
    public void More_negative_camber_loads_the_inner_shoulder_more() =>
        Gen.Select(Gen.Double[-15, 14], Gen.Double[0.05, 1]).Sample((camberDeg, less) =>
            Assert.True(At(camberDeg - less).InnerShoulderLoadPct >= At(camberDeg).InnerShoulderLoadPct));

    [Fact]
    public void Leaning_inwards_the_wear_ratio_lies_within_its_range_whatever_the_tyre() =>
        Gen.Select(Gen.Double[-15, 0], Gen.Double[-5, 5], Gen.Double[500, 20_000], Gen.Double[80, 600], Gen.Double[90, 400], Gen.Double[200, 450]).Sample(
            (camberDeg, toeDeg, loadN, rate, widthMm, radiusMm) =>
            {
                var runs = StraightRunning.Compute(camberDeg, toeDeg, loadN, rate, widthMm, radiusMm);
                Assert.InRange(runs.InnerShoulderWearRatio.Value, runs.InnerShoulderWearRatio.Lower - 1e-12, runs.InnerShoulderWearRatio.Upper + 1e-12);
                Assert.InRange(runs.InnerShoulderLoadPct + runs.OuterShoulderLoadPct, 0, 100 + 1e-9);
            }, iter: 5000);

    // In fine strips: pressure 1 + c u over −1 … 1 with c = s w/(2 δ), slip √(s₀² + (ρ u w sin γ/2R)²). With the whole difference of the strips' radii it was 1.45 at −2°.
    [Theory]
    [InlineData(-1)]
    [InlineData(-2)]
    [InlineData(-3)]
    public void A_leaned_strip_rolls_on_a_radius_that_differs_by_a_third_of_what_it_is_pressed_in(double camberDeg)
    {
        var ratio = At(camberDeg).InnerShoulderWearRatio;
        var value = Worn(camberDeg, 0.002, 1 / 3.0);

        Assert.Equal(value, ratio.Value, 1e-3);

        // What is not known of the slip beside it, 0.1 to 0.5 %, and of the strips' rolling, 0.1 to 0.5, by squares.
        Assert.Equal(value - double.Hypot(value - Worn(camberDeg, 0.005, 1 / 3.0), value - Worn(camberDeg, 0.002, 0.1)), ratio.Lower, 1e-3);
        Assert.Equal(value + double.Hypot(value - Worn(camberDeg, 0.001, 1 / 3.0), value - Worn(camberDeg, 0.002, 0.5)), ratio.Upper, 1e-3);
    }

    private static double Worn(double camberDeg, double background, double rollingShare)
    {
        const int strips = 3000;
        var (inner, all) = (0.0, 0.0);
        var lean = Math.Sin(double.DegreesToRadians(-camberDeg));
        for (var i = 0; i < strips; i++)
        {
            var u = -1 + (2 * (i + 0.5) / strips);
            var wear = (1 + (WidthMm * lean / (2 * DeflectionMm) * u)) * double.Hypot(background, rollingShare * u * WidthMm / 2 * lean / RadiusMm);
            all += wear;
            if (i >= 2 * strips / 3) inner += wear;
        }

        return 3 * inner / all;
    }

    private static StraightRunning At(double camberDeg) => StraightRunning.Compute(camberDeg, 0, LoadN, RateNPerMm, WidthMm, RadiusMm);

    // More than 3.5° is beyond what road cars are set to: common practice, no source.
    [Theory]
    [InlineData(-3.5, false)]
    [InlineData(-3.5001, true)]
    [InlineData(4.0, false)]
    public void Much_negative_camber_is_cautioned(double camberDeg, bool isMuch) =>
        Assert.Equal(isMuch, CamberTargetCautions.Build(camberDeg).Any(one => one.Code == "muchCamber"));
}
