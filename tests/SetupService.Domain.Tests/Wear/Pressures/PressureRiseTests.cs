using CsCheck;
using SetupService.Domain.Wear.Pressures;

namespace SetupService.Domain.Tests.Wear.Pressures;

public sealed class PressureRiseTests
{
    private const double SeaLevelKpa = 101.325;

    private static readonly Gen<PressureRise> Rises =
        Gen.Select(Gen.Double[80, 400], Gen.Double[0, 100], Gen.Double[60, 105], (cold, rise, air) => new PressureRise(cold, cold + rise, air));

    // Worked by hand: (p + 1.01325) × T2/T1 − 1.01325 bar from 20 °C = 293.15 K. 2.0 bar at 80 °C: 3.01325 × 353.15/293.15 = 3.62998, less 1.01325 = 2.617.
    [Theory]
    [InlineData(200, 60, 241.1)]
    [InlineData(200, 80, 261.7)]
    [InlineData(200, 100, 282.2)]
    [InlineData(220, 60, 263.8)]
    [InlineData(220, 80, 285.8)]
    [InlineData(220, 100, 307.7)]
    [InlineData(240, 60, 286.6)]
    [InlineData(240, 80, 309.9)]
    [InlineData(240, 100, 333.2)]
    public void A_pressure_rises_with_absolute_temperature_as_worked_by_hand(double coldKpa, double hotC, double hotKpa)
    {
        Assert.Equal(hotKpa, new PressureRise(coldKpa, coldKpa, SeaLevelKpa).UntouchedColdKpa(20, hotC), 0.06);
        Assert.Equal(hotC, new PressureRise(coldKpa, hotKpa, SeaLevelKpa).HotGasC(20), 0.06);
    }

    // The trade's rule of 1 psi per 10 °F: by the gas law 0.94 psi at 35 psi and 20 °C; 1 psi = 6.894757 kPa, 10 °F = 5.5556 °C.
    [Fact]
    public void The_trades_rule_of_thumb_is_nearly_right()
    {
        const double Psi = 6.894757;
        var risen = new PressureRise(35 * Psi, 35 * Psi, SeaLevelKpa).UntouchedColdKpa(20, 20 + (10 / 1.8));

        Assert.Equal(0.94, (risen / Psi) - 35, 0.005);
    }

    [Fact]
    public void Cold_to_hot_and_back_is_where_it_was() => Gen.Select(Rises, Gen.Double[80, 500]).Sample((rise, kpa) =>
        Assert.Equal(kpa, rise.ColdForHotKpa(rise.HotForColdKpa(kpa)), 1e-9));

    [Fact]
    public void The_same_day_asks_for_the_same_setting() => Gen.Select(Rises, Gen.Double[80, 500], Gen.Double[-20, 40], Gen.Double[0, 1]).Sample((rise, aim, coldC, follows) =>
    {
        Assert.Equal(rise.ColdForHotKpa(aim), rise.NextColdForHotKpa(aim, coldC, coldC, follows), 1e-9);
        Assert.Equal(rise.HotKpa, rise.UntouchedHotKpa(coldC, coldC, follows), 1e-9);
    });

    [Fact]
    public void The_next_day_there_and_back_is_where_it_was() => Gen.Select(Rises, Gen.Double[80, 500], Gen.Double[-20, 40], Gen.Double[-20, 40], Gen.Double[0, 1]).Sample((rise, aim, coldC, nextC, follows) =>
        Assert.Equal(aim, rise.NextHotForColdKpa(rise.NextColdForHotKpa(aim, coldC, nextC, follows), coldC, nextC, follows), 1e-8));

    [Fact]
    public void A_tyre_that_gains_pressure_gets_hotter_and_a_warmer_day_leaves_more_in_it() => Gen.Select(Rises, Gen.Double[-20, 40], Gen.Double[0.1, 30]).Sample((rise, coldC, warmer) =>
    {
        Assert.True(rise.HotGasC(coldC) >= coldC - 1e-9);
        Assert.True(rise.UntouchedColdKpa(coldC, coldC + warmer) > rise.ColdKpa);
    });

    // By drawing inputs with the errors stated, 40 000 times: the spread of the result is the error told.
    [Fact]
    public void The_error_told_is_the_spread_of_repeated_readings()
    {
        var rise = new PressureRise(200, 250, 100);
        var errors = new PressureErrors(2, 1, 2);
        var chance = new Random(20261129);
        var hot = new double[40_000];
        var setting = new double[hot.Length];
        for (var i = 0; i < hot.Length; i++)
        {
            var drawn = new PressureRise(200 + (2 * Normal()), 250 + (2 * Normal()), 100 + Normal());
            hot[i] = drawn.HotGasC(20 + (2 * Normal()));
            setting[i] = drawn.ColdForHotKpa(240);
        }

        var told = errors.Propagate(rise, 20, static (one, coldC) => one.HotGasC(coldC));
        Assert.Equal(rise.HotGasC(20), told.Value);
        Assert.Equal(Spread(hot), told.StandardError, 0.02 * told.StandardError);
        var toldSetting = errors.Propagate(rise, static one => one.ColdForHotKpa(240));
        Assert.Equal(Spread(setting), toldSetting.StandardError, 0.02 * toldSetting.StandardError);

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

        static double Spread(double[] drawn)
        {
            var mean = drawn.Average();
            return Math.Sqrt(drawn.Sum(one => (one - mean) * (one - mean)) / (drawn.Length - 1));
        }
    }
}
