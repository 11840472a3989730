namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>What a use did to one tyre.</summary>
internal sealed record WornTyre
{
    public required TrueWheel Wheel { get; init; }

    /// <summary>Rubber lost by strip, mm.</summary>
    public required double[] LostMm { get; init; }

    /// <summary>What of it the road took, mm.</summary>
    public required double[] RoadLostMm { get; init; }

    /// <summary>Frictional work on the track by strip, of any unit; nothing without a track.</summary>
    public required double[] TrackWork { get; init; }

    /// <summary>Side slip on a straight road, degrees, positive as with toe-in.</summary>
    public required double StraightSlipDeg { get; init; }

    /// <summary>Greatest side slip on the track against that at which the whole contact slides.</summary>
    public required double TrackSlipShare { get; init; }

    /// <summary>Track work of the outermost eighth of the tread, of the unit of <see cref="TrackWork"/>.</summary>
    public double OuterEdgeWork => Strips.Mean(TrackWork.AsSpan(0, 4));
}
