using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>More of a sign never speaks against the cause that makes it.</summary>
public sealed class MonotoneTests
{
    private static readonly Gen<AxleSetting> Settings = Gen.Select(
        Gen.Enum<CarAxle>(), Gen.Double[0, 30_000], Gen.Double[0, 300], Gen.Int[0, 3], Gen.Enum<DrivenAxle>(),
        (at, roadKm, laps, has, driven) => AxleSetting.From(
            new WearCase { Use = new WearUse((has & 1) != 0 ? roadKm : null, (has & 2) != 0 ? laps : null, 3), Vehicle = new Vehicle { DrivenAxle = driven }, Tyres = [] }, at));

    // Every cause against its absence, by every sign it moves: further the way it moves it, never less likely; of one that goes either way, further from the ordinary.
    [Fact]
    public void More_of_a_sign_never_lowers_its_cause() => Gen.Select(Settings, Gen.Double[-60, 60], Gen.Double[0, 30], Gen.Double[0, 0.5]).Sample((setting, value, more, error) =>
    {
        foreach (var rows in WearTable.Shifts.GroupBy(row => (row.Cause, row.Sign)))
        {
            var scale = WearTable.Baselines.Single(row => row.Sign == rows.Key.Sign).Spread;
            var mean = Mean(setting, rows.Key.Sign);
            var towards = Math.Sign(rows.Sum(row => row.Mean));
            var (less, further) = towards != 0
                ? (mean + (value * scale), mean + ((value + (towards * more)) * scale))
                : (mean + (value * scale), mean + ((value + (Math.Sign(value) * more)) * scale));
            var (one, other) = (Ratio(setting, rows.Key.Cause, rows.Key.Sign, new(less, error * scale)), Ratio(setting, rows.Key.Cause, rows.Key.Sign, new(further, error * scale)));

            Assert.True(other >= one - 1e-9, $"{rows.Key}: {other} at {further} after {one} at {less}");
        }
    });

    // So in the whole: a pressure that falls never clears under-inflation.
    [Fact]
    public void A_falling_pressure_never_lowers_under_inflation() => Gen.Select(AnyCase.Tyre(WheelPosition.FrontLeft), AnyCase.Tyre(WheelPosition.FrontRight), Gen.Double[80, 300], Gen.Double[0, 100]).Sample((left, right, kpa, fall) =>
    {
        Assert.True(Under(Math.Max(80, kpa - fall)) >= Under(kpa) - 1e-9);

        double Under(double now) => WearDiagnosis.Compute(new WearCase
        {
            Use = new WearUse(8000, 40, 3),
            Tyres = [left with { Pressure = new(now, null, 230, null) }, right with { Pressure = new(now, null, 230, null) }],
        }).Probability(WearCause.UnderInflation, CarAxle.Front)!.Value;
    });

    private static double Mean(AxleSetting setting, WearSign sign) => setting.Baseline(WearTable.Baselines.Single(row => row.Sign == sign)).Mean;

    private static double Ratio(AxleSetting setting, WearCause cause, WearSign sign, Estimate read)
    {
        var signs = new AxleSigns { [sign] = read };
        var likelihoods = new AxleLikelihoods(signs, setting);
        var (with, without) = (new double[AxleLikelihoods.StateLength], new double[AxleLikelihoods.StateLength]);
        likelihoods.Compute(1 << (int)cause, with);
        likelihoods.Compute(0, without);
        return AxleLikelihoods.LogLikelihood(with, sign) - AxleLikelihoods.LogLikelihood(without, sign);
    }
}
