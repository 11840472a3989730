using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>How much of a tyre's wear comes of the track.</summary>
public readonly record struct TrackShare
{
    /// <summary>
    /// How many times as fast a kilometre of track wears as one of road: judgement, no source. Work of side force grows with its square, and a lap is driven at some
    /// three times the road's.
    /// </summary>
    public const double TrackByRoad = 10;

    /// <summary>Length of a lap where none is stated, km; judgement.</summary>
    public const double UsualLapKm = 3;

    /// <summary>The track's share of the wear of a car that sees one, where it is not known; judgement.</summary>
    public const double OfTrackCar = 0.6;

    /// <summary>How likely a car whose laps nobody told sees a track: where its road is told and where nothing is; judgement.</summary>
    public const double ByRoadAlone = 0.3;

    /// <inheritdoc cref="ByRoadAlone" />
    public const double ByNothing = 0.5;

    private TrackShare(double value, double spread, double seesTrack) => (Value, Spread, SeesTrack) = (value, spread, seesTrack);

    /// <summary>The share to be expected, from 0 to 1.</summary>
    public double Value { get; }

    /// <summary>Standard deviation of the share where a clock is not told; 0 where both are.</summary>
    public double Spread { get; }

    /// <summary>How likely the car sees the track, from 0 to 1: 0 and 1 where the laps are told.</summary>
    public double SeesTrack { get; }

    /// <summary>By the use stated. A clock nobody told is unknown: it widens what is expected, and counts neither as used nor as unused.</summary>
    public static TrackShare Compute(in WearUse use)
    {
        if (use.TrackLaps is not { } laps) return use.RoadKm is null ? Untold(ByNothing) : Untold(ByRoadAlone);
        if (laps <= 0) return new(0, 0, 0);
        if (use.RoadKm is not { } roadKm) return new(0.8, 0.2, 1);
        var track = TrackAsRoadKm(laps, use.LapKm);
        return new(track / (track + roadKm), 0, 1);
    }

    /// <summary>How much road wears as much as these laps, km.</summary>
    public static double TrackAsRoadKm(double laps, double? lapKm) => laps * (lapKm ?? UsualLapKm) * TrackByRoad;

    private static TrackShare Untold(double sees) => new(sees * OfTrackCar, OfTrackCar * Math.Sqrt(sees * (1 - sees)), sees);
}
