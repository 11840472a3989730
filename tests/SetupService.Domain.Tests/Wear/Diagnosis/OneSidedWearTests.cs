using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>One tyre worn at a shoulder beside an even one is a matter of its corner (common practice, no source: a setting wears both sides alike).</summary>
public sealed class OneSidedWearTests
{
    [Theory]
    [InlineData(WheelPosition.FrontLeft, true, "front left corner", "inner shoulder")]
    [InlineData(WheelPosition.FrontRight, true, "front right corner", "inner shoulder")]
    [InlineData(WheelPosition.RearLeft, false, "rear left corner", "outer shoulder")]
    public void The_corner_is_inspected_before_anything_is_set(WheelPosition worn, bool isInner, string corner, string shoulder)
    {
        var advice = Advise(new WearUse(17_000, 0, null), [.. Enum.GetValues<WheelPosition>().Select(at => at == worn ? isInner ? Tyre(at, 5.6, 5.2, 3.1) : Tyre(at, 3.1, 5.2, 5.6) : Tyre(at, 5.8, 5.9, 5.8))]);

        var action = advice.Axles.Single(axle => axle.Axle == WheelPositions.AxleOf(worn)).Actions[0];
        Assert.Contains(corner, action.Text, StringComparison.Ordinal);
        Assert.Contains(shoulder, action.Text, StringComparison.Ordinal);
        Assert.Null(action.StepDeg);
        Assert.DoesNotContain(advice.Axles, axle => axle.Axle != WheelPositions.AxleOf(worn) && axle.Actions.Count > 0);
    }

    // A track that turns one way wears both axles to the same side: no corner is at fault. A setting wears both sides of an axle.
    [Fact]
    public void Both_axles_or_both_sides_worn_alike_are_no_corner()
    {
        var oneWay = Advise(new WearUse(0, 80, 3), [Tyre(WheelPosition.FrontLeft, 4.4, 5.4, 5.6), Tyre(WheelPosition.FrontRight, 5.4, 5.5, 5.4), Tyre(WheelPosition.RearLeft, 4.4, 5.4, 5.6), Tyre(WheelPosition.RearRight, 5.4, 5.5, 5.4)]);
        var setting = Advise(new WearUse(17_000, 0, null), [Tyre(WheelPosition.FrontLeft, 5.6, 5.2, 3.1), Tyre(WheelPosition.FrontRight, 5.6, 5.2, 3.1), Tyre(WheelPosition.RearLeft, 5.8, 5.9, 5.8), Tyre(WheelPosition.RearRight, 5.8, 5.9, 5.8)]);

        Assert.All([.. oneWay.Axles, .. setting.Axles], axle => Assert.DoesNotContain(axle.Actions, action => action.Text.Contains("corner inspected", StringComparison.Ordinal)));
    }

    private static TyreReading Tyre(WheelPosition at, double outerMm, double centreMm, double innerMm) =>
        new() { Position = at, NewDepthMm = 8, GaugeErrorMm = 0.1, Zones = TreadZone.FromDepths(new(outerMm, centreMm, innerMm)), Patterns = [] };

    private static WearAdvice Advise(WearUse use, TyreReading[] tyres)
    {
        var study = WearStudy.Compute(new WearCase { Use = use, Tyres = tyres }, null);
        return WearAdvice.Create(study, [], UnitSystem.Metric);
    }
}
