using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Domain.Tests.Geometry.Alignment;

public sealed class ToeUnitsTests
{
    // Derived by hand: 0.10° at the edge of a 16 in rim (406.4 mm) is 0.709 mm, ten minutes are 1.182 mm, 0.10° are six minutes.
    [Fact]
    public void The_worked_examples_are_reproduced()
    {
        Assert.Equal(0.709, ToeUnits.MillimetresFromDegrees(0.1, 16 * 25.4), 5e-4);
        Assert.Equal(1.182, ToeUnits.MillimetresFromDegrees(10 / 60.0, 16 * 25.4), 5e-4);
        Assert.Equal(6, ToeUnits.MinutesFromDegrees(0.1), 1e-12);
    }
}
