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

    /// <summary>Work of the outermost eighth on the outside of the track's hard turns against the tread's mean; 0 without a track.</summary>
    public required double TurnEdgeShare { get; init; }
}
