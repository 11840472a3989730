using CsCheck;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Domain.Tests.Geometry.Alignment;

public sealed class ToeUnitsTests
{
    // Derived by hand: 0.10° at the edge of a 16 in rim (406.4 mm) is 0.709 mm, ten minutes are 1.182 mm, 0.10° are six minutes.
    [Fact]
    public void The_worked_examples_are_reproduced()
    {
        Assert.Equal(0.709, ToeUnits.MillimetresFromDegrees(0.1, 16 * 25.4), 5e-4);
        Assert.Equal(1.182, ToeUnits.MillimetresFromDegrees(ToeUnits.DegreesFromMinutes(10), 16 * 25.4), 5e-4);
        Assert.Equal(6, ToeUnits.MinutesFromDegrees(0.1), 1e-12);
    }

    [Fact]
    public void There_and_back_is_the_same() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[200, 800]).Sample((toeDeg, diameterMm) =>
        {
            Assert.Equal(toeDeg, ToeUnits.DegreesFromMinutes(ToeUnits.MinutesFromDegrees(toeDeg)), 1e-14);
            Assert.Equal(toeDeg, ToeUnits.DegreesFromMillimetres(ToeUnits.MillimetresFromDegrees(toeDeg, diameterMm), diameterMm)!.Value, 1e-13);
        });

    [Fact]
    public void More_than_the_diameter_is_no_angle()
    {
        Assert.Null(ToeUnits.DegreesFromMillimetres(400.1, 400));
        Assert.Null(ToeUnits.DegreesFromMillimetres(-400.1, 400));
        Assert.Null(ToeUnits.DegreesFromMillimetres(double.NaN, 400));
        Assert.Equal(90, ToeUnits.DegreesFromMillimetres(400, 400)!.Value, 1e-12);
    }
}
