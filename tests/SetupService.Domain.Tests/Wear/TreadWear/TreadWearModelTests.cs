using CsCheck;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Tests.Wear.TreadWear;

/// <summary>The wear model's formula by hand, its derivatives by differences, and what it must not depend on.</summary>
public sealed class TreadWearModelTests
{
    private static readonly Gen<double[]> Parameters = Gen.Select(
        Gen.Double[-4, 0], Gen.Double[-2, 1], Gen.Double[-1, 1], Gen.Double[-2, 2], Gen.Double[-0.2, 0.2], Gen.Double[-0.2, 0.3], Gen.Double[-2.5, 0],
        (road, track, shift, unseen, crown, outer, leanSlip) => new[] { road, track, shift, unseen, crown, outer, 0, leanSlip });

    private static readonly Gen<BendLoad> Bends = Gen.Select(
        Gen.Double[0.1, 1.9], Gen.Double[400, 7000], Gen.Double[-5, 5], Gen.Double[0.5, 1.2], Gen.Bool, (work, loadN, leanDeg, perCamber, isOuter) => new BendLoad(work, loadN, leanDeg, perCamber, isOuter));

    private static readonly Gen<WheelUse> Wheels = Gen.Select(
        Bends.Array[1, 4], Gen.Double[-4, 1], Gen.Double[-0.5, 0.5], (bends, camberDeg, toeDeg) => Wheel(camberDeg, toeDeg, bends));

    // Wear of a thousand kilometres is e^−1, 0.367879 mm. Tread 200 mm, rate 210 N/mm, load 3500 N: a degree leans the pressure by 0.104730.
    // Toe of 0.4° is a slip of 0.00698132 beside the road's 0.007: √(1 + 0.997331²) = 1.412328 times the wear, everywhere alike.
    // Camber of −2° presses the strip 0.7 inward by 1 + 0.7 · 0.209461 = 1.146623; its loaded radius there differs by 70 sin 2° / 305 = 0.00800972 of itself, its rolling radius by a third of
    // that, 0.00266991: √(1 + 0.381415²) = 1.070273; outward 1 − 0.146623 = 0.853377. The fading edge adds 0.02² / 4 by the pressure.
    [Theory]
    [InlineData(0, 0, 0.7, 1)]
    [InlineData(0, 0.4, 0.7, 1.412328)]
    [InlineData(0, -0.4, -0.2, 1.412328)]
    [InlineData(-2, 0, 0.7, 1.070273 * 1.146623)]
    [InlineData(-2, 0, -0.7, 1.070273 * 0.853377)]
    [InlineData(-2, 0, 0, 1)]
    public void Road_wear_by_hand(double camberDeg, double toeDeg, double y, double times) =>
        Assert.Equal(2 * 0.367879 * times, TreadWearModel.WornMm(Wheel(camberDeg, toeDeg), y, 2000, 0, [-1, 0, 0, 0, 0, 0, 0, Math.Log(1 / 3.0)]), 3e-4);

    // Half a thousand kilometres of track at e^0.2 = 1.221403 mm; two corners of 0.6 and 0.9 of the work. The outer one leans by 1.5° and 0.5° unseen, at
    // 6000 N: 0.061093 a degree, 0.122185 in all; the inner one by −1° at 2000 N: −0.183278. At y = −0.7: 0.6 · 1.085530 + 0.9 · 0.871705 = 1.435853.
    // Pressed 4 % more in the middle: 1 + 0.04 (1 − 3 · 0.49) = 0.9812; the outer edge wears 10 % more: 1 + 0.07.
    [Fact]
    public void Track_wear_by_hand()
    {
        var wheel = Wheel(0, 0, new BendLoad(0.6, 6000, 1.5, 1, true), new BendLoad(0.9, 2000, -1, 1, false));

        Assert.Equal(0.5 * 1.221403 * 1.435853 * 0.9812 * 1.07, TreadWearModel.WornMm(wheel, -0.7, 0, 500, [0, 0.2, 0, 0.5, 0.04, 0.1, 0, 0]), 3e-4);
    }

    [Fact]
    public void Derivatives_are_those_of_the_wear() => Gen.Select(Wheels, Parameters, Gen.Double[-1, 1], Gen.Double[0, 40_000], Gen.Double[0, 3000]).Sample((wheel, parameters, y, roadKm, trackKm) =>
    {
        const double step = 1e-4;
        var gradient = new double[TreadWearParameters.Count];
        var whole = TreadWearModel.WornMm(wheel, y, roadKm, trackKm, parameters, gradient);
        for (var k = 0; k < gradient.Length; k++)
        {
            var (less, more) = (Moved(k, -step), Moved(k, step));
            Assert.Equal((more - less) / (2 * step), gradient[k], 1e-4 * (1 + whole));
        }

        double Moved(int unknown, double by)
        {
            double[] moved = [.. parameters];
            moved[unknown] += by;
            return TreadWearModel.WornMm(wheel, y, roadKm, trackKm, moved);
        }
    });

    // A degree unseen is a degree of the outer wheels; road and track add up.
    [Fact]
    public void One_use_has_many_names() => Gen.Select(Wheels, Parameters, Gen.Double[-1, 1]).Sample((wheel, parameters, y) =>
    {
        var (unseenDeg, seen) = (parameters[TreadWearParameters.UnmodelledInclination], parameters.ToArray());
        seen[TreadWearParameters.UnmodelledInclination] = 0;
        var leaned = wheel with { Corners = [.. wheel.Corners.Select(bend => bend with { InclinationAngleDeg = bend.InclinationAngleDeg + (bend.IsOuter ? unseenDeg : 0) })] };
        var whole = TreadWearModel.WornMm(wheel, y, 5000, 300, parameters);
        var tolerance = 1e-9 * (1 + whole);

        Assert.Equal(TreadWearModel.WornMm(leaned, y, 5000, 300, seen), whole, tolerance);
        Assert.Equal(TreadWearModel.WornMm(wheel, y, 5000, 0, parameters) + (3 * TreadWearModel.WornMm(wheel, y, 0, 100, parameters)), whole, tolerance);
    });

    private static WheelUse Wheel(double camberDeg, double toeDeg, params BendLoad[] corners) => new()
    {
        Corners = corners,
        CamberDeg = camberDeg,
        ToeDeg = toeDeg,
        LoadN = 3500,
        TyreRateNPerMm = 210,
        TreadWidthMm = 200,
        RadiusMm = 305,
    };
}
