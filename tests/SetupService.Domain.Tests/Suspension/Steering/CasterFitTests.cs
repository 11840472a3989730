using CsCheck;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class CasterFitTests
{
    private static readonly double[] SteersDeg = [-20, -10, 0, 10, 20];

    // The fit's own sum of squares is another way to the residuals.
    [Fact]
    public void The_residuals_of_the_readings_make_the_scatter_the_fit_tells() =>
        Gen.Select(Gen.Double[-0.5, 0.5].Array[5], Gen.Bool).Sample((errorsDeg, isRight) =>
        {
            var side = isRight ? WheelSide.Right : WheelSide.Left;
            var readings = CasterReadingsTests.Readings((6.4, 13.1, -0.7), 0.08, SteersDeg, side);
            for (var i = 0; i < readings.Length; i++) readings[i] = readings[i] with { CamberDeg = readings[i].CamberDeg + errorsDeg[i] };
            var fit = CasterReadings.From(readings, side).Fit!.Value;
            var sum = readings.Sum(reading => Math.Pow(reading.CamberDeg - fit.CamberDegAt(reading.SteerDeg, side), 2));

            Assert.Equal(fit.ResidualStandardDeviationDeg!.Value, Math.Sqrt(sum / 2), 1e-9);
        });

    [Fact]
    public void Between_the_readings_the_camber_is_that_of_the_turned_wheel() =>
        Gen.Select(Gen.Double[-5, 20], Gen.Double[-5, 25], Gen.Double[-6, 6], Gen.Double[-40, 40]).Sample((casterDeg, inclinationDeg, camberDeg, steerDeg) =>
        {
            var axis = (casterDeg, inclinationDeg, camberDeg);
            var fit = CasterReadings.From(CasterReadingsTests.Readings(axis, 0, SteersDeg, WheelSide.Left), WheelSide.Left).Fit!.Value;

            Assert.Equal(CasterReadingsTests.CamberAt(axis, 0, steerDeg), fit.CamberDegAt(steerDeg, WheelSide.Left), 1e-7);
            Assert.Equal(CasterReadingsTests.CamberAt(axis, 0, -steerDeg), fit.CamberDegAt(steerDeg, WheelSide.Right), 1e-7);
            Assert.Equal(fit.CamberAheadDeg, fit.CamberDegAt(0, WheelSide.Left), 1e-12);
        });

    [Theory]
    [InlineData(6.4, 13.1, 0, "readingsOnly carOnPlates")]
    [InlineData(-6.4, 13.1, 0, "unusualAxis readingsOnly carOnPlates")]
    [InlineData(20.5, 13.1, 0, "unusualAxis readingsOnly carOnPlates")]
    [InlineData(6.4, 41, 0, "unusualAxis readingsOnly carOnPlates")]
    [InlineData(6.4, 13.1, 1, "scatteredReadings readingsOnly carOnPlates")]
    public void What_looks_wrong_is_a_caution(double casterDeg, double inclinationDeg, double errorDeg, string codes)
    {
        var readings = CasterReadingsTests.Readings((casterDeg, inclinationDeg, -0.7), 0, SteersDeg, WheelSide.Left);
        readings[1] = readings[1] with { CamberDeg = readings[1].CamberDeg + errorDeg };

        var cautions = SteeringCautions.For(CasterReadings.From(readings, WheelSide.Left).Fit!.Value);

        Assert.Equal(codes, string.Join(' ', cautions.Select(caution => caution.Code)));
    }

    [Fact]
    public void A_reason_quotes_the_figures_of_its_case()
    {
        Assert.StartsWith("4 readings at 2 steer angles", Reason([new(20, 1), new(-20, -2), new(-20.1, -2.1), new(20, 1.1)]), StringComparison.Ordinal);
        Assert.StartsWith("3 readings at 1 steer angle ", Reason([new(20, 1), new(20, 1.1), new(20.1, 0.9)]), StringComparison.Ordinal);
        Assert.Contains("within 0.90°", Reason([new(0, 1), new(0.3, 1.1), new(0.6, 0.9), new(0.9, 1)]), StringComparison.Ordinal);
        Assert.Contains("signs", Reason([new(0, 0), new(0.6, 15), new(1.2, -15)]), StringComparison.Ordinal);
        Assert.Contains("caster of 6.16°", CasterReadingsWords.ShortCut(6.16), StringComparison.Ordinal);
        Assert.Empty(CasterReadingsWords.ShortCut(null));
    }

    private static string Reason(SteerReading[] readings) =>
        CasterReadingsWords.Reason(CasterReadings.From(readings, WheelSide.Left).Gap!.Value, readings);
}
