using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>How much of the wear comes of the track, by what is said of the use.</summary>
public sealed class TrackShareTests
{
    // Ten laps of 3 km at ten times a road kilometre's wear are 300 km of road; beside 100 km of road 300 / 400.
    [Theory]
    [InlineData(null, null, null, TrackShare.Unknown, null)]
    [InlineData(1000.0, null, null, TrackShare.Unknown / 2, null)]
    [InlineData(1000.0, 0.0, null, 0.0, false)]
    [InlineData(null, 0.0, null, 0.0, false)]
    [InlineData(null, 10.0, 3.0, 0.8, true)]
    [InlineData(100.0, 10.0, 3.0, 0.75, true)]
    [InlineData(100.0, 10.0, null, 0.75, true)] // a lap nobody told is 3 km
    [InlineData(0.0, 10.0, 3.0, 1.0, true)]
    public void The_share_follows_the_use(double? roadKm, double? laps, double? lapKm, double share, bool? seesTrack)
    {
        var found = TrackShare.Compute(new WearUse(roadKm, laps, lapKm));

        Assert.Equal(share, found.Value, 1e-12);
        Assert.Equal(seesTrack, found.SeesTrack);
    }
}
