using SetupService.Domain.Wear.Pressures;

namespace SetupService.Domain.Tests.Wear.Pressures;

public sealed class StandardAtmosphereTests
{
    // ISO 2533:1975, table by geopotential altitude: from memory; the rows from 0 to 3000 m stand alike in an open-source copy of the table that was read.
    [Theory]
    [InlineData(0, 101.325)]
    [InlineData(1000, 89.8746)]
    [InlineData(2000, 79.4952)]
    [InlineData(3000, 70.1085)]
    [InlineData(-1000, 113.929)]
    public void The_air_thins_as_the_table_has_it(double altitudeM, double kpa) =>
        Assert.Equal(kpa, StandardAtmosphere.PressureKpa(altitudeM), 0.0006);
}
