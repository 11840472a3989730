using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>How much of the wear comes of the track, by what is said of the use.</summary>
public sealed class TrackShareTests
{
    // Ten laps of 3 km at ten times a road kilometre's wear are 300 km of road; beside 100 km of road 300 / 400. A clock nobody told: the chance that the car sees a
    // track times 0.6, with the standard deviation of that yes or no, 0.6 √(p (1 − p)).
    [Theory]
    [InlineData(null, null, null, 0.3, 0.3, 0.5)]
    [InlineData(1000.0, null, null, 0.18, 0.274955, 0.3)]
    [InlineData(1000.0, 0.0, null, 0.0, 0.0, 0.0)]
    [InlineData(null, 0.0, null, 0.0, 0.0, 0.0)]
    [InlineData(null, 10.0, 3.0, 0.8, 0.2, 1.0)]
    [InlineData(100.0, 10.0, 3.0, 0.75, 0.0, 1.0)]
    [InlineData(100.0, 10.0, null, 0.75, 0.0, 1.0)] // a lap nobody told is 3 km
    [InlineData(0.0, 10.0, 3.0, 1.0, 0.0, 1.0)]
    public void The_share_follows_the_use(double? roadKm, double? laps, double? lapKm, double share, double spread, double seesTrack)
    {
        var found = TrackShare.Compute(new WearUse(roadKm, laps, lapKm));

        Assert.Equal(share, found.Value, 1e-12);
        Assert.Equal(spread, found.Spread, 1e-6);
        Assert.Equal(seesTrack, found.SeesTrack, 1e-12);
    }
}
