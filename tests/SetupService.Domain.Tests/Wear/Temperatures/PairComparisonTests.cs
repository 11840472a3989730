using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Tests.Wear.Temperatures;

public sealed class PairComparisonTests
{
    [Fact]
    public void The_axles_are_compared_by_the_means_of_all_their_treads()
    {
        var pairs = PairComparison.Compute(WheelPairs.FrontLessRear, Car(90, 96, 80, 78), null)!.Value;

        Assert.Equal(14, pairs.DifferenceC.Value, 1e-9);
        // Twelve places of 1 °C, three to a wheel and two wheels to a side: √(4 × 1/3) / 2.
        Assert.Equal(1.5 * Math.Sqrt(4 / 3.0) / 2, pairs.DifferenceC.StandardError, 1e-12);
        Assert.Equal(RangeVerdict.Above, pairs.Verdict);
        Assert.True(pairs.IsClear);
        Assert.Contains("understeers", PairWords.Describe(pairs, UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_are_compared_on_each_axle()
    {
        var car = Car(90, 96, 80, 65);

        Assert.Equal(-6, PairComparison.Compute(WheelPairs.FrontLeftLessRight, car, null)!.Value.DifferenceC.Value, 1e-9);
        Assert.Equal(15, PairComparison.Compute(WheelPairs.RearLeftLessRight, car, null)!.Value.DifferenceC.Value, 1e-9);
    }

    [Fact]
    public void A_missing_wheel_leaves_the_comparison_out()
    {
        var car = Car(90, 96, 80, 65)[..3];

        Assert.Null(PairComparison.Compute(WheelPairs.FrontLessRear, car, null));
        Assert.Null(PairComparison.Compute(WheelPairs.RearLeftLessRight, car, null));
        Assert.NotNull(PairComparison.Compute(WheelPairs.FrontLeftLessRight, car, null));
        Assert.Equal("front axle against rear axle needs the temperatures of all four treads", PairWords.Lacking(WheelPairs.FrontLessRear));
        Assert.Equal("rear left tyre against rear right tyre needs the temperatures of both treads", PairWords.Lacking(WheelPairs.RearLeftLessRight));
    }

    [Fact]
    public void The_order_of_measuring_is_said()
    {
        var untimed = PairComparison.Compute(WheelPairs.FrontLessRear, Car(90, 90, 80, 80), 20)!.Value;
        Assert.Equal(ReadingOrder.NotTimed, untimed.Order);
        Assert.Contains("what was read last", PairWords.Describe(untimed, UnitSystem.Metric), StringComparison.Ordinal);

        var apart = PairComparison.Compute(WheelPairs.FrontLessRear, Car(90, 90, 80, 80, 20, 30, 70, 80), 20)!.Value;
        Assert.Equal(ReadingOrder.Apart, apart.Order);
        Assert.Equal(50, apart.WaitedS);
        Assert.Contains("The rear axle was read 50 s later", PairWords.Describe(apart, UnitSystem.Metric), StringComparison.Ordinal);

        var hotterLater = PairComparison.Compute(WheelPairs.FrontLessRear, Car(80, 80, 90, 90, 20, 30, 70, 80), 20)!.Value;
        Assert.Contains("so on the lap the difference was larger", PairWords.Describe(hotterLater, UnitSystem.Metric), StringComparison.Ordinal);

        var alike = PairComparison.Compute(WheelPairs.FrontLessRear, Car(90, 90, 80, 80, 20, 30, 25, 35), 20)!.Value;
        Assert.Equal(ReadingOrder.Alike, alike.Order);
    }

    // By hand with τ 600 s and air at 20 °C: front 20 + 70 e^(25/600) = 92.98, rear 20 + 60 e^(75/600) = 87.99: 4.99 of the 10 °C read are left.
    [Fact]
    public void What_waiting_took_is_given_back_with_its_range()
    {
        var end = PairComparison.Compute(WheelPairs.FrontLessRear, Car(90, 90, 80, 80, 25, 25, 75, 75), 20)!.Value.AtLapEndC!.Value;

        Assert.Equal(4.99, end.Value, 0.01);
        Assert.InRange(4.99, end.Lower, end.Upper);
        // With τ 200 s: 20 + 70 × 1.133148 − 20 − 60 × 1.454991 = −7.98.
        Assert.True(end.Lower < -7.9);
    }

    [Fact]
    public void A_reading_that_came_too_late_leaves_no_verdict()
    {
        var late = PairComparison.Compute(WheelPairs.FrontLeftLessRight, Car(90, 60, 80, 80, 20, 130, 70, 80), 20)!.Value;

        Assert.Equal(RangeVerdict.Unknown, late.Verdict);
        Assert.Null(late.AtLapEndC);
    }

    private static TreadReading[] Car(double frontLeftC, double frontRightC, double rearLeftC, double rearRightC, params double[] afterS) =>
    [
        Flat(frontLeftC, WheelPosition.FrontLeft, afterS, 0), Flat(frontRightC, WheelPosition.FrontRight, afterS, 1),
        Flat(rearLeftC, WheelPosition.RearLeft, afterS, 2), Flat(rearRightC, WheelPosition.RearRight, afterS, 3),
    ];

    private static TreadReading Flat(double meanC, WheelPosition at, double[] afterS, int index) =>
        TemperatureFiguresTests.Tread(meanC - 3, meanC, meanC + 3, at, afterS.Length > 0 ? afterS[index] : null);

    // A difference is clear where its whole 90 % range says the same.
    [Theory]
    [InlineData(0.01, true)]
    [InlineData(1000, false)]
    public void A_difference_is_clear_where_its_whole_range_is(double standardErrorC, bool isClear)
    {
        var verdict = UsualTemperatures.BetweenPairs.Judge(0);

        Assert.Equal(isClear, new PairComparison(default, new Estimate(0, standardErrorC), null, verdict, ReadingOrder.Alike, null).IsClear);
    }
}
