using CsCheck;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Domain.Tests.Geometry.Alignment;

public sealed class ToeFiguresTests
{
    // Derived by hand: 0.10° at the edge of a 16 in rim (406.4 mm) is 0.709 mm and six minutes.
    [Fact]
    public void The_worked_example_is_reproduced()
    {
        var toe = ToeFigures.Compute(0.1, 16 * 25.4)!.Value;

        Assert.Equal(0.1, toe.Deg);
        Assert.Equal(6, toe.Minutes, 1e-12);
        Assert.Equal(0.709, toe.Mm, 5e-4);
        Assert.Null(ToeFigures.Compute(null, 400));
    }

    // Each wheel is measured by itself, so the total in mm is no toe of the summed angle.
    [Fact]
    public void A_total_is_the_sum_of_both_wheels_in_every_unit() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[200, 1000]).Sample((leftDeg, rightDeg, diameterMm) =>
        {
            var total = (ToeFigures.Compute(leftDeg, diameterMm) + ToeFigures.Compute(rightDeg, diameterMm))!.Value;

            Assert.Equal(leftDeg + rightDeg, total.Deg, 1e-12);
            Assert.Equal(60 * (leftDeg + rightDeg), total.Minutes, 1e-9);
            Assert.Equal(ToeUnits.MillimetresFromDegrees(leftDeg, diameterMm) + ToeUnits.MillimetresFromDegrees(rightDeg, diameterMm), total.Mm, 1e-9);
        });
}
