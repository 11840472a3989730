using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Tests.TestData;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class CasterReadingsTests
{
    private static readonly Gen<(double CasterDeg, double SteeringAxisInclinationDeg, double CamberDeg)> Axes =
        Gen.Select(Gen.Double[-5, 20], Gen.Double[-5, 25], Gen.Double[-6, 6]);

    // Derived in a separate program, printed to 1e-7°; inclination from camber readings multiplies that by twenty.
    [Fact]
    public void The_axes_of_the_derived_table_are_found_from_three_readings_and_from_all()
    {
        var axes = CsvTable.Rows("steer-fixed-axis.csv")
            .GroupBy(row => (CasterDeg: row.Number("caster"), SteeringAxisInclinationDeg: row.Number("inclination")), row => new SteerReading(row.Number("steer"), row.Number("camber")))
            .ToArray();

        Assert.Equal(5, axes.Length);
        foreach (var axis in axes)
        {
            SteerReading[] three = [.. axis.Where(reading => Math.Abs(reading.SteerDeg) is 0 or 20)];
            foreach (var readings in (SteerReading[][])[three, [.. axis]])
            {
                var fit = CasterReadings.From(readings, WheelSide.Left).Fit!.Value;
                Assert.Equal(axis.Key.CasterDeg, fit.CasterDeg, 1e-6);
                Assert.Equal(axis.Key.SteeringAxisInclinationDeg, fit.SteeringAxisInclinationDeg, 5e-6);
            }
        }
    }

    [Fact]
    public void Exact_readings_give_back_the_axis_on_either_side() =>
        Gen.Select(Axes, Gen.Double[-0.3, 0.3], Gen.Double[5, 30].Array[1, 4], Gen.Bool).Sample((axis, toeDeg, locksDeg, isRight) =>
        {
            var side = isRight ? WheelSide.Right : WheelSide.Left;
            double[] steersDeg = [-20, 0, 17, .. locksDeg];
            var result = CasterReadings.From(Readings(axis, toeDeg, steersDeg, side), side);

            Assert.Null(result.Gap);
            Assert.Equal(axis.CasterDeg, result.Fit!.Value.CasterDeg, 1e-9);
            Assert.Equal(axis.SteeringAxisInclinationDeg, result.Fit.Value.SteeringAxisInclinationDeg, 1e-8);
            Assert.Equal(CamberAt(axis, toeDeg, 0), result.Fit.Value.CamberAheadDeg, 1e-9);
            Assert.InRange(result.Fit.Value.ResidualStandardDeviationDeg!.Value, 0, 1e-9);
        });

    // Another way to the same: the axis is across every difference of two spin axes, so three readings give it as a vector product.
    [Fact]
    public void Three_readings_give_the_axis_that_the_vector_product_gives() =>
        Gen.Select(Axes, Gen.Double[-0.15, 0.15].Array[3]).Sample((axis, errorsDeg) =>
        {
            var readings = Readings(axis, 0, [-20, 0, 20], WheelSide.Left);
            for (var i = 0; i < 3; i++) readings[i] = readings[i] with { CamberDeg = readings[i].CamberDeg + errorsDeg[i] };
            Vector3[] spins = [.. readings.Select(reading => WheelPlane.SpinOf(reading.CamberDeg, -reading.SteerDeg))];
            var direction = (spins[0] - spins[1]).Cross(spins[2] - spins[1]);
            var expected = new SteeringAxis(default, direction.Z > 0 ? direction : -direction);

            var fit = CasterReadings.From(readings, WheelSide.Left).Fit!.Value;
            Assert.Equal(expected.CasterDeg, fit.CasterDeg, 1e-8);
            Assert.Equal(expected.SteeringAxisInclinationDeg, fit.SteeringAxisInclinationDeg, 1e-7);
            Assert.Null(fit.ResidualStandardDeviationDeg);
        });

    // Derived for a nearly upright axis and readings at 0 and ±d: √2 / (2 sin d) and √6 / (2 (1 − cos d)) times the gauge's error.
    [Theory]
    [InlineData(20, 2.07, 20.3)]
    [InlineData(10, 4.07, 80.6)]
    public void The_gauges_error_is_carried_over_as_derived(double steerDeg, double casterFactor, double inclinationFactor)
    {
        var fit = CasterReadings.From(Readings((0.5, 0.5, 0), 0, [-steerDeg, 0, steerDeg], WheelSide.Left), WheelSide.Left, 0.05).Fit!.Value;

        Assert.Equal(casterFactor * 0.05, fit.CasterStandardErrorDeg, 0.05 * 0.01);
        Assert.Equal(inclinationFactor * 0.05, fit.InclinationStandardErrorDeg, 0.05 * 0.1);
        Assert.Equal(0.05, fit.CamberAheadStandardErrorDeg, 1e-4);
        Assert.Equal(0.05, fit.GaugeErrorDeg);
    }

    // Chance of a fixed seed; 90 % of 4,000 trials, give or take four standard errors of that share (0.47 % each).
    [Fact]
    public void Nine_ranges_of_ten_hold_the_true_axis()
    {
        var random = new Random(20261125);
        var exact = Readings((6, 13, -1.5), 0, [-20, -20, -10, 0, 10, 20, 20], WheelSide.Left);
        var (casterHeld, inclinationHeld, scatterDeg) = (0, 0, 0.0);
        for (var trial = 0; trial < 4_000; trial++)
        {
            SteerReading[] noisy = [.. exact.Select(reading => reading with { CamberDeg = reading.CamberDeg + (0.1 * Chance.Normal(random)) })];
            var fit = CasterReadings.From(noisy, WheelSide.Left).Fit!.Value;
            if (fit.Caster.Lower <= 6 && 6 <= fit.Caster.Upper) casterHeld++;
            if (fit.Inclination.Lower <= 13 && 13 <= fit.Inclination.Upper) inclinationHeld++;
            scatterDeg += fit.ResidualStandardDeviationDeg!.Value / 4_000;
        }

        Assert.InRange(casterHeld / 4_000.0, 0.881, 0.919);
        Assert.InRange(inclinationHeld / 4_000.0, 0.881, 0.919);
        Assert.InRange(scatterDeg, 0.09, 0.1);
    }

    [Fact]
    public void The_order_of_readings_does_not_matter() =>
        Gen.Select(Axes, Gen.Double[-1, 1].Array[5]).Sample((axis, errorsDeg) =>
        {
            var readings = Readings(axis, 0, [-20, -10, 0, 10, 20], WheelSide.Left);
            for (var i = 0; i < 5; i++) readings[i] = readings[i] with { CamberDeg = readings[i].CamberDeg + errorsDeg[i] };
            SteerReading[] shuffled = [readings[3], readings[0], readings[4], readings[2], readings[1]];
            var one = CasterReadings.From(readings, WheelSide.Left).Fit!.Value;
            var other = CasterReadings.From(shuffled, WheelSide.Left).Fit!.Value;

            Assert.Equal(one.CasterDeg, other.CasterDeg, 1e-8);
            Assert.Equal(one.SteeringAxisInclinationDeg, other.SteeringAxisInclinationDeg, 1e-7);
        });

    public static TheoryData<SteerReading[], CasterReadingsGap> Untold() => new()
    {
        { [], CasterReadingsGap.TooFewSteerAngles },
        { [new(20, 1), new(20, 1.1), new(20.1, 0.9)], CasterReadingsGap.TooFewSteerAngles },
        { [new(20, 1), new(-20, -2), new(-20.1, -2.1), new(20, 1.1)], CasterReadingsGap.TooFewSteerAngles },
        { [new(0, 1), new(0.3, 1.1), new(0.6, 0.9), new(0.9, 1)], CasterReadingsGap.SteerAnglesTooClose },
        { [new(0, 0), new(0.6, 15), new(1.2, -15)], CasterReadingsGap.NoAxisFits },
        { [new(-20, double.NaN), new(0, -1), new(20, 1)], CasterReadingsGap.NoAxisFits },
    };

    [Theory]
    [MemberData(nameof(Untold))]
    public void Readings_that_cannot_tell_say_what_is_missing(SteerReading[] readings, CasterReadingsGap expected)
    {
        var result = CasterReadings.From(readings, WheelSide.Left);

        Assert.Equal(expected, result.Gap);
        Assert.Null(result.Fit);
    }

    // Whatever the request's ranges let in, there is either a finite axis or a reason.
    [Fact]
    public void Any_readings_give_an_axis_in_numbers_or_a_reason() =>
        Gen.Select(Gen.Double[-60, 60], Gen.Double[-15, 15], (steerDeg, camberDeg) => new SteerReading(steerDeg, camberDeg)).Array[3, 12].Sample(readings =>
        {
            var result = CasterReadings.From(readings, WheelSide.Right);
            if (result.Fit is not { } fit) return result.Gap is not null;
            return result.Gap is null && double.IsFinite(
                fit.CasterDeg + fit.SteeringAxisInclinationDeg + fit.CamberAheadDeg + fit.CasterStandardErrorDeg + fit.InclinationStandardErrorDeg
                + fit.CamberAheadStandardErrorDeg + fit.Caster.Lower + fit.Inclination.Upper);
        });

    internal static double CamberAt((double CasterDeg, double SteeringAxisInclinationDeg, double CamberDeg) axis, double toeDeg, double steerDeg) =>
        SteerSweep.Create(new() { CasterDeg = axis.CasterDeg, SteeringAxisInclinationDeg = axis.SteeringAxisInclinationDeg, CamberDeg = axis.CamberDeg, ToeDeg = toeDeg })
            .At(steerDeg)!.Value.CamberDeg;

    internal static SteerReading[] Readings(
        (double CasterDeg, double SteeringAxisInclinationDeg, double CamberDeg) axis, double toeDeg, double[] steersDeg, WheelSide side) =>
        [.. steersDeg.Select(steerDeg => new SteerReading(steerDeg, CamberAt(axis, toeDeg, side == WheelSide.Left ? steerDeg : -steerDeg)))];
}
