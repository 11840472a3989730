using CsCheck;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Readings;

/// <summary>Depths across and round a tread come down to the figures a person would work out by hand.</summary>
public sealed class TreadFiguresTests
{
    [Fact]
    public void Three_places_are_met_exactly() =>
        Gen.Select(Gen.Double[0.5, 7], Gen.Double[0.5, 7], Gen.Double[0.5, 7]).Sample((outer, centre, inner) =>
        {
            var figures = TreadFigures.Compute(Tyre(TreadZone.FromDepths(new AcrossTread<double>(outer, centre, inner))))!.Value;
            Assert.Equal(outer, figures.DepthMm.Outer, 1e-9);
            Assert.Equal(centre, figures.DepthMm.Centre, 1e-9);
            Assert.Equal(inner, figures.DepthMm.Inner, 1e-9);
        });

    // By hand: new 8 mm, worn 4, 3 and 2 mm at −0.7, 0 and 0.7: a straight line, so the mean is 3, the tilt 2/3 and there is no bow.
    [Fact]
    public void Tilt_and_bow_by_hand()
    {
        var figures = TreadFigures.Compute(Tyre(TreadZone.FromDepths(new AcrossTread<double>(4, 5, 6))))!.Value;

        Assert.Equal(3, figures.WornMm.Value, 1e-9);
        Assert.Equal(2.0 / 3, figures.ShoulderDifference.Value, 1e-9);
        Assert.Equal(0, figures.CrownDifference.Value, 1e-9);
    }

    // By hand: shoulders worn 4, centre 3: a parabola 3 + 1/0.49 y², whose mean over the width is 3 + 1/1.47; bow −1 by that mean.
    [Fact]
    public void Shoulders_worn_more_are_a_negative_bow()
    {
        var figures = TreadFigures.Compute(Tyre(TreadZone.FromDepths(new AcrossTread<double>(4, 5, 4))))!.Value;

        Assert.Equal(3 + (1 / 1.47), figures.WornMm.Value, 1e-9);
        Assert.Equal(-1 / (3 + (1 / 1.47)), figures.CrownDifference.Value, 1e-9);
    }

    // The spread told is the one that repeated readings have.
    [Fact]
    public void Repeated_readings_scatter_as_told()
    {
        var random = new Random(7);
        var told = TreadFigures.Compute(Tyre([new(10, 5), new(30, 5.2), new(50, 5.3), new(70, 5.2), new(90, 5)]))!.Value.ShoulderDifference.StandardError;
        var tilts = Enumerable.Range(0, 4000).Select(_ => TreadFigures.Compute(Tyre([.. new[] { 5, 5.2, 5.3, 5.2, 5 }.Select((mm, i) => new TreadZone(10 + (20 * i), mm + Normal()))]))!.Value.ShoulderDifference.Value).ToArray();
        var scatter = Math.Sqrt(tilts.Sum(tilt => (tilt - tilts.Average()) * (tilt - tilts.Average())) / (tilts.Length - 1));

        Assert.InRange(scatter / told, 0.93, 1.07);

        double Normal() => 0.2 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    [Fact]
    public void Two_places_tell_no_profile() => Assert.Null(TreadFigures.Compute(Tyre([new(20, 5), new(80, 5)])));

    // One thin side: a wave of 0.3 mm once round, whose root mean square is 0.3/√2 ≈ 0.21.
    [Fact]
    public void One_thin_side_goes_once_round()
    {
        AcrossTread<double>[] around = [.. Enumerable.Range(0, 6).Select(i => 5 + (0.3 * Math.Cos(Math.PI * i / 3))).Select(mm => new AcrossTread<double>(mm, mm, mm))];
        var figures = TreadFigures.Compute(Tyre(TreadZone.FromDepths(around[0])) with { AroundMm = around, GaugeErrorMm = 0.02 })!.Value;

        Assert.Equal(1, figures.OncePerTurnShare!.Value.Value, 1e-9);
        Assert.Equal(0.3 / Math.Sqrt(2) * Math.Sqrt(6.0 / 5), figures.RoundSpreadMm!.Value.Value, 0.005);
    }

    // By hand: the outer rib read 5.0 and 5.2, the others alike: sum of squares 2 · 0.1² = 0.02 at 3 · (2 − 1) = 3 degrees of freedom, variance
    // 0.0066667, open by √(2/3) of itself = 0.0054433. A gauge of 0.02 mm: spread √(0.0066667 − 0.0004) = 0.0791623, its error
    // 0.0054433 / (2 · 0.0791623) = 0.0343807. A gauge of 0.2 mm: nothing beyond it, open by √0.0054433 / 2 = 0.0368894.
    [Theory]
    [InlineData(0.02, 0.0791623, 0.0343807)]
    [InlineData(0.2, 0, 0.0368894)]
    public void The_spread_round_a_tyre_and_what_it_leaves_open_by_hand(double gaugeMm, double spreadMm, double errorMm)
    {
        AcrossTread<double>[] around = [new(5, 5, 5), new(5.2, 5, 5)];
        var spread = TreadFigures.Compute(Tyre(TreadZone.FromDepths(around[0])) with { AroundMm = around, GaugeErrorMm = gaugeMm })!.Value.RoundSpreadMm!.Value;

        Assert.Equal(spreadMm, spread.Value, 5e-8);
        Assert.Equal(errorMm, spread.StandardError, 5e-8);
    }

    // By hand: outer depths 5.0, 5.1, 5.0, 4.9 round the tyre, the others alike, sum of squares 0.02. A gauge of 0.02 mm would cause 3 · (4 − 1) · 0.0004 =
    // 0.0036 of that, 0.18, and leaves 0.4 of it open; one of 0.2 mm would cause all.
    [Theory]
    [InlineData(0.02, 0.072)]
    [InlineData(0.2, 0.4)]
    public void What_the_gauge_causes_is_open_in_the_share_once_round(double gaugeMm, double error)
    {
        AcrossTread<double>[] around = [new(5, 5, 5), new(5.1, 5, 5), new(5, 5, 5), new(4.9, 5, 5)];
        var once = TreadFigures.Compute(Tyre(TreadZone.FromDepths(around[0])) with { AroundMm = around, GaugeErrorMm = gaugeMm })!.Value.OncePerTurnShare!.Value;

        Assert.Equal(1, once.Value, 1e-9);
        Assert.Equal(error, once.StandardError, 1e-9);
    }

    [Fact]
    public void Three_hollows_do_not_go_once_round()
    {
        AcrossTread<double>[] around = [.. Enumerable.Range(0, 6).Select(i => 5 + (0.2 * (i % 2))).Select(mm => new AcrossTread<double>(mm, mm, mm))];

        Assert.Equal(0, TreadFigures.Compute(Tyre(TreadZone.FromDepths(around[0])) with { AroundMm = around, GaugeErrorMm = 0.02 })!.Value.OncePerTurnShare!.Value.Value, 1e-9);
    }

    private static TyreReading Tyre(TreadZone[] zones) => new() { Position = WheelPosition.FrontLeft, NewDepthMm = 8, GaugeErrorMm = 0.2, Zones = zones };
}
