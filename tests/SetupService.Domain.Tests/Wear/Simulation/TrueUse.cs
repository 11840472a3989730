namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>What the car did and how it was driven.</summary>
internal sealed record TrueUse
{
    public required double RoadKm { get; init; }

    /// <summary>Laps, or runs up a hill; 0 = never on a track.</summary>
    public double TrackLaps { get; init; }

    public double LapKm { get; init; } = 3;

    /// <summary>Lateral acceleration of the driver's harder road corners, g.</summary>
    public double RoadG { get; init; } = 0.3;

    /// <summary>Lateral acceleration usual in the track's corners, g.</summary>
    public double TrackG { get; init; } = 0.9;

    /// <summary>Share of the track's corners that turn left.</summary>
    public double LeftShare { get; init; } = 0.4;

    /// <summary>Track braking, g.</summary>
    public double BrakingG { get; init; } = 0.8;

    /// <summary>Track drive out of corners, g.</summary>
    public double DriveG { get; init; } = 0.25;

    /// <summary>Share of the track's corners in which the front is steered beyond what it holds.</summary>
    public double OverdrivenShare { get; init; }

    /// <summary>Front slip there, against the slip at which the whole contact slides.</summary>
    public double OverdrivenSlip { get; init; } = 1.2;

    public double AmbientC { get; init; } = 20;

    /// <summary>Mean tread temperature of the car on the track, °C.</summary>
    public double TreadC { get; init; } = 85;

    public bool HasTrack => TrackLaps > 0;

    /// <summary>The lateral acceleration the camber is judged by.</summary>
    public double CorneringG => HasTrack ? TrackG : RoadG;
}
