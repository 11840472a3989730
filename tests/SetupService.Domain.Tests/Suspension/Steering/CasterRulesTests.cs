using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class CasterRulesTests
{
    // Derived in a separate program: what the trade's 1.5 (common practice, no source) and 1 / (2 sin 20°) make of exact readings.
    [Theory]
    [InlineData(3, 12, 0.5, 0, 3.0940243, 3.0154406)]
    [InlineData(4, 12, 0, 0, 4.1207444, 4.0160836)]
    [InlineData(6, 13, -1.5, 0, 6.1600554, 6.003599)]
    [InlineData(8, 14, -2.5, 0.1, 8.2017947, 7.9934812)]
    [InlineData(10, 8, -3, 0, 10.294331, 10.0328701)]
    public void The_derived_figures_of_both_rules_are_reproduced(
        double casterDeg, double inclinationDeg, double camberDeg, double toeDeg, double workshopDeg, double pairDeg)
    {
        foreach (var side in Enum.GetValues<WheelSide>())
        {
            var readings = CasterReadingsTests.Readings((casterDeg, inclinationDeg, camberDeg), toeDeg, [20, 0, -20], side);
            var result = CasterReadings.From(readings, side);

            Assert.Equal(workshopDeg, result.WorkshopRuleCasterDeg!.Value, 1e-6);
            Assert.Equal(pairDeg, result.PairRuleCasterDeg!.Value, 1e-6);
            Assert.Equal(20, result.PairRuleSteerDeg!.Value);
        }
    }

    // Derived: 15° gives a factor of 1.9319, 10° one of 2.8794.
    [Theory]
    [InlineData(15, 1.9319)]
    [InlineData(10, 2.8794)]
    public void The_factor_of_a_pair_goes_with_its_steer(double steerDeg, double factor)
    {
        var result = CasterReadings.From([new(steerDeg, 1), new(-steerDeg, -1)], WheelSide.Left);

        Assert.Equal(2 * factor, result.PairRuleCasterDeg!.Value, 1e-3);
        Assert.Null(result.WorkshopRuleCasterDeg);
        Assert.Equal(CasterReadingsGap.TooFewSteerAngles, result.Gap);
    }

    [Fact]
    public void Several_readings_at_one_lock_are_averaged_and_the_widest_pair_is_taken()
    {
        SteerReading[] readings = [new(19.5, 1), new(20.5, 1.2), new(-20, -1.9), new(-21.2, -9), new(30, 2), new(-30.5, -3)];

        Assert.Equal(1.5 * 3, CasterRules.WorkshopDeg(readings, WheelSide.Left)!.Value, 1e-12);
        Assert.Equal(30.25, CasterRules.PairDeg(readings, WheelSide.Left)!.Value.SteerDeg);
        Assert.Equal(-1.5 * 3, CasterRules.WorkshopDeg(readings, WheelSide.Right)!.Value, 1e-12);
    }

    [Fact]
    public void Without_readings_at_both_locks_there_is_no_rule()
    {
        SteerReading[] oneSided = [new(20, 1), new(0, -1), new(-18.9, -2), new(-4, -1.1), new(4, -0.9)];

        Assert.Null(CasterRules.WorkshopDeg(oneSided, WheelSide.Left));
        Assert.Null(CasterRules.PairDeg([new(20, 1), new(-18.9, -2), new(4, 0), new(-4, 0)], WheelSide.Left));
    }
}
