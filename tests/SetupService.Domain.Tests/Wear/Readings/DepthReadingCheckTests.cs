using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Readings;

/// <summary>
/// Readings of one tyre in order, worked by hand: with a gauge of 0.1 mm two readings of one depth differ by up to 3 · √2 · 0.1 = 0.42426 mm, and a
/// reading stands up to 3 · 0.1 = 0.3 mm above the new depth, three standard deviations being common practice.
/// </summary>
public sealed class DepthReadingCheckTests
{
    [Theory]
    [InlineData(0.424, false)]
    [InlineData(0.425, true)]
    public void Tread_does_not_grow(double growthMm, bool isFault)
    {
        var faults = DepthReadingCheck.FindFaults([Reading(0, 0, 5), new(1000, 10, new(5, 5 + growthMm, 5))], 0.1, null);

        if (!isFault)
        {
            Assert.Empty(faults);
            return;
        }

        var fault = Assert.Single(faults);
        Assert.Equal((DepthReadingFault.DepthGrows, 1, TreadPlace.Centre, 5 + growthMm, 5.0), (fault.Fault, fault.Reading, fault.Place!.Value, fault.Value, fault.Before));
        Assert.Equal(0.42426, fault.AllowedMm, 1e-5);
    }

    [Theory]
    [InlineData(8.299, 0)]
    [InlineData(8.301, 3)]
    public void No_reading_is_above_the_new_depth_not_even_the_first(double depthMm, int faults)
    {
        var found = DepthReadingCheck.FindFaults([Reading(0, 0, depthMm)], 0.1, 8);

        Assert.Equal(faults, found.Count);
        Assert.DoesNotContain(found, one => one is not { Fault: DepthReadingFault.AboveNew, Reading: 0, Before: 8 });
    }

    [Fact]
    public void Clocks_run_on_and_may_stand()
    {
        Assert.Empty(DepthReadingCheck.FindFaults([Reading(100, 10, 6), Reading(100, 20, 6), Reading(200, 20, 6)], 0.1, null));

        var found = DepthReadingCheck.FindFaults([Reading(100, 10, 6), Reading(99, 20, 6), Reading(200, 19, 6)], 0.1, null);

        Assert.Equal(
            [
                new DepthReadingFaultAt(DepthReadingFault.RoadRunsBackwards, 1, null, 99, 100, 0),
                new DepthReadingFaultAt(DepthReadingFault.LapsRunBackwards, 2, null, 19, 20, 0),
            ],
            found);
    }

    private static DepthReading Reading(double roadKm, double laps, double depthMm) => new(roadKm, laps, new(depthMm, depthMm, depthMm));
}
