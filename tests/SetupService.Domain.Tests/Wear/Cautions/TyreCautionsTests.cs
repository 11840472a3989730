using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;

namespace SetupService.Domain.Tests.Wear.Cautions;

public sealed class TyreCautionsTests
{
    [Fact]
    public void A_sound_tyre_calls_for_none() =>
        Assert.Empty(TyreCautions.Build([Tyre(6, 6, 6) with { AgeYears = 3 }], UnitSystem.Metric));

    [Fact]
    public void What_is_not_known_calls_for_none() =>
        Assert.Empty(TyreCautions.Build([new TyreCondition(WheelPosition.RearLeft)], UnitSystem.Metric));

    [Fact]
    public void The_gravest_come_first_whatever_wheel_they_are_on()
    {
        TyreCondition[] tyres =
        [
            Tyre(2.5, 2.6, 2.7) with { AgeYears = 7 },
            Tyre(6, 6, 0.8, WheelPosition.FrontRight) with { AgeYears = 11 },
            Tyre(1.5, 1.6, 1.7, WheelPosition.RearLeft),
            Tyre(5, 5, 5, WheelPosition.RearRight) with { Damage = [TyreDamage.Bulge, TyreDamage.CordsVisible] },
        ];

        var codes = TyreCautions.Build(tyres, UnitSystem.Metric).Select(one => one.Code);

        Assert.Equal(["damagedTyre", "wornOut", "wornOut", "thinShoulder", "tooOld", "unevenAxle", "wetGrip", "oldTyre"], codes);
    }

    // 1.6 mm by the law of most countries (from memory), 3 mm by owners' literature; a lay gauge leaves 1.645 × 0.25 = 0.41 mm open.
    [Theory]
    [InlineData(1.6, "wornOut")]
    [InlineData(1.61, "nearLimit")]
    [InlineData(2.0, "nearLimit")]
    [InlineData(2.1, null)]
    public void The_limit_is_met_by_the_shallowest_place_and_within_the_gauges_error(double leastMm, string? code)
    {
        var codes = TyreCautions.Build([Tyre(leastMm, 5, 5)], UnitSystem.Metric).Select(one => one.Code).Where(one => one is "wornOut" or "nearLimit");

        Assert.Equal(code is null ? [] : [code], codes);
    }

    // A millimetre left at a shoulder beside a middle with tread: common practice, no source.
    [Theory]
    [InlineData(1.0, 5, true)]
    [InlineData(1.01, 5, false)]
    [InlineData(0.5, 1.7, true)]
    [InlineData(0.5, 1.6, false)] // the middle is at its limit too: worn out, and everybody sees it
    public void A_shoulder_is_thin_at_a_millimetre_beside_a_middle_that_looks_well(double shoulderMm, double centreMm, bool isThin)
    {
        Assert.Equal(isThin, TyreCautions.Build([Tyre(shoulderMm, centreMm, 6)], UnitSystem.Metric).Any(one => one.Code == "thinShoulder"));
        Assert.Equal(isThin, TyreCautions.Build([Tyre(6, centreMm, shoulderMm)], UnitSystem.Metric).Any(one => one.Code == "thinShoulder"));
    }

    [Fact]
    public void A_limit_of_the_callers_own_counts() =>
        Assert.Contains(TyreCautions.Build([Tyre(3.9, 5, 5) with { LimitMm = 4 }], UnitSystem.Metric), one => one.Code == "wornOut" && one.Text.Contains("4.0 mm", StringComparison.Ordinal));

    [Theory]
    [InlineData(5.9, false, null)]
    [InlineData(6, false, "oldTyre")]
    [InlineData(9.99, false, "oldTyre")]
    [InlineData(10, false, "tooOld")]
    [InlineData(8, true, "tooOld")]
    public void Age_is_judged_at_six_and_ten_years(double years, bool mayBeOlder, string? code) =>
        Assert.Equal(code is null ? [] : [code], TyreCautions.Build([Tyre(6, 6, 6) with { AgeYears = years, MayBeOlder = mayBeOlder }], UnitSystem.Metric).Select(one => one.Code));

    [Theory]
    [InlineData(6, 4, false)]
    [InlineData(6, 3.9, true)]
    public void Tyres_of_one_axle_may_differ_by_two_millimetres(double leftMm, double rightMm, bool isUneven)
    {
        TyreCondition[] tyres = [Tyre(leftMm, leftMm, leftMm), Tyre(rightMm, rightMm, rightMm, WheelPosition.FrontRight)];

        Assert.Equal(isUneven, TyreCautions.Build(tyres, UnitSystem.Metric).Any(one => one.Code == "unevenAxle"));
        Assert.DoesNotContain(TyreCautions.Build([tyres[0], tyres[1] with { Position = WheelPosition.RearLeft }], UnitSystem.Metric), one => one.Code == "unevenAxle");
    }

    [Fact]
    public void Every_text_defers_to_local_law_and_quotes_its_case()
    {
        TyreCondition[] tyres =
        [
            Tyre(0.8, 5, 6) with { AgeYears = 7, Damage = [.. Enum.GetValues<TyreDamage>()] },
            Tyre(2.5, 2.5, 2.5, WheelPosition.FrontRight) with { AgeYears = 12.34 },
            Tyre(1.8, 1.8, 1.8, WheelPosition.RearLeft),
            Tyre(8, 8, 8, WheelPosition.RearRight),
        ];

        var cautions = TyreCautions.Build(tyres, UnitSystem.Metric);

        Assert.All(cautions, one => Assert.Contains("local law", one.Text, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(["damagedTyre", "wornOut", "nearLimit", "thinShoulder", "tooOld", "unevenAxle", "wetGrip", "oldTyre"], cautions.Select(one => one.Code).Distinct());
        Assert.Contains(cautions, one => one.Text.StartsWith("Replace the front right tyre whatever its tread: it is 12.3 years old", StringComparison.Ordinal));
        Assert.Contains(cautions, one => one.Text.StartsWith("Do not drive fast on the front left tyre: its outer shoulder has 0.8 mm left, its middle 5.0 mm", StringComparison.Ordinal));
    }

    private static TyreCondition Tyre(double outerMm, double centreMm, double innerMm, WheelPosition at = WheelPosition.FrontLeft) =>
        new(at) { LeastDepthMm = new(outerMm, centreMm, innerMm) };
}
